package org.plumbrow.survey;

import java.util.Map;
import org.plumbrow.RouteSamples;
import org.plumbrow.TestWorld.TestBranch;
import org.springframework.stereotype.Component;

/** Values for the addresses of the survey's pages. A remark is looked for only after the role was asked for. */
@Component
class SurveySamples implements RouteSamples {

    private final SurveyFixture surveys;

    SurveySamples(SurveyFixture surveys) {
        this.surveys = surveys;
    }

    @Override
    public Map<String, String> in(TestBranch branch) {
        return Map.of(
                "surveyPart", "service",
                "photoItem", "2",
                "remarkId", surveys.remark(branch).toString());
    }
}
