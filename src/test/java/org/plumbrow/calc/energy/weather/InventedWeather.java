package org.plumbrow.calc.energy.weather;

import static org.plumbrow.calc.energy.sun.HourOfYear.HOURS;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.plumbrow.calc.energy.sun.HourOfYear;
import org.plumbrow.calc.energy.sun.Place;
import org.plumbrow.calc.energy.sun.SunTrack;

/** An invented year at an invented place, and the same year written in each of the formats. */
public final class InventedWeather {

    public static final Place PLACE = new Place(41.5, -88.25, 210, -6);

    /** Share of the sun's own radiation that reaches the ground. */
    private static final double[] CLEARNESS = {
        0.475, 0.50, 0.51, 0.52, 0.545, 0.57, 0.575, 0.56, 0.555, 0.515, 0.445, 0.445
    };

    private static final double[] AIR = {-5, -3, 3, 10, 16, 21, 24, 23, 18, 12, 5, -2};
    private static final double[] WIND = {5, 5, 5.2, 5.1, 4.4, 3.9, 3.5, 3.3, 3.7, 4.2, 4.8, 4.7};

    private InventedWeather() {}

    public static WeatherYear year() {
        return yearAt(PLACE);
    }

    /** Northern months; turned by half a year in the south. */
    public static WeatherYear yearAt(Place place) {
        boolean south = place.latitudeDeg() < 0;
        double[] ghi = turned(CLEARNESS, south);
        SunTrack sun = SunTrack.over(place);
        for (int month = 0; month < 12; month++) {
            ghi[month] *= outsideKwhPerM2Day(sun, month + 1);
        }
        return new MonthlyMeans(place, ghi, turned(AIR, south), turned(WIND, south)).typicalYear();
    }

    private static double outsideKwhPerM2Day(SunTrack sun, int month) {
        double sum = 0;
        for (int hour = HourOfYear.firstOf(month); hour < HOURS && HourOfYear.monthOf(hour) == month; hour++) {
            sum += sun.extraterrestrialWPerM2(hour) * Math.max(0, sun.up(hour)) / 1000;
        }
        return sum / HourOfYear.daysIn(month);
    }

    private static double[] turned(double[] months, boolean half) {
        double[] turned = new double[12];
        for (int month = 0; month < 12; month++) {
            turned[month] = months[(month + (half ? 6 : 0)) % 12];
        }
        return turned;
    }

    /** A copy that a test may spoil. */
    public static List<String> epw() {
        return new ArrayList<>(Epw.LINES);
    }

    /** Written once: eight thousand rows take their time. */
    private static final class Epw {
        static final List<String> LINES = List.copyOf(epw(year()));
    }

    static List<String> epw(WeatherYear year) {
        List<String> lines = new ArrayList<>(List.of(
                "LOCATION,\"SOMEWHERE, TOWN\",-,-,made,000000,%s,%s,%s,%s"
                        .formatted(
                                year.place().latitudeDeg(),
                                year.place().longitudeDeg(),
                                year.place().utcOffsetHours(),
                                year.place().elevationM()),
                "DESIGN CONDITIONS,0",
                "TYPICAL/EXTREME PERIODS,0",
                "GROUND TEMPERATURES,0",
                "HOLIDAYS/DAYLIGHT SAVINGS,No,0,0,0",
                "COMMENTS 1,invented",
                "COMMENTS 2,invented",
                "DATA PERIODS,1,1,Data,Sunday,1/ 1,12/31"));
        for (int hour = 0; hour < HOURS; hour++) {
            lines.add(epwRow(year, hour, HourOfYear.dayOfMonth(hour)));
        }
        return lines;
    }

    private static String epwRow(WeatherYear year, int hour, int day) {
        return String.format(
                Locale.ROOT,
                "%d,%d,%d,%d,60,?9,%.1f,5.0,70,99000,0,0,300,%.0f,%.0f,%.0f,0,0,0,0,180,%.1f,5,5,16,77777,9,9,100,0.1,0,88",
                1990 + HourOfYear.monthOf(hour) % 4,
                HourOfYear.monthOf(hour),
                day,
                hour % 24 + 1,
                year.airC(hour),
                year.ghiWPerM2(hour),
                year.dniWPerM2(hour),
                year.dhiWPerM2(hour),
                year.windMPerS(hour));
    }

    public static List<String> tmy3(WeatherYear year) {
        List<String> lines = new ArrayList<>(List.of(
                "000000,\"SOMEWHERE\",XX,%s,%s,%s,%s"
                        .formatted(
                                year.place().utcOffsetHours(),
                                year.place().latitudeDeg(),
                                year.place().longitudeDeg(),
                                year.place().elevationM()),
                "Date (MM/DD/YYYY),Time (HH:MM),DHI (W/m^2),GHI (W/m^2),DNI (W/m^2),Dry-bulb (C),RHum (%),Wspd (m/s)"));
        for (int hour = 0; hour < HOURS; hour++) {
            lines.add(String.format(
                    Locale.ROOT,
                    "%02d/%02d/1988,%02d:00,%.0f,%.0f,%.0f,%.1f,70,%.1f",
                    HourOfYear.monthOf(hour),
                    HourOfYear.dayOfMonth(hour),
                    hour % 24 + 1,
                    year.dhiWPerM2(hour),
                    year.ghiWPerM2(hour),
                    year.dniWPerM2(hour),
                    year.airC(hour),
                    year.windMPerS(hour)));
        }
        return lines;
    }

    public static List<String> nsrdb(WeatherYear year) {
        List<String> lines = new ArrayList<>(List.of(
                "Source,Location ID,City,State,Country,Latitude,Longitude,Time Zone,Elevation,Local Time Zone",
                "NSRDB,123456,-,-,-,%s,%s,-6,%s,-6"
                        .formatted(
                                year.place().latitudeDeg(),
                                year.place().longitudeDeg(),
                                year.place().elevationM()),
                "Year,Month,Day,Hour,Minute,DHI,DNI,GHI,Temperature,Wind Speed,Relative Humidity"));
        for (int hour = 0; hour < HOURS; hour++) {
            lines.add(String.format(
                    Locale.ROOT,
                    "2010,%d,%d,%d,30,%.0f,%.0f,%.0f,%.1f,%.1f,70.5",
                    HourOfYear.monthOf(hour),
                    HourOfYear.dayOfMonth(hour),
                    hour % 24,
                    year.dhiWPerM2(hour),
                    year.dniWPerM2(hour),
                    year.ghiWPerM2(hour),
                    year.airC(hour),
                    year.windMPerS(hour)));
        }
        return lines;
    }

    /** Line ends as in most files. */
    public static String text(List<String> lines) {
        return lines.stream().collect(Collectors.joining("\n", "", "\n"));
    }
}
