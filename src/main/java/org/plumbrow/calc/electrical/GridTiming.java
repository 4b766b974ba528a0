package org.plumbrow.calc.electrical;

import java.util.List;

/**
 * When an inverter leaves the grid and comes back. Source: IEEE 1547-2018, 8.1.2 and tables 4, 11 to 13, 18 (defaults, as
 * in an open reference model of the standard). The utility's own profile decides.
 *
 * @param category of abnormal performance, "I", "II" or "III"; empty where all are alike
 * @param value per unit of nominal voltage, or hertz; NaN where a time is all there is
 * @param seconds to trip, to wait; NaN where none is given
 */
public record GridTiming(What what, String category, double value, String unit, double seconds) {

    /** What is limited. */
    public enum What {
        CEASE_TO_ENERGIZE,
        STAY_OFF,
        ENTER_LEAST_V,
        ENTER_MOST_V,
        ENTER_LEAST_HZ,
        ENTER_MOST_HZ,
        OV2,
        OV1,
        UV1,
        UV2,
        OF1,
        OF2,
        UF1,
        UF2,
        VOLT_WATT_START,
        VOLT_WATT_LEAST
    }

    private static final double NONE = Double.NaN;

    private static final List<GridTiming> ALL = List.of(
            of(What.CEASE_TO_ENERGIZE, "", NONE, "", 2),
            of(What.STAY_OFF, "", NONE, "", 300),
            of(What.ENTER_LEAST_V, "", 0.917, "pu", 300),
            of(What.ENTER_MOST_V, "", 1.05, "pu", 300),
            of(What.ENTER_LEAST_HZ, "", 59.5, "Hz", 300),
            of(What.ENTER_MOST_HZ, "", 60.1, "Hz", 300),
            of(What.OV2, "", 1.20, "pu", 0.16),
            of(What.OV1, "I", 1.10, "pu", 2),
            of(What.OV1, "II", 1.10, "pu", 2),
            of(What.OV1, "III", 1.10, "pu", 13),
            of(What.UV1, "I", 0.70, "pu", 2),
            of(What.UV1, "II", 0.70, "pu", 10),
            of(What.UV1, "III", 0.88, "pu", 21),
            of(What.UV2, "I", 0.45, "pu", 0.16),
            of(What.UV2, "II", 0.45, "pu", 0.16),
            of(What.UV2, "III", 0.50, "pu", 2),
            of(What.OF1, "", 61.2, "Hz", 300),
            of(What.OF2, "", 62.0, "Hz", 0.16),
            of(What.UF1, "", 58.5, "Hz", 300),
            of(What.UF2, "", 56.5, "Hz", 0.16),
            of(What.VOLT_WATT_START, "", 1.06, "pu", NONE),
            of(What.VOLT_WATT_LEAST, "", 1.10, "pu", NONE));

    private static GridTiming of(What what, String category, double value, String unit, double seconds) {
        return new GridTiming(what, category, value, unit, seconds);
    }

    public static List<GridTiming> all() {
        return ALL;
    }

    /** Over-voltage at which an inverter trips within seconds, per unit of nominal. */
    public static double highTripPu() {
        return ALL.stream()
                .filter(one -> one.what() == What.OV1)
                .mapToDouble(GridTiming::value)
                .min()
                .orElseThrow();
    }
}
