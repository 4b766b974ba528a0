package org.plumbrow.schedule.lookahead;

import java.util.UUID;
import org.plumbrow.project.ProjectFacts;

/**
 * A project in the grid.
 *
 * @param running the last part of its number, without zeros in front: "14"
 * @param weight how much a late day counts
 */
record ProjectLabel(UUID id, String number, String running, String name, int weight) {

    private static final int EDGES_PX = 14;
    private static final double LETTER_PX = 6.8;

    static ProjectLabel of(ProjectFacts facts) {
        String last = facts.number().substring(facts.number().lastIndexOf('-') + 1);
        return new ProjectLabel(
                facts.id(), facts.number(), last.replaceFirst("^0+(?=.)", ""), facts.name(), facts.weight());
    }

    static ProjectLabel unknown(UUID id) {
        return new ProjectLabel(id, "", "?", "A project", 1);
    }

    public String schedule() {
        return "/projects/" + id + "/schedule";
    }

    /** The longest of "14 Sedge Hollow: racking", "14 Sedge: racking", "14 racking", "14 Sedge", "14" that fits into so many pixels. */
    public String fitting(String work, int px) {
        int letters = (int) ((px - EDGES_PX) / LETTER_PX);
        String[] words = name.split(" ");
        String one = words[0];
        String two = words.length > 1 ? one + " " + words[1] : one;
        String[] candidates = {
            running + " " + two + ": " + work,
            running + " " + one + ": " + work,
            running + " " + work,
            running + " " + one,
            running
        };
        for (String candidate : candidates) {
            if (candidate.length() <= letters) {
                return candidate;
            }
        }
        return "";
    }
}
