package org.plumbrow.calc.duration;

import static org.plumbrow.calc.duration.ActivityCode.AGREEMENT;
import static org.plumbrow.calc.duration.ActivityCode.DC_WIRING;
import static org.plumbrow.calc.duration.ActivityCode.FOUNDATION;
import static org.plumbrow.calc.duration.ActivityCode.LOCATE;
import static org.plumbrow.calc.duration.ActivityCode.MODULES;
import static org.plumbrow.calc.duration.ActivityCode.MODULES_DELIVERY;
import static org.plumbrow.calc.duration.ActivityCode.PERMIT;
import static org.plumbrow.calc.duration.ActivityCode.RACKING;
import static org.plumbrow.calc.duration.ActivityCode.RACKING_DELIVERY;
import static org.plumbrow.calc.duration.ActivityCode.SITE_START;
import static org.plumbrow.calc.duration.ActivityCode.ZONING;

/** The arrays, each with its own foundation, racking and modules; racking and modules of one array are one crew's. */
final class ArrayRecipe {

    private final Recipe recipe;

    ArrayRecipe(Recipe recipe) {
        this.recipe = recipe;
    }

    void write() {
        start();
        for (int number = 0; number < recipe.work.arrays().size(); number++) {
            ArrayWork array = recipe.work.arrays().get(number);
            switch (array.mounting()) {
                case GROUND -> ground(number, array);
                case FLAT_ROOF -> flatRoof(number, array);
                case PITCHED_ROOF -> pitchedRoof(number, array);
            }
            wiring(number, array);
        }
    }

    /** A roof of a home is mobilised by the same crew in the same visit: no activity of its own. */
    private void start() {
        if (recipe.work.home() && !recipe.work.onGround()) {
            return;
        }
        Recipe.Draft start = recipe.draft(SITE_START)
                .needs(Skill.INSTALLER)
                .outdoors()
                .after(PERMIT, ZONING, AGREEMENT, LOCATE)
                .fixedBySize("mobilise");
        if (recipe.work.onGround()) {
            start.fixed("stake");
        }
        if (recipe.work.arrays().stream().anyMatch(array -> array.mounting() == Mounting.FLAT_ROOF)) {
            start.needs(Skill.ROOF).fixed("mark-grid");
        }
        if (!recipe.work.onGround()) {
            start.called("mobilising");
        }
    }

    private void ground(int number, ArrayWork array) {
        Foundation foundation = array.foundation();
        recipe.draft(FOUNDATION, FOUNDATION.key(number))
                .called(words(foundation.words(), number, array))
                .needs(Skill.INSTALLER, Skill.POST_OPERATOR)
                .outdoors()
                .after(SITE_START, LOCATE, RACKING_DELIVERY)
                .rate(foundation.rate(), recipe.quantities.posts(array));
        recipe.draft(RACKING, RACKING.key(number))
                .called(words(RACKING.words(), number, array))
                .needs(Skill.INSTALLER)
                .outdoors()
                .inGroup(group(number))
                .after(FOUNDATION.key(number), foundation.curingCalendarDays())
                .rate("racking", recipe.quantities.modules(array));
        modules(number, array, "modules-ground").after(RACKING.key(number), 0);
    }

    private void flatRoof(int number, ArrayWork array) {
        recipe.draft(RACKING, RACKING.key(number))
                .called(words("ballast and rails", number, array))
                .needs(Skill.INSTALLER, Skill.ROOF)
                .outdoors()
                .inGroup(group(number))
                .after(recipe.siteIsOpen())
                .after(RACKING_DELIVERY)
                .rate("ballast", recipe.quantities.modules(array));
        modules(number, array, "modules-flat").needs(Skill.ROOF).after(RACKING.key(number), 0);
    }

    private void pitchedRoof(int number, ArrayWork array) {
        Recipe.Draft roof = modules(number, array, "modules-pitched")
                .called(words("roof array", number, array))
                .needs(Skill.ROOF)
                .after(recipe.siteIsOpen())
                .after(RACKING_DELIVERY);
        if (recipe.work.home() && !recipe.work.onGround() && number == 0) {
            roof.fixedBySize("mobilise");
        }
    }

    private Recipe.Draft modules(int number, ArrayWork array, String row) {
        Quantity modules = recipe.quantities.modules(array);
        Recipe.Draft draft = recipe.draft(MODULES, MODULES.key(number))
                .called(words(MODULES.words(), number, array))
                .needs(Skill.INSTALLER)
                .outdoors()
                .inGroup(group(number))
                .after(MODULES_DELIVERY)
                .rate(row, modules);
        if (recipe.work.inverterKind() == InverterKind.MICROINVERTERS) {
            draft.after(ActivityCode.INVERTERS_DELIVERY)
                    .rate(
                            "microinverters",
                            Quantity.estimated(QuantityKind.MICROINVERTERS, modules.amount(), "one at each module"));
        }
        return draft;
    }

    /** At a home the strings are clipped in as the modules go up; elsewhere electricians follow. */
    private void wiring(int number, ArrayWork array) {
        Quantity strings = recipe.quantities.strings(array);
        if (recipe.work.home()) {
            recipe.draft(MODULES, MODULES.key(number)).rate("dc-wiring", strings);
            return;
        }
        recipe.draft(DC_WIRING, DC_WIRING.key(number))
                .called(words(DC_WIRING.words(), number, array))
                .needs(Skill.ELECTRICIAN)
                .outdoors()
                .after(MODULES.key(number), 0)
                .rate("dc-wiring", strings);
    }

    private static String group(int number) {
        return "array-" + (number + 1);
    }

    private String words(String plain, int number, ArrayWork array) {
        return recipe.work.arrays().size() == 1
                ? plain
                : "%s, array %d (%s)"
                        .formatted(plain, number + 1, array.mounting().words());
    }
}
