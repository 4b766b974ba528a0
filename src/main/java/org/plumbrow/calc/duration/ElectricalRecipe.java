package org.plumbrow.calc.duration;

import static org.plumbrow.calc.duration.ActivityCode.AC_GEAR;
import static org.plumbrow.calc.duration.ActivityCode.BORE;
import static org.plumbrow.calc.duration.ActivityCode.CONDUCTORS;
import static org.plumbrow.calc.duration.ActivityCode.DC_WIRING;
import static org.plumbrow.calc.duration.ActivityCode.ELECTRICAL_FINISH;
import static org.plumbrow.calc.duration.ActivityCode.GEAR_DELIVERY;
import static org.plumbrow.calc.duration.ActivityCode.INVERTERS;
import static org.plumbrow.calc.duration.ActivityCode.INVERTERS_DELIVERY;
import static org.plumbrow.calc.duration.ActivityCode.LOCATE;
import static org.plumbrow.calc.duration.ActivityCode.MODULES;
import static org.plumbrow.calc.duration.ActivityCode.TRENCH;

/**
 * The electrical side, which does not wait for the array: digging, gear and conductors run beside it; only the last
 * terminations and the string tests need both.
 */
final class ElectricalRecipe {

    private static final String GROUP = "inverters-and-gear";

    private final Recipe recipe;

    ElectricalRecipe(Recipe recipe) {
        this.recipe = recipe;
    }

    void write() {
        digging();
        if (recipe.work.home()) {
            homeGear();
        } else {
            gear();
        }
        finish();
    }

    private void digging() {
        recipe.draft(TRENCH)
                .needs(Skill.EARTH_OPERATOR)
                .outdoors()
                .after(recipe.siteIsOpen())
                .after(LOCATE)
                .rate("trench", QuantityKind.TRENCH_FT)
                .rate("rock", QuantityKind.ROCK_FT);
        recipe.draft(BORE)
                .needs(Skill.BORE_OPERATOR)
                .outdoors()
                .after(recipe.siteIsOpen())
                .after(LOCATE)
                .rate("bore", QuantityKind.BORE_FT);
    }

    /** At a home one pair hangs the inverter, sets the gear and pulls the conductors in one go. */
    private void homeGear() {
        recipe.draft(AC_GEAR)
                .called("inverter, AC gear and conductors")
                .needs(Skill.ELECTRICIAN)
                .after(recipe.siteIsOpen())
                .after(INVERTERS_DELIVERY, GEAR_DELIVERY, TRENCH, BORE)
                .rate("inverters", QuantityKind.INVERTERS)
                .rate("ac-gear", QuantityKind.AC_GEAR_SETS)
                .rate("pull", QuantityKind.CONDUCTOR_RUN_FT);
    }

    private void gear() {
        recipe.draft(INVERTERS)
                .needs(Skill.ELECTRICIAN)
                .outdoors()
                .inGroup(GROUP)
                .after(recipe.siteIsOpen())
                .after(INVERTERS_DELIVERY)
                .rate("inverters", QuantityKind.INVERTERS);
        recipe.draft(AC_GEAR)
                .needs(Skill.ELECTRICIAN)
                .outdoors()
                .inGroup(GROUP)
                .after(recipe.siteIsOpen())
                .after(GEAR_DELIVERY)
                .rate("ac-gear", QuantityKind.AC_GEAR_SETS);
        recipe.draft(CONDUCTORS)
                .needs(Skill.ELECTRICIAN)
                .outdoors()
                .after(TRENCH, BORE, AC_GEAR)
                .rate("pull", QuantityKind.CONDUCTOR_RUN_FT);
    }

    private void finish() {
        Recipe.Draft finish = recipe.draft(ELECTRICAL_FINISH)
                .needs(Skill.ELECTRICIAN)
                .outdoors()
                .after(AC_GEAR, CONDUCTORS, INVERTERS)
                .after(recipe.keys(DC_WIRING))
                .after(recipe.keys(MODULES))
                .rate("terminations", QuantityKind.TERMINATIONS)
                .rate("tests", recipe.quantities.allStrings());
        if (recipe.work.home()) {
            finish.fixedBySize("demobilise").rate("reseed", QuantityKind.RESEED_ACRES);
        }
    }
}
