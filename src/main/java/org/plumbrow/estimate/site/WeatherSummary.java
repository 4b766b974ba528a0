package org.plumbrow.estimate.site;

import java.util.Arrays;
import java.util.List;
import org.plumbrow.calc.energy.sun.HourOfYear;
import org.plumbrow.calc.energy.weather.WeatherFinding;
import org.plumbrow.calc.energy.weather.WeatherYear;

/**
 * What a typical year of weather comes to, worked out once when it is brought.
 *
 * @param years in which its hours were measured, "1976 to 2004"; empty where the file does not say or there is none
 * @param ghiKwhPerM2 global on the horizontal, of the year
 * @param dniKwhPerM2 beam on a plane that faces the sun
 * @param dhiKwhPerM2 diffuse on the horizontal
 * @param ghiByMonth January to December, kWh/m2
 * @param meanAirC of the year
 * @param said what the reader had to say, worst first
 */
public record WeatherSummary(
        String years,
        double ghiKwhPerM2,
        double dniKwhPerM2,
        double dhiKwhPerM2,
        List<Double> ghiByMonth,
        double meanAirC,
        List<Said> said) {

    public WeatherSummary {
        ghiByMonth = List.copyOf(ghiByMonth);
        said = List.copyOf(said);
    }

    /** @param warning every figure made from this weather carries it; else it is only good to know */
    public record Said(boolean warning, String sentence) {}

    static WeatherSummary of(WeatherYear year, String years) {
        double dni = 0;
        double dhi = 0;
        double air = 0;
        double[] ghi = new double[HourOfYear.MONTHS];
        for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
            ghi[HourOfYear.monthOf(hour) - 1] += year.ghiWPerM2(hour) / 1000;
            dni += year.dniWPerM2(hour) / 1000;
            dhi += year.dhiWPerM2(hour) / 1000;
            air += year.airC(hour) / HourOfYear.HOURS;
        }
        return new WeatherSummary(
                years,
                Arrays.stream(ghi).sum(),
                dni,
                dhi,
                Arrays.stream(ghi).boxed().toList(),
                air,
                year.findings().stream().map(WeatherSummary::said).toList());
    }

    private static Said said(WeatherFinding finding) {
        return new Said(finding.severity() == WeatherFinding.Severity.WARNING, finding.sentence());
    }

    public List<Said> warnings() {
        return said.stream().filter(Said::warning).toList();
    }
}
