package org.plumbrow.estimate.site;

import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.energy.Inverter;
import org.plumbrow.calc.energy.Losses;
import org.plumbrow.calc.energy.ModuleTraits;
import org.plumbrow.calc.energy.SiteYear;
import org.plumbrow.calc.energy.SkyModel;
import org.plumbrow.calc.energy.YearSpread;

/**
 * How a project's yield is computed, as people may change it.
 *
 * @param losses in the order in which they are taken
 * @param snowPercent January to December
 * @param yearPercent spread from year to year
 * @param modelPercent spread of the estimate; null for the usual one of the weather's kind
 * @param gammaPercent change of the modules' power for each kelvin, negative
 * @param efficiencyPercent of the inverters
 * @param useHorizon whether the survey's readings are applied
 * @param rows of each array in order; where both lengths are known, rows shade one another
 */
public record YieldTerms(
        List<Loss> losses,
        List<Double> snowPercent,
        double yearPercent,
        @Nullable Double modelPercent,
        SkyModel sky,
        double albedo,
        double gammaPercent,
        double efficiencyPercent,
        boolean useHorizon,
        List<RowFeet> rows) {

    private static final double M_PER_FT = 0.3048;

    public static final YieldTerms USUAL = new YieldTerms(
            Losses.USUAL.lines().stream()
                    .map(line -> new Loss(line.name(), line.percent()))
                    .toList(),
            Collections.nCopies(12, 0.0),
            100 * YearSpread.USUAL.yearShare(),
            null,
            SkyModel.HAY_DAVIES,
            SiteYear.USUAL_ALBEDO,
            Math.round(1e4 * ModuleTraits.USUAL.gammaPerK()) / 100.0,
            100 * Inverter.USUAL_EFFICIENCY,
            true,
            List.of());

    public YieldTerms {
        losses = List.copyOf(losses);
        snowPercent = List.copyOf(snowPercent);
        rows = List.copyOf(rows);
    }

    public record Loss(String name, double percent) {}

    /** @param widthFt slant height of a row @param pitchFt row to row; either null where it is not known */
    public record RowFeet(
            @Nullable Double widthFt, @Nullable Double pitchFt) {

        static final RowFeet NONE = new RowFeet(null, null);

        @Nullable
        Double widthM() {
            return widthFt == null ? null : widthFt * M_PER_FT;
        }

        @Nullable
        Double pitchM() {
            return pitchFt == null ? null : pitchFt * M_PER_FT;
        }
    }

    RowFeet rowsOf(int array) {
        return array < rows.size() ? rows.get(array) : RowFeet.NONE;
    }

    Losses calcLosses() {
        return new Losses(
                losses.stream()
                        .map(loss -> new Losses.Line(loss.name(), loss.percent()))
                        .toList(),
                snowPercent.stream().mapToDouble(Double::doubleValue).toArray());
    }

    /** @param fromMeans the weather was made from monthly means, which adds to the spread of the estimate */
    YearSpread spread(boolean fromMeans) {
        YearSpread usual = fromMeans ? YearSpread.FROM_MONTHLY_MEANS : YearSpread.USUAL;
        return new YearSpread(yearPercent / 100, modelPercent == null ? usual.modelShare() : modelPercent / 100);
    }
}
