package org.plumbrow.estimate.site;

import java.util.List;
import java.util.UUID;
import org.plumbrow.calc.energy.Horizon;
import org.plumbrow.survey.SurveyFacts;
import org.plumbrow.survey.Surveys;
import org.springframework.stereotype.Component;

/**
 * What the survey read of the horizon. The estimate stays with what was read before the contract's work began; readings of
 * day one count only where there are no others. A reading that is no angle is kept by the survey and left out here.
 */
@Component
class SurveyedHorizon {

    private final Surveys surveys;

    SurveyedHorizon(Surveys surveys) {
        this.surveys = surveys;
    }

    List<Horizon.Reading> of(UUID projectId) {
        SurveyFacts survey = surveys.factsUnchecked(projectId);
        List<SurveyFacts.HorizonReading> before = survey.horizon(SurveyFacts.Occasion.BEFORE);
        return (before.isEmpty() ? survey.horizon(SurveyFacts.Occasion.DAY_ONE) : before)
                .stream()
                        .filter(one -> Horizon.Reading.AZIMUTH.holds(one.azimuthDeg())
                                && Horizon.Reading.ELEVATION.holds(one.elevationDeg()))
                        .map(one -> new Horizon.Reading(one.azimuthDeg(), one.elevationDeg()))
                        .toList();
    }
}
