package org.plumbrow.estimate.site;

import java.util.List;
import java.util.UUID;
import org.plumbrow.calc.energy.Horizon;
import org.springframework.stereotype.Component;

/** What the survey read of the horizon. */
@Component
class SurveyedHorizon {

    List<Horizon.Reading> of(UUID projectId) {
        return List.of();
    }
}
