package org.plumbrow.calc.duration;

import static org.plumbrow.calc.duration.ActivityCode.AGREEMENT;
import static org.plumbrow.calc.duration.ActivityCode.DESIGN;
import static org.plumbrow.calc.duration.ActivityCode.GEAR_DELIVERY;
import static org.plumbrow.calc.duration.ActivityCode.GROUND_TEST;
import static org.plumbrow.calc.duration.ActivityCode.INTERCONNECTION;
import static org.plumbrow.calc.duration.ActivityCode.INVERTERS_DELIVERY;
import static org.plumbrow.calc.duration.ActivityCode.LOCATE;
import static org.plumbrow.calc.duration.ActivityCode.MODULES_DELIVERY;
import static org.plumbrow.calc.duration.ActivityCode.PERMIT;
import static org.plumbrow.calc.duration.ActivityCode.RACKING_DELIVERY;
import static org.plumbrow.calc.duration.ActivityCode.STRUCTURAL_LETTER;
import static org.plumbrow.calc.duration.ActivityCode.SURVEY;
import static org.plumbrow.calc.duration.ActivityCode.ZONING;

/** Everything before the crew comes: survey, design, and what is then waited for. */
final class PaperRecipe {

    private final Recipe recipe;
    private final WaitChoices waits;

    PaperRecipe(Recipe recipe) {
        this.recipe = recipe;
        waits = recipe.work.waits();
    }

    void write() {
        recipe.draft(SURVEY).fixedBySize("survey");
        recipe.draft(DESIGN).fixedBySize("design").after(SURVEY);
        permits();
        interconnection();
        deliveries();
        if (recipe.digs()) {
            recipe.draft(LOCATE).waits("locate").after(PERMIT, ZONING).justInTime();
        }
    }

    private void permits() {
        if (waits.groundTest()) {
            recipe.draft(GROUND_TEST).waits("ground-test").after(SURVEY);
        }
        if (waits.structuralLetter()) {
            recipe.draft(STRUCTURAL_LETTER).waits("structural-letter").after(DESIGN);
        }
        if (waits.zoning()) {
            recipe.draft(ZONING).waits("zoning").after(DESIGN);
        }
        recipe.draft(PERMIT).waits(waits.permit().row()).after(DESIGN, STRUCTURAL_LETTER, GROUND_TEST);
    }

    private void interconnection() {
        Recipe.Draft approval = recipe.draft(INTERCONNECTION).after(DESIGN);
        switch (waits.interconnection()) {
            case SMALL_INVERTER -> approval.waits("interconnection-complete").waits("interconnection-small");
            case FAST_TRACK -> approval.waits("interconnection-fast");
            case STUDY -> approval.waits("interconnection-study");
        }
        recipe.draft(AGREEMENT).waits("agreement").after(INTERCONNECTION);
    }

    private void deliveries() {
        recipe.draft(RACKING_DELIVERY).waits("racking-delivery").after(DESIGN);
        recipe.draft(MODULES_DELIVERY).waits("modules-delivery").after(DESIGN);
        recipe.draft(INVERTERS_DELIVERY).waits("inverters-delivery").after(DESIGN);
        recipe.draft(GEAR_DELIVERY)
                .waits(waits.largeGear() ? "large-gear-delivery" : "gear-delivery")
                .after(DESIGN);
    }
}
