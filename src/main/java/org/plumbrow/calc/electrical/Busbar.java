package org.plumbrow.calc.electrical;

import java.util.OptionalDouble;

/**
 * A source on the customer's busbar. Source: NEC 705.12(B) (rules numbered as in the 2020 and 2023 editions), 705.11 for
 * the supply side, as commonly reprinted and in part from memory. A source counts 1.25 times its output; a sum equal to the
 * limit passes.
 */
public final class Busbar {

    private static final double ALMOST = 1e-9;
    private static final double FAR_END_SHARE = 1.20;

    private Busbar() {}

    /** The rule by which a source meets a bus. */
    public enum Rule {
        ANYWHERE("NEC 705.12(B)(1)", "125 % of the sources and the main together within the bus"),
        FAR_END("NEC 705.12(B)(2)", "125 % of the sources and the main within 120 % of the bus, at opposite ends"),
        SUM_OF_DEVICES("NEC 705.12(B)(3)", "all load and source devices but the main within the bus"),
        CENTER_FED("NEC 705.12(B)(4)", "center-fed panel of a dwelling: at one end only, within 120 % of the bus"),
        SUPPLY_SIDE("NEC 705.11", "the sources' output within the service conductors' ampacity");

        private final String clause;
        private final String words;

        Rule(String clause, String words) {
            this.clause = clause;
            this.words = words;
        }

        public String clause() {
            return clause;
        }

        public String words() {
            return words;
        }
    }

    /** What is used of what is allowed, amperes. */
    public record Load(Rule rule, double usedA, double allowedA) {
        public boolean within() {
            return usedA <= allowedA + ALMOST;
        }
    }

    /** @param outputA of all sources on the bus together, continuous */
    public static Load with(Rule rule, double busA, double mainA, double outputA) {
        double sources = Overcurrent.CONTINUOUS * outputA;
        return switch (rule) {
            case ANYWHERE -> new Load(rule, sources + mainA, busA);
            case FAR_END, CENTER_FED -> new Load(rule, sources + mainA, FAR_END_SHARE * busA);
            case SUM_OF_DEVICES, SUPPLY_SIDE ->
                throw new IllegalArgumentException(rule + " is asked with its own figures");
        };
    }

    /** @param devicesA of all load and source devices but the main */
    public static Load sumOfDevices(double busA, double devicesA) {
        return new Load(Rule.SUM_OF_DEVICES, devicesA, busA);
    }

    /** @param outputA of all sources ahead of the main, continuous, without a factor */
    public static Load supplySide(double serviceConductorsA, double outputA) {
        return new Load(Rule.SUPPLY_SIDE, outputA, serviceConductorsA);
    }

    /** The largest continuous output that still fits at the far end; below 0 when not even the main fits. */
    public static double mostOutputA(Rule rule, double busA, double mainA) {
        double allowed = rule == Rule.ANYWHERE ? busA : FAR_END_SHARE * busA;
        return (allowed - mainA) / Overcurrent.CONTINUOUS;
    }

    /** The largest standard main with which a source fits at the far end; a load calculation must allow it. */
    public static OptionalDouble smallerMainA(double busA, double mainA, double outputA) {
        double most = FAR_END_SHARE * busA - Overcurrent.CONTINUOUS * outputA;
        return Overcurrent.standardSizes().stream()
                .mapToDouble(Integer::doubleValue)
                .filter(size -> size < mainA && size <= most + ALMOST)
                .max();
    }
}
