package org.plumbrow.estimate;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.energy.YearSpread;

/**
 * What a project's system will make in its first year, as other rooms read it.
 *
 * @param weather what it was computed with
 * @param source where arrays and inverters come from: "the contract", "design revision B"
 * @param kwh of the whole system in a typical year, AC: even chances that a year gives more or less
 * @param kwhByMonth January to December
 * @param yearShare spread of the weather from year to year, 0 to 0.3
 * @param modelShare spread of the estimate itself, 0 to 0.3
 * @param steps the way from the light on the modules to the meter, what is left after each
 * @param losses listed one by one, % of what arrives at each
 * @param snowPercentByMonth lost under snow, January to December
 * @param horizonApplied whether the survey's horizon readings were applied
 * @param rowsApplied whether the shade of rows on one another was
 * @param remarks what stands with every figure made from it: invented weather, hours made from means, assumptions
 * @param useKwhPerYear what the site uses; null while months are missing
 * @param useKwhByMonth January to December, 0 for a month that is missing; empty when nothing is known
 */
public record EstimateFacts(
        UUID projectId,
        Weather weather,
        String source,
        List<Array> arrays,
        double kwDc,
        double kwAc,
        double kwh,
        List<Double> kwhByMonth,
        double yearShare,
        double modelShare,
        List<Step> steps,
        List<Loss> losses,
        List<Double> snowPercentByMonth,
        boolean horizonApplied,
        boolean rowsApplied,
        List<String> remarks,
        Instant computedAt,
        @Nullable Double useKwhPerYear,
        List<Double> useKwhByMonth) {

    public EstimateFacts {
        arrays = List.copyOf(arrays);
        kwhByMonth = List.copyOf(kwhByMonth);
        steps = List.copyOf(steps);
        losses = List.copyOf(losses);
        snowPercentByMonth = List.copyOf(snowPercentByMonth);
        remarks = List.copyOf(remarks);
        useKwhByMonth = List.copyOf(useKwhByMonth);
    }

    /**
     * @param kind "EPW file", "made from twelve monthly means"
     * @param kmAway from the project; null where the project has no coordinates
     * @param chosen by hand; else the nearest of the library
     */
    public record Weather(
            UUID id,
            String name,
            String kind,
            boolean invented,
            boolean fromMonthlyMeans,
            @Nullable Double kmAway,
            boolean chosen) {}

    /** @param kwh AC, the system's clipping and conversion shared among the arrays by their DC energy */
    public record Array(String name, double kwDc, double tiltDeg, double azimuthDeg, double kwh) {}

    /** @param lostPercent of what arrived at this step; negative where cold cells give more than their rating */
    public record Step(String name, double lostPercent, double kwh) {}

    public record Loss(String name, double percent) {}

    public double kwhPerKw() {
        return kwh / kwDc;
    }

    public YearSpread spread() {
        return new YearSpread(yearShare, modelShare);
    }

    /**
     * @param confidence 0.9 for what is exceeded in nine cases of ten
     * @param years one year, or the mean of several
     */
    public double exceededKwh(double confidence, int years) {
        return spread().exceededKwh(kwh, confidence, years);
    }

    /** What a single year exceeds in nine cases of ten. */
    public double p90Kwh() {
        return exceededKwh(0.9, 1);
    }

    public EstimateFacts withUse(@Nullable Double perYear, List<Double> byMonth) {
        return new EstimateFacts(
                projectId,
                weather,
                source,
                arrays,
                kwDc,
                kwAc,
                kwh,
                kwhByMonth,
                yearShare,
                modelShare,
                steps,
                losses,
                snowPercentByMonth,
                horizonApplied,
                rowsApplied,
                remarks,
                computedAt,
                perYear,
                byMonth);
    }
}
