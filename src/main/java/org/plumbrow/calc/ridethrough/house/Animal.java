package org.plumbrow.calc.ridethrough.house;

import org.plumbrow.calc.Range;

/**
 * One animal and its total heat at 20 degC.
 * <p>Source of all equations: CIGR, 4th report of the working group on climatization of animal houses (2002), from memory;
 * broilers also read in a public poultry-house calculation, poultry cross-checked with Chepete and Xin (Livestock
 * Environment VI); pullets are that review's own equation.
 */
public sealed interface Animal {

    Range POULTRY_KG = new Range(0.03, 25, "kg");
    Range PIG_KG = new Range(1, 350, "kg");
    Range CATTLE_KG = new Range(30, 1200, "kg");
    Range EGG_KG = new Range(0, 0.08, "kg a day");
    /** Feed energy over that of maintenance. */
    Range FEED_LEVEL = new Range(1, 4, "times maintenance");

    Range MILK_KG = new Range(0, 80, "kg a day");
    Range PREGNANT_DAYS = new Range(0, 290, "days");
    Range GAIN_KG = new Range(0, 1, "kg a day");

    /** W, both sensible and latent, at 20 degC. */
    double totalW();

    Species species();

    /** 10.62 m^0.75. */
    record Broiler(double massKg) implements Animal {
        public Broiler {
            POULTRY_KG.check("mass of a bird", massKg);
        }

        @Override
        public double totalW() {
            return 10.62 * Math.pow(massKg, 0.75);
        }

        @Override
        public Species species() {
            return Species.BROILERS;
        }
    }

    /** 6.28 m^0.75 + 25 Y in cages, 6.8 m^0.75 + 25 Y on the floor, Y kg of eggs a day. */
    record Layer(double massKg, double eggsKgPerDay, boolean caged) implements Animal {
        public Layer {
            POULTRY_KG.check("mass of a bird", massKg);
            EGG_KG.check("eggs", eggsKgPerDay);
        }

        @Override
        public double totalW() {
            return (caged ? 6.28 : 6.8) * Math.pow(massKg, 0.75) + 25 * eggsKgPerDay;
        }

        @Override
        public Species species() {
            return Species.LAYERS;
        }
    }

    /** 6.20 m^0.71. */
    record Pullet(double massKg) implements Animal {
        public Pullet {
            POULTRY_KG.check("mass of a bird", massKg);
        }

        @Override
        public double totalW() {
            return 6.20 * Math.pow(massKg, 0.71);
        }

        @Override
        public Species species() {
            return Species.LAYERS;
        }
    }

    /** 9.86 m^0.77. */
    record Turkey(double massKg) implements Animal {
        public Turkey {
            POULTRY_KG.check("mass of a bird", massKg);
        }

        @Override
        public double totalW() {
            return 9.86 * Math.pow(massKg, 0.77);
        }

        @Override
        public Species species() {
            return Species.TURKEYS;
        }
    }

    /** 5.09 m^0.75 + (1 - (0.47 + 0.003 m)) (n - 1) 5.09 m^0.75, n the feed level. */
    record FatteningPig(double massKg, double feedLevel) implements Animal {
        public FatteningPig {
            PIG_KG.check("mass of a pig", massKg);
            FEED_LEVEL.check("feed level", feedLevel);
        }

        @Override
        public double totalW() {
            double maintenance = 5.09 * Math.pow(massKg, 0.75);
            return maintenance + (1 - (0.47 + 0.003 * massKg)) * (feedLevel - 1) * maintenance;
        }

        @Override
        public Species species() {
            return Species.PIGS;
        }
    }

    /** Below 20 kg: 7.4 m^0.66 + (1 - (0.47 + 0.02 m)) (n - 1) 7.4 m^0.66, n the feed level. */
    record Piglet(double massKg, double feedLevel) implements Animal {
        public Piglet {
            new Range(1, 20, "kg").check("mass of a piglet", massKg);
            FEED_LEVEL.check("feed level", feedLevel);
        }

        @Override
        public double totalW() {
            double maintenance = 7.4 * Math.pow(massKg, 0.66);
            return maintenance + (1 - (0.47 + 0.02 * massKg)) * (feedLevel - 1) * maintenance;
        }

        @Override
        public Species species() {
            return Species.PIGS;
        }
    }

    /** 4.85 m^0.75 + 0.00008 p^3 + 76 Y, p days pregnant, Y kg of gain a day. */
    record DrySow(double massKg, double daysPregnant, double gainKgPerDay) implements Animal {
        public DrySow {
            PIG_KG.check("mass of a sow", massKg);
            PREGNANT_DAYS.check("days pregnant", daysPregnant);
            GAIN_KG.check("gain", gainKgPerDay);
        }

        @Override
        public double totalW() {
            return 4.85 * Math.pow(massKg, 0.75) + 8e-5 * Math.pow(daysPregnant, 3) + 76 * gainKgPerDay;
        }

        @Override
        public Species species() {
            return Species.PIGS;
        }
    }

    /** 4.85 m^0.75 + 28 Y, Y kg of milk a day; the piglets' own heat is not in it. */
    record NursingSow(double massKg, double milkKgPerDay) implements Animal {
        public NursingSow {
            PIG_KG.check("mass of a sow", massKg);
            MILK_KG.check("milk", milkKgPerDay);
        }

        @Override
        public double totalW() {
            return 4.85 * Math.pow(massKg, 0.75) + 28 * milkKgPerDay;
        }

        @Override
        public Species species() {
            return Species.PIGS;
        }
    }

    /** 5.6 m^0.75 + 22 Y + 0.000016 p^3, Y kg of milk a day, p days pregnant. */
    record Cow(double massKg, double milkKgPerDay, double daysPregnant) implements Animal {
        public Cow {
            CATTLE_KG.check("mass of a cow", massKg);
            MILK_KG.check("milk", milkKgPerDay);
            PREGNANT_DAYS.check("days pregnant", daysPregnant);
        }

        @Override
        public double totalW() {
            return 5.6 * Math.pow(massKg, 0.75) + 22 * milkKgPerDay + 1.6e-5 * Math.pow(daysPregnant, 3);
        }

        @Override
        public Species species() {
            return Species.CATTLE;
        }
    }
}
