package org.plumbrow.calc.finance.use;

import java.time.zone.ZoneRules;
import java.util.ArrayList;
import java.util.List;

/**
 * Use from a Green Button file (ESPI, NAESB REQ.21): an Atom feed whose entries, joined by their links, tell meter, unit,
 * direction, clock and readings. Energy kWh = value 10^multiplier / 1000 for the unit 72 (Wh). Anything but electricity, and
 * power in place of energy, is refused; register readings are turned into what lies between them.
 */
public final class GreenButton {

    /**
     * What the reader may assume where the file is silent.
     *
     * @param clock local time of the branch, when the file has none or a broken one
     * @param wattHours the person said that the values are Wh; without it, a file that names no unit is refused
     */
    public record Assumed(ZoneRules clock, boolean wattHours) {}

    private GreenButton() {}

    /** @param xml the whole file, at most 50 million characters */
    public static UseReading read(String xml, Assumed assumed) {
        try {
            List<UseFinding> findings = new ArrayList<>();
            EspiFeed feed = EspiParser.parse(xml);
            List<UseChannel> channels = new EspiChannels(feed, assumed, findings).all();
            return new UseReading(channels, findings);
        } catch (UseRefused why) {
            return UseReading.refused(why);
        }
    }
}
