package org.plumbrow.calc.finance;

/**
 * What a system may not exceed.
 *
 * @param kind of what
 * @param most share of the use (1.1 = 110 %), kW or a number, by kind; included
 * @param whose who sets it: "Utility", "Branch policy", "Roof area"
 */
public record SizeLimit(Kind kind, double most, String whose) {

    private static final double ROUNDING = 1e-9;

    /** What is limited. */
    public enum Kind {
        OFFSET,
        KW_DC,
        KW_AC,
        MODULES
    }

    boolean forbids(SizeOption option) {
        double value = switch (kind) {
            case OFFSET -> option.offset().orElse(0.0);
            case KW_DC -> option.kwDc();
            case KW_AC -> option.kwAc();
            case MODULES -> option.modules();
        };
        return value > most * (1 + ROUNDING);
    }

    /** "Utility: at most 40 kW AC". */
    public String words() {
        String what = switch (kind) {
            case OFFSET -> "%,.1f %% of the use".formatted(100 * most);
            case KW_DC -> "%,.1f kW DC".formatted(most);
            case KW_AC -> "%,.1f kW AC".formatted(most);
            case MODULES -> "%,.0f modules".formatted(most);
        };
        return "%s: at most %s".formatted(whose, what);
    }
}
