package org.plumbrow.calc.energy;

/**
 * How much warmer than the air cells are, in steady state: each model is a factor that depends on the wind, times the
 * irradiance on the plane. No heat is stored, so a single minute may be further off than an hour's mean.
 */
public sealed interface CellHeating {

    /** @return kelvins above the air for each W/m2 on the plane */
    double kelvinPerWPerM2(double windMPerS);

    /** Cell temperature, degC. */
    default double cellC(double planeWPerM2, double airC, double windMPerS) {
        return airC + planeWPerM2 * kelvinPerWPerM2(windMPerS);
    }

    /**
     * 1 / (u0 + u1 v). Source: Faiman, Progress in Photovoltaics 16(4), 2008, 307-315; adopted in IEC 61853.
     *
     * @param u0 W/(m2 K) in still air
     * @param u1 W s/(m3 K) more for each m/s
     */
    record Faiman(double u0, double u1) implements CellHeating {
        /** Mean of seven silicon modules on an open rack. */
        public static final Faiman OPEN_RACK = new Faiman(25.0, 6.84);

        @Override
        public double kelvinPerWPerM2(double windMPerS) {
            return 1 / (u0 + u1 * windMPerS);
        }
    }

    /**
     * absorption (1 - efficiency) / (uc + uv v): a balance of heat with two constants. Common practice: uc 29 for racks in
     * the open, 20 with air behind on a roof, 15 flush with it; uv 0.
     *
     * @param uc W/(m2 K)
     * @param uv W s/(m3 K)
     * @param efficiency of the module, 0.1 is the custom
     * @param absorption 0.9 is the custom
     */
    record TwoConstants(double uc, double uv, double efficiency, double absorption) implements CellHeating {
        public static final TwoConstants OPEN_RACK = new TwoConstants(29, 0, 0.1, 0.9);
        public static final TwoConstants ROOF_WITH_AIR_BEHIND = new TwoConstants(20, 0, 0.1, 0.9);
        public static final TwoConstants FLUSH_ROOF = new TwoConstants(15, 0, 0.1, 0.9);

        @Override
        public double kelvinPerWPerM2(double windMPerS) {
            return absorption * (1 - efficiency) / (uc + uv * windMPerS);
        }
    }

    /**
     * e^(a + b v) + d / 1000. Source: King, Boyson and Kratochvil, SAND2004-3535, 2004.
     *
     * @param d kelvins between cell and back at 1000 W/m2
     */
    record Exponential(double a, double b, double d) implements CellHeating {
        public static final Exponential OPEN_RACK_GLASS_POLYMER = new Exponential(-3.56, -0.075, 3);
        public static final Exponential CLOSE_ROOF_GLASS_GLASS = new Exponential(-2.98, -0.0471, 1);

        @Override
        public double kelvinPerWPerM2(double windMPerS) {
            return Math.exp(a + b * windMPerS) + d / 1000;
        }
    }
}
