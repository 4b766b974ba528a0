package org.plumbrow.estimate.site;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import org.plumbrow.calc.energy.SiteYear;
import org.plumbrow.calc.energy.SkyModel;
import org.plumbrow.calc.energy.sun.SunTrack;
import org.plumbrow.calc.energy.weather.WeatherFiles;
import org.plumbrow.calc.energy.weather.WeatherReading;
import org.plumbrow.calc.energy.weather.WeatherYear;
import org.plumbrow.evidence.EvidenceStore;
import org.plumbrow.web.NotFound;
import org.springframework.stereotype.Component;

/**
 * The hours of a library entry with the sun over its place, read at the first use and kept for a while: what lies under an
 * id never changes. Whoever asks has found the entry's card behind the branch wall.
 */
@Component
class SiteYears {

    /** One takes about 1 MB. */
    private static final int KEPT = 24;

    private final WeatherRows rows;
    private final EvidenceStore evidence;
    private final Map<Key, SiteYear> kept = new LinkedHashMap<>(KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, SiteYear> eldest) {
            return size() > KEPT;
        }
    };

    SiteYears(WeatherRows rows, EvidenceStore evidence) {
        this.rows = rows;
        this.evidence = evidence;
    }

    private record Key(UUID weatherId, SkyModel sky, double albedo) {}

    SiteYear of(WeatherCard card, SkyModel sky, double albedo) {
        Key key = new Key(card.id(), sky, albedo);
        synchronized (kept) {
            SiteYear known = kept.get(key);
            if (known != null) {
                return known;
            }
        }
        WeatherYear year = year(card);
        SiteYear made = SiteYear.of(year, SunTrack.over(year.place()), sky, albedo);
        synchronized (kept) {
            kept.put(key, made);
        }
        return made;
    }

    private WeatherYear year(WeatherCard card) {
        UUID file = card.evidenceId();
        if (file == null) {
            return rows.means(card.id()).orElseThrow(NotFound::new).typicalYear();
        }
        byte[] bytes = evidence.file(file).orElseThrow(NotFound::new).bytes();
        if (WeatherFiles.read(FileText.of(bytes)) instanceof WeatherReading.Read read) {
            return read.year();
        }
        throw new IllegalStateException("weather " + card.id() + " was read once and cannot be read again");
    }
}
