package org.plumbrow.calc.ridethrough.house;

import org.plumbrow.calc.Range;

/**
 * A house full of animals of one kind.
 *
 * @param animals how many, 1 to 500,000
 * @param volumeM3 of its air, 20 to 200,000
 * @param uaWPerK heat through the envelope, see {@link Envelope#uaWPerK()}, 0 to 100,000
 * @param airChangesPerHour what comes in by itself with the fans off, 0 to 60: about 0.5 closed, 15 with curtains dropped
 * @param curtainsOpen are curtains or vents open that need no power? Then carbon dioxide is no limit
 * @param massFactor how many times the heat capacity of the air takes part, 1 to 40
 * @param uplift today's animals against the equations, 1 to 2; 1.2 for pigs (measured market pigs against the equation)
 */
public record LivestockHouse(
        String name,
        Animal animal,
        int animals,
        double volumeM3,
        double uaWPerK,
        double airChangesPerHour,
        boolean curtainsOpen,
        double massFactor,
        double uplift) {

    public static final Range ANIMALS = new Range(1, 500_000, "animals");
    public static final Range VOLUME = new Range(20, 200_000, "m3");
    public static final Range UA = new Range(0, 100_000, "W/K");
    public static final Range AIR_CHANGES = new Range(0, 60, "per hour");
    public static final Range MASS_FACTOR = new Range(1, 40, "times the air");
    public static final Range UPLIFT = new Range(1, 2, "times");
    /** The equation gives a market pig 232 W, people measured 264 to 293. */
    public static final double PIG_UPLIFT = 1.2;

    public LivestockHouse {
        ANIMALS.check("animals", animals);
        VOLUME.check("volume", volumeM3);
        UA.check("heat loss", uaWPerK);
        AIR_CHANGES.check("air changes", airChangesPerHour);
        MASS_FACTOR.check("mass factor", massFactor);
        UPLIFT.check("uplift", uplift);
    }

    /** A closed house, the factors as usual for its animals. */
    public static LivestockHouse closed(
            String name, Animal animal, int animals, double volumeM3, double uaWPerK, double airChangesPerHour) {
        Species species = animal.species();
        return new LivestockHouse(
                name,
                animal,
                animals,
                volumeM3,
                uaWPerK,
                airChangesPerHour,
                false,
                species.usualMassFactor(),
                species == Species.PIGS ? PIG_UPLIFT : 1);
    }

    public LivestockHouse withMassFactor(double factor) {
        return new LivestockHouse(
                name, animal, animals, volumeM3, uaWPerK, airChangesPerHour, curtainsOpen, factor, uplift);
    }

    public LivestockHouse withUplift(double factor) {
        return new LivestockHouse(
                name, animal, animals, volumeM3, uaWPerK, airChangesPerHour, curtainsOpen, massFactor, factor);
    }

    /** Curtains dropped or vents open, without power. */
    public LivestockHouse opened(double openAirChangesPerHour) {
        return new LivestockHouse(
                name, animal, animals, volumeM3, uaWPerK, openAirChangesPerHour, true, massFactor, uplift);
    }

    /** Total heat at 20 degC in units of 1,000 W, without the uplift. */
    public double hpu() {
        return animals * animal.totalW() / 1000;
    }
}
