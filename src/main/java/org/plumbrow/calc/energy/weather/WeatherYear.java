package org.plumbrow.calc.energy.weather;

import static org.plumbrow.calc.energy.sun.HourOfYear.HOURS;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.plumbrow.calc.energy.sun.HourOfYear;
import org.plumbrow.calc.energy.sun.Place;

/**
 * A typical year of weather at one place: 8,760 hours of local standard time, hour {@code i} the interval from {@code i}
 * to {@code i + 1}. Radiation is the mean over the hour; air and wind are the file's values of that hour.
 */
public final class WeatherYear {

    private static final double FAR_KM = 50;
    private static final double FAR_UP_M = 300;

    private final Origin origin;
    private final String station;
    private final Place place;
    private final double[][] columns;
    private final List<WeatherFinding> findings;

    /** @param columns {@code double[6][8760]} in the order of {@link Column}; kept, not copied */
    WeatherYear(Origin origin, String station, Place place, double[][] columns, List<WeatherFinding> findings) {
        this.origin = origin;
        this.station = station;
        this.place = place;
        this.columns = columns;
        this.findings = findings.stream()
                .sorted(Comparator.comparing(WeatherFinding::severity).thenComparing(WeatherFinding::line))
                .toList();
    }

    /** Where a year comes from; every figure made from it says so. */
    public enum Origin {
        EPW("EPW file"),
        TMY3_CSV("TMY3 file"),
        NSRDB_CSV("NSRDB file"),
        TM2("TM2 file"),
        MONTHLY_MEANS("made from twelve monthly means"),
        GIVEN("hours given");

        private final String words;

        Origin(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * A year from hours that are already in hand.
     *
     * @param ghi global horizontal, {@code double[8760]}, W/m2
     * @param dni direct normal, {@code double[8760]}, W/m2
     * @param dhi diffuse horizontal, {@code double[8760]}, W/m2
     * @param airC {@code double[8760]}, degC
     * @param windMPerS {@code double[8760]}, m/s
     */
    public static WeatherYear given(
            Place place, double[] ghi, double[] dni, double[] dhi, double[] airC, double[] windMPerS) {
        double[] unknown = new double[HOURS];
        java.util.Arrays.fill(unknown, Double.NaN);
        double[][] columns = {ghi.clone(), dni.clone(), dhi.clone(), airC.clone(), unknown, windMPerS.clone()};
        for (double[] column : columns) {
            if (column.length != HOURS) {
                throw new IllegalArgumentException(column.length + " hours in place of " + HOURS);
            }
        }
        return new WeatherYear(Origin.GIVEN, "", place, columns, List.of());
    }

    public Origin origin() {
        return origin;
    }

    /** Name of the station as the file has it; may be empty. */
    public String station() {
        return station;
    }

    public Place place() {
        return place;
    }

    /** What the reader had to say, worst first; none of it is a refusal. */
    public List<WeatherFinding> findings() {
        return findings;
    }

    /** Global on the horizontal, W/m2. */
    public double ghiWPerM2(int hour) {
        return columns[Column.GHI.ordinal()][hour];
    }

    /** Beam on a plane that faces the sun, W/m2. */
    public double dniWPerM2(int hour) {
        return columns[Column.DNI.ordinal()][hour];
    }

    /** Diffuse on the horizontal, W/m2. */
    public double dhiWPerM2(int hour) {
        return columns[Column.DHI.ordinal()][hour];
    }

    /** Dry-bulb temperature, degC. */
    public double airC(int hour) {
        return columns[Column.AIR.ordinal()][hour];
    }

    /** Wind speed as the file has it (usually at 10 m), m/s. */
    public double windMPerS(int hour) {
        return columns[Column.WIND.ordinal()][hour];
    }

    /** Relative humidity, %; empty where it is not known. */
    public Optional<Double> relativeHumidityPercent(int hour) {
        double value = columns[Column.HUMIDITY.ordinal()][hour];
        return Double.isNaN(value) ? Optional.empty() : Optional.of(value);
    }

    /** The twelve means of this year, as somebody without a file would know them. */
    public MonthlyMeans means() {
        double[] ghi = new double[HourOfYear.MONTHS];
        double[] air = new double[HourOfYear.MONTHS];
        double[] wind = new double[HourOfYear.MONTHS];
        for (int hour = 0; hour < HOURS; hour++) {
            int month = HourOfYear.monthOf(hour) - 1;
            int days = HourOfYear.daysIn(month + 1);
            ghi[month] += ghiWPerM2(hour) / 1000 / days;
            air[month] += airC(hour) / 24 / days;
            wind[month] += windMPerS(hour) / 24 / days;
        }
        return new MonthlyMeans(place, ghi, air, wind);
    }

    /** Says when the weather is that of somewhere else: more than 50 km away or 300 m higher or lower. */
    public Optional<WeatherFinding> distanceFrom(Place project) {
        double km = place.distanceKmTo(project);
        double up = project.elevationM() - place.elevationM();
        if (km <= FAR_KM && Math.abs(up) <= FAR_UP_M) {
            return Optional.empty();
        }
        return Optional.of(WeatherFinding.warning(
                0,
                "The weather is from %,.0f km away, the project lies %,.0f m %s."
                        .formatted(km, Math.abs(up), up < 0 ? "lower" : "higher"),
                "Bring the file of a nearer station where there is one."));
    }
}
