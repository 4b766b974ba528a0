package org.plumbrow.calc.finance;

import java.util.List;
import org.plumbrow.calc.Range;

/**
 * What a size is made from.
 *
 * @param useKwh of a year, 0 to 100,000,000
 * @param targetOffset production over use that is wanted, 0.05 to 2; 1 is usual
 * @param kwhPerKw yield of a kilowatt DC in a year, 200 to 3000
 * @param moduleW rating of one module, 50 to 1000
 * @param stringing how modules may be put in strings
 * @param dcToAc DC over AC rating, 0.5 to 2.5; 1.2 is usual
 * @param limits what the system may not exceed
 */
public record SizeQuestion(
        double useKwh,
        double targetOffset,
        double kwhPerKw,
        double moduleW,
        Stringing stringing,
        double dcToAc,
        List<SizeLimit> limits) {

    public static final Range USE = new Range(0, 100_000_000, "kWh");
    public static final Range OFFSET = new Range(0.05, 2, "of the use");
    public static final Range SPECIFIC_YIELD = new Range(200, 3000, "kWh/kW");
    public static final Range MODULE = new Range(50, 1000, "W");
    public static final Range DC_TO_AC = new Range(0.5, 2.5, "");

    /** @throws Range.OutOfRange if a value is outside its range or not a number */
    public SizeQuestion {
        USE.check("use of a year", useKwh);
        OFFSET.check("target offset", targetOffset);
        SPECIFIC_YIELD.check("yield of a kilowatt", kwhPerKw);
        MODULE.check("module rating", moduleW);
        DC_TO_AC.check("DC over AC", dcToAc);
        limits = List.copyOf(limits);
    }

    /** kW DC that meet the target exactly, before whole modules: target x use / yield. */
    public double exactKwDc() {
        return targetOffset * useKwh / kwhPerKw;
    }

    /** Modules that meet the target exactly, not yet whole. */
    public double exactModules() {
        return exactKwDc() * 1000 / moduleW;
    }
}
