package org.plumbrow.estimate.site;

import java.util.List;
import java.util.UUID;
import org.plumbrow.calc.energy.Horizon;
import org.plumbrow.survey.SurveyFacts;
import org.plumbrow.survey.Surveys;
import org.springframework.stereotype.Component;

/**
 * What the survey read of the horizon. The estimate stays with what was read before the contract's work began; readings of
 * day one count only where there are no others. What lies below the level hides no sun and counts as 0.
 */
@Component
public class SurveyedHorizon {

    private final Surveys surveys;

    SurveyedHorizon(Surveys surveys) {
        this.surveys = surveys;
    }

    List<Horizon.Reading> of(UUID projectId) {
        SurveyFacts survey = surveys.factsUnchecked(projectId);
        List<Horizon.Reading> before = of(survey, SurveyFacts.Occasion.BEFORE);
        return before.isEmpty() ? of(survey, SurveyFacts.Occasion.DAY_ONE) : before;
    }

    /** As the yield takes them, in the order of the azimuths. */
    public static List<Horizon.Reading> of(SurveyFacts survey, SurveyFacts.Occasion occasion) {
        return survey.horizon(occasion).stream()
                .map(one -> new Horizon.Reading(one.azimuthDeg(), Math.max(0, one.elevationDeg())))
                .toList();
    }
}
