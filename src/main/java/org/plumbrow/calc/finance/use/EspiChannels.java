package org.plumbrow.calc.finance.use;

import java.time.zone.ZoneRules;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.plumbrow.calc.finance.use.EspiFeed.Entry;

/** Joins a feed's entries by their links and makes a channel of each meter reading that is energy. */
final class EspiChannels {

    private final EspiFeed feed;
    private final GreenButton.Assumed assumed;
    private final List<UseFinding> findings;
    private final ZoneRules clock;

    EspiChannels(EspiFeed feed, GreenButton.Assumed assumed, List<UseFinding> findings) {
        this.feed = feed;
        this.assumed = assumed;
        this.findings = findings;
        refuseOtherServices();
        this.clock = clock();
    }

    List<UseChannel> all() {
        Map<String, List<Entry>> blocks = new LinkedHashMap<>();
        for (Entry block : feed.of("IntervalBlock")) {
            blocks.computeIfAbsent(readingOf(block), none -> new ArrayList<>()).add(block);
        }
        if (blocks.isEmpty()) {
            throw new UseRefused("The file has no readings.", "Ask the utility for interval or billing data.");
        }
        List<UseChannel> channels = new ArrayList<>();
        List<UseRefused> unusable = new ArrayList<>();
        blocks.forEach((reading, of) -> {
            try {
                channels.add(channel(reading, of));
            } catch (UseRefused why) {
                unusable.add(why);
            }
        });
        if (channels.isEmpty()) {
            throw unusable.get(0);
        }
        unusable.forEach(why -> findings.add(UseFinding.note(why.finding().what(), "It was left out.")));
        compareSummaries(channels);
        return channels;
    }

    private void refuseOtherServices() {
        boolean electricity =
                feed.of("UsagePoint").stream().allMatch(point -> point.number("ServiceCategory/kind", 0) == 0);
        if (!electricity) {
            throw new UseRefused("This is not electricity.", "Bring the electric meter's file.");
        }
    }

    /** Address of the meter reading that a block belongs to; the only one when links do not tell. */
    private String readingOf(Entry block) {
        String up = EspiFeed.plain(block.up()).replaceFirst("/?IntervalBlock$", "");
        List<Entry> readings = feed.of("MeterReading");
        return readings.stream()
                .filter(reading -> EspiFeed.isSame(reading.self(), up))
                .findFirst()
                .or(() -> readings.size() == 1 ? Optional.of(readings.get(0)) : Optional.empty())
                .map(Entry::self)
                .orElse(up);
    }

    private UseChannel channel(String reading, List<Entry> blocks) {
        Optional<Entry> type = typeOf(reading);
        type.ifPresent(EspiUnit::refuseUnlessEnergy);
        if (type.isEmpty() && !assumed.wattHours()) {
            throw new UseRefused(
                    "The file does not say in what unit its readings are.",
                    "Say that they are watt-hours, if the utility confirms it, and bring it again.");
        }
        if (type.isEmpty()) {
            findings.add(UseFinding.warning(
                    "The file names neither unit nor direction.", "Wh was taken as you said, and use."));
        }
        double kwhPerUnit = type.map(EspiUnit::kwhPerUnit).orElse(0.001);
        List<EspiFeed.Reading> readings =
                blocks.stream().flatMap(block -> block.readings().stream()).toList();
        boolean register = type.map(EspiUnit::isRegister).orElse(false);
        List<UseInterval> intervals =
                register ? EspiUnit.between(readings, kwhPerUnit, findings) : EspiUnit.intervals(readings, kwhPerUnit);
        return UseChannel.cleaned(meterName(reading), flow(type), clock, intervals, findings);
    }

    private Optional<Entry> typeOf(String reading) {
        List<Entry> types = feed.of("ReadingType");
        List<String> related = feed.of("MeterReading").stream()
                .filter(each -> each.self().equals(reading))
                .flatMap(each -> each.related().stream())
                .toList();
        return types.stream()
                .filter(type -> related.stream().anyMatch(link -> EspiFeed.isSame(link, type.self())))
                .findFirst()
                .or(() -> types.size() == 1 ? Optional.of(types.get(0)) : Optional.empty());
    }

    private static Flow flow(Optional<Entry> type) {
        return switch (type.map(each -> each.number("flowDirection", 1)).orElse(0)) {
            case 1 -> Flow.DELIVERED;
            case 19 -> Flow.RECEIVED;
            default -> Flow.UNKNOWN;
        };
    }

    /** Numbered when the file holds several service points. */
    private String meterName(String reading) {
        List<Entry> points = feed.of("UsagePoint");
        String plain = EspiFeed.plain(reading);
        for (int at = 0; at < points.size() && points.size() > 1; at++) {
            if (plain.contains(EspiFeed.plain(points.get(at).self()) + "/")) {
                return "Meter " + (at + 1);
            }
        }
        return "Meter";
    }

    private ZoneRules clock() {
        List<Entry> clocks = feed.of("LocalTimeParameters");
        if (clocks.isEmpty()) {
            findings.add(UseFinding.note("The file has no clock of its own.", "The branch's time was taken."));
            return assumed.clock();
        }
        Entry own = clocks.get(0);
        Optional<ZoneRules> rules = ClockRules.of(
                own.number("tzOffset", 0),
                own.number("dstOffset", 0),
                own.field("dstStartRule").orElse("FFFFFFFF"),
                own.field("dstEndRule").orElse("FFFFFFFF"));
        if (rules.isEmpty()) {
            findings.add(UseFinding.warning(
                    "The file's own rules for summer time are broken.", "The branch's time was taken."));
        }
        return rules.orElse(assumed.clock());
    }

    /** A summary's own figure need not agree with the readings: the readings count, the difference is said. */
    private void compareSummaries(List<UseChannel> channels) {
        for (String kind : List.of("ElectricPowerUsageSummary", "UsageSummary")) {
            for (Entry summary : feed.of(kind)) {
                EspiUnit.summaryDifference(summary, channels).ifPresent(findings::add);
            }
        }
    }
}
