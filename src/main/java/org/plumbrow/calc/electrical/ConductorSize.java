package org.plumbrow.calc.electrical;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * American wire sizes with what the code's tables say of them. Sources, as commonly reprinted: ampacity NEC Table 310.16
 * (30 °C, at most three current-carrying conductors); circular mils and resistance to direct current NEC chapter 9, Table 8
 * (stranded, uncoated, 75 °C); resistance and reactance to alternating current chapter 9, Table 9 (60 Hz, 75 °C); insulated
 * area chapter 9, Table 5. What a table has no cell for is empty.
 */
public enum ConductorSize {
    AWG_14(
            "14",
            4110,
            new double[] {15, 20, 25, Double.NaN, Double.NaN, Double.NaN},
            new double[] {3.14, 5.17, 3.1, Double.NaN, 0.058, 0.073, 2.7, Double.NaN},
            0.0097,
            0.0139),
    AWG_12(
            "12",
            6530,
            new double[] {20, 25, 30, 15, 20, 25},
            new double[] {1.98, 3.25, 2.0, 3.2, 0.054, 0.068, 1.7, 2.8},
            0.0133,
            0.0181),
    AWG_10(
            "10",
            10380,
            new double[] {30, 35, 40, 25, 30, 35},
            new double[] {1.24, 2.04, 1.2, 2.0, 0.050, 0.063, 1.1, 1.8},
            0.0211,
            0.0243),
    AWG_8(
            "8",
            16510,
            new double[] {40, 50, 55, 35, 40, 45},
            new double[] {0.778, 1.28, 0.78, 1.3, 0.052, 0.065, 0.69, 1.1},
            0.0366,
            0.0437),
    AWG_6(
            "6",
            26240,
            new double[] {55, 65, 75, 40, 50, 55},
            new double[] {0.491, 0.808, 0.49, 0.81, 0.051, 0.064, 0.44, 0.71},
            0.0507,
            0.0590),
    AWG_4(
            "4",
            41740,
            new double[] {70, 85, 95, 55, 65, 75},
            new double[] {0.308, 0.508, 0.31, 0.51, 0.048, 0.060, 0.29, 0.46},
            0.0824,
            0.0814),
    AWG_3(
            "3",
            52620,
            new double[] {85, 100, 115, 65, 75, 85},
            new double[] {0.245, 0.403, 0.25, 0.40, 0.047, 0.059, 0.23, 0.37},
            0.0973,
            0.0962),
    AWG_2(
            "2",
            66360,
            new double[] {95, 115, 130, 75, 90, 100},
            new double[] {0.194, 0.319, 0.19, 0.32, 0.045, 0.057, 0.19, 0.30},
            0.1158,
            0.1146),
    AWG_1(
            "1",
            83690,
            new double[] {110, 130, 145, 85, 100, 115},
            new double[] {0.154, 0.253, 0.15, 0.25, 0.046, 0.057, 0.16, 0.24},
            0.1562,
            0.1534),
    AWG_1_0(
            "1/0",
            105600,
            new double[] {125, 150, 170, 100, 120, 135},
            new double[] {0.122, 0.201, 0.12, 0.20, 0.044, 0.055, 0.13, 0.19},
            0.1855,
            0.1825),
    AWG_2_0(
            "2/0",
            133100,
            new double[] {145, 175, 195, 115, 135, 150},
            new double[] {0.0967, 0.159, 0.10, 0.16, 0.043, 0.054, 0.11, 0.16},
            0.2223,
            0.2190),
    AWG_3_0(
            "3/0",
            167800,
            new double[] {165, 200, 225, 130, 155, 175},
            new double[] {0.0766, 0.126, 0.077, 0.13, 0.042, 0.052, 0.088, 0.13},
            0.2679,
            0.2642),
    AWG_4_0(
            "4/0",
            211600,
            new double[] {195, 230, 260, 150, 180, 205},
            new double[] {0.0608, 0.100, 0.062, 0.10, 0.041, 0.051, 0.074, 0.11},
            0.3237,
            0.3197),
    KCMIL_250(
            "250",
            250000,
            new double[] {215, 255, 290, 170, 205, 230},
            new double[] {0.0515, 0.0847, 0.052, 0.085, 0.041, 0.052, 0.066, 0.094},
            0.3970,
            0.3904),
    KCMIL_300(
            "300",
            300000,
            new double[] {240, 285, 320, 195, 230, 260},
            new double[] {0.0429, 0.0707, 0.044, 0.071, 0.041, 0.051, 0.059, 0.082},
            Double.NaN,
            Double.NaN),
    KCMIL_350(
            "350",
            350000,
            new double[] {260, 310, 350, 210, 250, 280},
            new double[] {0.0367, 0.0605, 0.038, 0.061, 0.040, 0.050, 0.053, 0.073},
            0.5242,
            0.5166),
    KCMIL_400(
            "400",
            400000,
            new double[] {280, 335, 380, 225, 270, 305},
            new double[] {0.0321, 0.0529, 0.033, 0.054, 0.040, 0.049, 0.049, 0.066},
            Double.NaN,
            Double.NaN),
    KCMIL_500(
            "500",
            500000,
            new double[] {320, 380, 430, 260, 310, 350},
            new double[] {0.0258, 0.0424, 0.027, 0.043, 0.039, 0.048, 0.043, 0.057},
            0.7073,
            0.6984),
    KCMIL_600(
            "600",
            600000,
            new double[] {350, 420, 475, 285, 340, 385},
            new double[] {0.0214, 0.0353, 0.023, 0.036, 0.039, 0.048, 0.040, 0.051},
            Double.NaN,
            Double.NaN);

    private final String label;
    private final int circularMils;
    private final double[] amperes;
    private final double[] ohms;
    private final double thwnIn2;
    private final double xhhwIn2;

    /**
     * @param amperes copper at 60, 75, 90 °C, then aluminum
     * @param ohms a 1000 ft: DC copper, DC aluminum, AC copper, AC aluminum (both in PVC), reactance in PVC, in steel,
     *     effective at power factor 0.85 copper, aluminum
     */
    ConductorSize(String label, int circularMils, double[] amperes, double[] ohms, double thwnIn2, double xhhwIn2) {
        this.label = label;
        this.circularMils = circularMils;
        this.amperes = amperes;
        this.ohms = ohms;
        this.thwnIn2 = thwnIn2;
        this.xhhwIn2 = xhhwIn2;
    }

    /** By what stands on the reel: "10", "2/0", "250". */
    public static Optional<ConductorSize> of(String label) {
        return Arrays.stream(values()).filter(size -> size.label.equals(label)).findFirst();
    }

    public static List<String> labels() {
        return Arrays.stream(values()).map(ConductorSize::label).toList();
    }

    public String label() {
        return label;
    }

    /** "10 AWG", "2/0 AWG", "250 kcmil". */
    public String words() {
        return circularMils >= 250_000 ? label + " kcmil" : label + " AWG";
    }

    public int circularMils() {
        return circularMils;
    }

    /** Amperes at 30 °C by the column of that temperature. */
    public OptionalDouble ampacity(ConductorMaterial material, TemperatureRating column) {
        return cell(amperes, 3 * material.ordinal() + column.ordinal());
    }

    /** Ohms a 1000 ft for direct current. */
    public OptionalDouble dcOhmsPerKft(ConductorMaterial material) {
        return cell(ohms, material.ordinal());
    }

    /** Ohms a 1000 ft for alternating current in PVC. */
    public OptionalDouble acOhmsPerKft(ConductorMaterial material) {
        return cell(ohms, 2 + material.ordinal());
    }

    /** Reactance, ohms a 1000 ft: in steel higher than in plastic. */
    public OptionalDouble reactanceOhmsPerKft(Raceway raceway) {
        return cell(ohms, raceway == Raceway.EMT || raceway == Raceway.RMC ? 5 : 4);
    }

    /** Effective impedance at power factor 0.85 in PVC, ohms a 1000 ft. */
    public OptionalDouble effectiveOhmsPerKft(ConductorMaterial material) {
        return cell(ohms, 6 + material.ordinal());
    }

    /** Square inches with its insulation; USE-2 and PV wire have no table and need the maker's sheet. */
    public OptionalDouble areaIn2(Insulation insulation) {
        return switch (insulation) {
            case THWN_2 -> known(thwnIn2);
            case XHHW_2 -> known(xhhwIn2);
            case USE_2, PV_WIRE -> OptionalDouble.empty();
        };
    }

    private static OptionalDouble cell(double[] cells, int at) {
        return known(cells[at]);
    }

    private static OptionalDouble known(double value) {
        return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
