package org.plumbrow.calc.duration;

import java.util.List;

/**
 * The activities of a project: what has to be done and waited for, in which order, how long each takes.
 *
 * <p>days of a work = quantity ÷ rate a crew-day (the low rate gives the long duration) + set-up, × people of the row ÷
 * people of the crew. Source of the order of work: trade practice; of each rate and wait: the branch's table, whose
 * shipped rows name theirs. Limits: the estimate of a quantity stands only until the design gives a count; nothing is
 * said about travel and weather, which the plan adds.
 */
public final class ProjectActivities {

    private ProjectActivities() {}

    /** @return in the order of the work; each predecessor is one of them */
    public static List<ProjectActivity> of(ProjectWork work, DurationTables tables) {
        Recipe recipe = new Recipe(work, tables);
        new PaperRecipe(recipe).write();
        new ArrayRecipe(recipe).write();
        new ElectricalRecipe(recipe).write();
        new EndRecipe(recipe).write();
        return recipe.finished();
    }
}
