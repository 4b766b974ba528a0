package org.plumbrow.calc.duration;

import static org.plumbrow.calc.duration.ActivityCode.AC_GEAR;
import static org.plumbrow.calc.duration.ActivityCode.BORE;
import static org.plumbrow.calc.duration.ActivityCode.COMMISSIONING;
import static org.plumbrow.calc.duration.ActivityCode.CONDUCTORS;
import static org.plumbrow.calc.duration.ActivityCode.CUTOVER;
import static org.plumbrow.calc.duration.ActivityCode.CUTOVER_APPOINTMENT;
import static org.plumbrow.calc.duration.ActivityCode.ELECTRICAL_FINISH;
import static org.plumbrow.calc.duration.ActivityCode.FENCE;
import static org.plumbrow.calc.duration.ActivityCode.HAND_OVER;
import static org.plumbrow.calc.duration.ActivityCode.INSPECTION;
import static org.plumbrow.calc.duration.ActivityCode.MODULES;
import static org.plumbrow.calc.duration.ActivityCode.PERMISSION;
import static org.plumbrow.calc.duration.ActivityCode.SERVICE_INSPECTION;
import static org.plumbrow.calc.duration.ActivityCode.SITE_FINISH;
import static org.plumbrow.calc.duration.ActivityCode.TRENCH;

/**
 * From built to handed over. The cutover needs the service side, its inspection and the utility's appointment, not the
 * array; a home has one inspection for both.
 */
final class EndRecipe {

    private final Recipe recipe;

    EndRecipe(Recipe recipe) {
        this.recipe = recipe;
    }

    void write() {
        recipe.draft(FENCE)
                .needs(Skill.INSTALLER)
                .outdoors()
                .after(recipe.keys(MODULES))
                .rate("fence", QuantityKind.FENCE_FT);
        if (!recipe.work.home()) {
            recipe.draft(SITE_FINISH)
                    .needs(Skill.INSTALLER)
                    .outdoors()
                    .after(ELECTRICAL_FINISH, FENCE, TRENCH, BORE)
                    .rate("reseed", QuantityKind.RESEED_ACRES)
                    .fixed("demobilise");
            recipe.draft(SERVICE_INSPECTION).waits("inspection").after(CONDUCTORS);
        }
        recipe.draft(INSPECTION).waits("inspection").after(ELECTRICAL_FINISH);
        cutover();
        recipe.draft(COMMISSIONING)
                .needs(Skill.ELECTRICIAN)
                .outdoors()
                .after(PERMISSION)
                .fixedBySize("commissioning");
        recipe.draft(HAND_OVER).fixed("hand-over").after(COMMISSIONING, SITE_FINISH, FENCE);
    }

    private void cutover() {
        recipe.draft(CUTOVER_APPOINTMENT)
                .waits("cutover-appointment")
                .after(recipe.siteIsOpen())
                .justInTime();
        recipe.draft(CUTOVER)
                .needs(Skill.ELECTRICIAN, Skill.SERVICE)
                .outdoors()
                .after(AC_GEAR, CONDUCTORS, CUTOVER_APPOINTMENT)
                .after(recipe.work.home() ? INSPECTION : SERVICE_INSPECTION)
                .fixed("cutover");
        recipe.draft(PERMISSION).waits("permission").after(INSPECTION, CUTOVER);
    }
}
