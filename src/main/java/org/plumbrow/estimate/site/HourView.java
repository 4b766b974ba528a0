package org.plumbrow.estimate.site;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.energy.ArraySection;
import org.plumbrow.calc.energy.HourTrace;
import org.plumbrow.calc.energy.PlaneLight;
import org.plumbrow.calc.energy.SiteYear;
import org.plumbrow.calc.energy.sun.HourOfYear;
import org.plumbrow.calc.energy.weather.WeatherYear;
import org.plumbrow.estimate.EnergyInputs;

/**
 * One hour of one array, every step of it.
 *
 * @param choice what was asked for, within the calendar
 * @param lines each step with its figure and where it comes from
 */
record HourView(Choice choice, String when, String array, List<Line> lines) {

    /** @param array its number in the list, from 0 @param hour the hour that begins at, 0 to 23, standard time */
    record Choice(int array, int month, int day, int hour) {

        static Choice of(
                @Nullable Integer array, @Nullable Integer month, @Nullable Integer day, @Nullable Integer hour) {
            int inMonth = within(month, 6, 1, 12);
            return new Choice(
                    within(array, 0, 0, 999),
                    inMonth,
                    within(day, 21, 1, HourOfYear.daysIn(inMonth)),
                    within(hour, 12, 0, 23));
        }

        private static int within(@Nullable Integer asked, int usual, int least, int most) {
            return asked == null ? usual : Math.max(least, Math.min(most, asked));
        }

        int hourOfYear() {
            return HourOfYear.of(month, day, hour + 1);
        }
    }

    /** @param how formula or source; may be empty */
    record Line(String what, String figure, String how) {}

    static HourView of(EnergyInputs inputs, Choice asked) {
        List<ArraySection> sections = inputs.groups().stream()
                .flatMap(group -> group.sections().stream())
                .toList();
        Choice choice =
                new Choice(Math.min(asked.array(), sections.size() - 1), asked.month(), asked.day(), asked.hour());
        ArraySection section = sections.get(choice.array());
        HourTrace trace = HourTrace.of(inputs.site(), section, inputs.losses(), choice.hourOfYear());
        String when = "%s %d, %d:00 to %d:00 standard time"
                .formatted(MonthRow.name(Month.of(choice.month())), choice.day(), choice.hour(), choice.hour() + 1);
        return new HourView(choice, when, section.name(), lines(inputs, section, trace, choice.hourOfYear()));
    }

    private static List<Line> lines(EnergyInputs inputs, ArraySection section, HourTrace trace, int hour) {
        List<Line> lines = new ArrayList<>(weather(inputs.site(), hour));
        lines.addAll(light(inputs.site(), trace));
        lines.addAll(power(inputs, section, trace, hour));
        return lines;
    }

    private static List<Line> weather(SiteYear site, int hour) {
        WeatherYear weather = site.weather();
        String sun = "solar position in the middle of the hour, as it is seen";
        return List.of(
                line("Sun above the horizon", 90 - site.sun().apparentZenithDeg(hour), 1, "°", sun),
                line("Sun’s azimuth", site.sun().azimuthDeg(hour), 1, "°", "clockwise from north"),
                line("Global on the horizontal", weather.ghiWPerM2(hour), 0, "W/m²", "weather"),
                line("Beam facing the sun", weather.dniWPerM2(hour), 0, "W/m²", "weather"),
                line("Diffuse on the horizontal", weather.dhiWPerM2(hour), 0, "W/m²", "weather"),
                line("Air", weather.airC(hour) * 1.8 + 32, 0, "°F", "weather; %.1f °C".formatted(weather.airC(hour))));
    }

    private static List<Line> light(SiteYear site, HourTrace trace) {
        PlaneLight light = trace.light();
        double sky = light.circumsolar() + light.isotropic() + light.horizon();
        String ground = "global × %.2f reflected × view".formatted(site.albedo());
        String glass = "beam × %.3f through the glass, the rest whole".formatted(trace.modifier());
        return List.of(
                line("Angle to the modules", light.incidenceDeg(), 1, "°", "between the sun and straight ahead"),
                line("Left by horizon and rows", 100 * trace.openShare(), 0, "%", "of beam and light around the sun"),
                line("Beam on the modules", light.beam(), 0, "W/m²", "beam × cosine of the angle × share left"),
                line(
                        "Sky on the modules",
                        sky,
                        0,
                        "W/m²",
                        "sky of " + site.sky().words()),
                line("Ground on the modules", light.ground(), 0, "W/m²", ground),
                line("Light that enters", trace.effectiveWPerM2(), 0, "W/m²", glass));
    }

    private static List<Line> power(EnergyInputs inputs, ArraySection section, HourTrace trace, int hour) {
        double wind = inputs.site().weather().windMPerS(hour);
        String cells = "%.1f °C; light, wind %.1f m/s and mounting".formatted(trace.cellC(), wind);
        String dc = "light / 1,000 × (1 %+.4f × (cells − 25 °C)) × %.1f kW"
                .formatted(section.module().gammaPerK(), section.kwDc());
        String losses = "losses %.1f %% together, and the month’s snow"
                .formatted(inputs.losses().totalPercent());
        return List.of(
                line("Cells", trace.cellC() * 1.8 + 32, 0, "°F", cells),
                line("DC before losses", trace.grossDcKwPerKw() * section.kwDc(), 2, "kW", dc),
                line("DC after losses", trace.dcKwPerKw() * section.kwDc(), 2, "kW", losses));
    }

    private static Line line(String what, double value, int decimals, String unit, String how) {
        String figure = String.format(Locale.US, "%,." + decimals + "f", value).replace('-', '−');
        return new Line(what, figure + " " + unit, how);
    }
}
