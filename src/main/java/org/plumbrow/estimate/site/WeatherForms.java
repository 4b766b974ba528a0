package org.plumbrow.estimate.site;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.BranchFacts;
import org.plumbrow.branch.Written;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.energy.sun.Place;
import org.plumbrow.calc.energy.weather.MonthlyMeans;
import org.plumbrow.web.Entered;

/** What people type about weather. Heights, temperatures and winds in the units of the country; the core has its own. */
final class WeatherForms {

    static final Range ELEVATION_FT = new Range(-1400, 19_600, "ft");
    static final Range AIR_F = new Range(-58, 113, "°F");
    static final Range WIND_MPH = new Range(0, 44, "mph");
    private static final double M_PER_FT = 0.3048;
    private static final double M_PER_S_PER_MPH = 0.44704;
    private static final int LONGEST_NAME = 120;

    private WeatherForms() {}

    /** @param invented "true" when it is made up */
    record FileForm(@Nullable String name, @Nullable String invented) {}

    record NameForm(
            @Nullable String name,
            @Nullable String invented,
            @Nullable String version) {

        static NameForm of(WeatherCard card) {
            return new NameForm(card.name(), String.valueOf(card.invented()), String.valueOf(card.version()));
        }

        String nameIn(Entered entered) {
            return entered.given("name", "what this weather is called", name, LONGEST_NAME);
        }
    }

    /** The fields of a name, for the page that lays theirs beside yours. */
    static List<Written> written(String name, boolean invented) {
        return List.of(
                Written.of("Name", "name", name), Written.of("Made up", "invented", invented, invented ? "yes" : "no"));
    }

    static boolean yes(@Nullable String ticked) {
        return "true".equals(ticked);
    }

    /** Twelve rows of three figures. */
    record MeansForm(
            @Nullable String name,
            @Nullable String invented,
            @Nullable String latitude,
            @Nullable String longitude,
            @Nullable String elevation,
            @Nullable String utcOffset,
            List<MonthForm> months) {

        /** Twelve rows whatever was sent, so that the page can show them again. */
        MeansForm {
            List<MonthForm> twelve = new ArrayList<>();
            for (int at = 0; at < 12; at++) {
                MonthForm sent = months == null || at >= months.size() ? null : months.get(at);
                twelve.add(sent == null ? MonthForm.BLANK : sent);
            }
            months = twelve;
        }

        /** @param ghi kWh/m2 a day @param air °F @param wind mph */
        record MonthForm(
                @Nullable String ghi,
                @Nullable String air,
                @Nullable String wind) {
            static final MonthForm BLANK = new MonthForm("", "", "");
        }

        static MeansForm blank(BranchFacts branch, Instant now) {
            return new MeansForm(
                    "",
                    "false",
                    branch.yard()
                            .map(yard -> Entered.written(yard.latitudeDeg()))
                            .orElse(""),
                    branch.yard()
                            .map(yard -> Entered.written(yard.longitudeDeg()))
                            .orElse(""),
                    "",
                    standardOffset(branch.zone(), now),
                    List.of());
        }

        private static String standardOffset(ZoneId zone, Instant now) {
            return Entered.written(zone.getRules().getStandardOffset(now).getTotalSeconds() / 3600.0);
        }

        String nameIn(Entered entered) {
            return entered.given("name", "what this weather is called", name, LONGEST_NAME);
        }

        MonthlyMeans read(Entered entered) {
            double[] ghi = new double[12];
            double[] air = new double[12];
            double[] wind = new double[12];
            for (int at = 0; at < 12; at++) {
                String row = "months[%d].".formatted(at);
                String month = MonthRow.name(java.time.Month.of(at + 1));
                MonthForm given = months.get(at);
                ghi[at] = entered.required(row + "ghi", "the radiation of " + month, given.ghi(), MonthlyMeans.GHI);
                air[at] = (entered.required(row + "air", "the temperature of " + month, given.air(), AIR_F) - 32) / 1.8;
                wind[at] = entered.required(row + "wind", "the wind of " + month, given.wind(), WIND_MPH)
                        * M_PER_S_PER_MPH;
            }
            return new MonthlyMeans(place(entered), ghi, air, wind);
        }

        private Place place(Entered entered) {
            double latitudeDeg = entered.required("latitude", "the latitude", latitude, Place.LATITUDE);
            double longitudeDeg = entered.required("longitude", "the longitude", longitude, Place.LONGITUDE);
            double elevationFt = entered.required("elevation", "the height above the sea", elevation, ELEVATION_FT);
            double offset = entered.required("utcOffset", "the hours from UTC", utcOffset, Place.UTC_OFFSET);
            if (Math.abs(longitudeDeg - 15 * offset) > 30 && !entered.errors().hasErrors()) {
                entered.refuse(
                        "utcOffset",
                        String.format(
                                Locale.US,
                                "Longitude %s does not fit %s hours from UTC. West of Greenwich both are negative.",
                                Entered.written(longitudeDeg),
                                Entered.written(offset)));
            }
            double within = Place.ELEVATION.least() > elevationFt * M_PER_FT
                    ? Place.ELEVATION.least()
                    : Math.min(Place.ELEVATION.most(), elevationFt * M_PER_FT);
            return new Place(latitudeDeg, longitudeDeg, within, offset);
        }
    }
}
