package org.plumbrow.design.draft;

import java.util.List;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.part.Cells;
import org.plumbrow.design.part.Part;
import org.plumbrow.survey.SurveyFacts;

/**
 * Proposes what follows from what is drawn and surveyed already: strings from arrays and inverters, runs and devices from
 * strings. A proposal is shown, looked at and kept by a person; it is never kept by itself.
 */
final class Proposer {

    private final DesignFacts design;
    private final SurveyFacts survey;

    Proposer(DesignFacts design, SurveyFacts survey) {
        this.design = design;
        this.survey = survey;
    }

    /** Empty for a part about which nothing follows. */
    List<Cells> of(Part part) {
        return switch (part) {
            case STRINGS -> new ProposedStrings(design).rows();
            case RUNS -> new ProposedRuns(design, survey).rows();
            case DEVICES -> new ProposedDevices(design, survey).rows();
            case LABELS -> new ProposedLabels(design).rows();
            default -> List.of();
        };
    }

    static boolean knows(Part part) {
        return part == Part.STRINGS || part == Part.RUNS || part == Part.DEVICES || part == Part.LABELS;
    }
}
