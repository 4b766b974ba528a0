package org.plumbrow.schedule.lookahead;

import org.plumbrow.schedule.plan.PlanChanges;

/** What publishing a draft would change, in one sentence. */
final class EffectWords {

    private EffectWords() {}

    /** "12 dates of 5 projects move; one promise breaks that held." */
    static String inShort(PlanChanges changes) {
        if (changes.isNothing()) {
            return "No date differs from the published plan.";
        }
        int dates = changes.moves().size() + changes.gone().size();
        StringBuilder sentence = new StringBuilder("%s %s of %d %s %s"
                .formatted(
                        LookAheadWords.figure(dates),
                        dates == 1 ? "date" : "dates",
                        changes.projects().size(),
                        changes.projects().size() == 1 ? "project" : "projects",
                        dates == 1 ? "differs" : "differ"));
        sentence.append(" from the published plan");
        if (!changes.breaking().isEmpty()) {
            sentence.append("; ")
                    .append(LookAheadWords.number(changes.breaking().size()))
                    .append(changes.breaking().size() == 1 ? " promise breaks" : " promises break")
                    .append(" or breaks by more");
        }
        if (!changes.mended().isEmpty()) {
            sentence.append("; ")
                    .append(LookAheadWords.number(changes.mended().size()))
                    .append(changes.mended().size() == 1 ? " promise holds again" : " promises hold again");
        }
        return sentence.append('.').toString();
    }
}
