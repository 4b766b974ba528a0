package org.plumbrow.calc.energy;

/** What a module's front lets through of beam that does not fall straight on it, against what falls straight. */
public sealed interface IncidenceModifier {

    /** Usual glass, 0.05. */
    IncidenceModifier USUAL = new Ashrae(0.05);

    /** @return 0 (all reflected) to 1, for a cosine of incidence above 0 */
    double at(double cosine);

    /** Cosine times modifier: the part of the facing beam that gets in. */
    double times(double cosine);

    /**
     * 1 - b (1 / cos - 1), not below 0. Source: Souka and Safwat, Solar Energy 10(4), 1966; ASHRAE 93-77.
     *
     * @param b 0 (no loss) to 0.2
     */
    record Ashrae(double b) implements IncidenceModifier {
        @Override
        public double at(double cosine) {
            return cosine <= 0 ? 0 : Math.max(0, 1 - b * (1 / cosine - 1));
        }

        @Override
        public double times(double cosine) {
            return cosine <= 0 ? 0 : Math.max(0, cosine * (1 + b) - b);
        }
    }

    /**
     * Reflection at one face by Fresnel and absorption in the glass by Bouguer. Source: De Soto, Klein and Beckman, Solar
     * Energy 80(1), 2006.
     *
     * @param refraction index of the glass, 1.526
     * @param extinctionPerM 4
     * @param thicknessM 0.002
     */
    record Physical(double refraction, double extinctionPerM, double thicknessM) implements IncidenceModifier {

        public static final Physical GLASS = new Physical(1.526, 4, 0.002);

        @Override
        public double at(double cosine) {
            if (cosine <= 0) {
                return 0;
            }
            double inside = Math.sqrt(1 - (1 - cosine * cosine) / (refraction * refraction));
            double across = (cosine - refraction * inside) / (cosine + refraction * inside);
            double along = (inside - refraction * cosine) / (inside + refraction * cosine);
            double through = 1 - (across * across + along * along) / 2;
            return through * Math.exp(-extinctionPerM * thicknessM / inside) / straight();
        }

        private double straight() {
            double face = (refraction - 1) / (refraction + 1);
            return (1 - face * face) * Math.exp(-extinctionPerM * thicknessM);
        }

        @Override
        public double times(double cosine) {
            return cosine * at(cosine);
        }
    }
}
