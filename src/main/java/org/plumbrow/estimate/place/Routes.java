package org.plumbrow.estimate.place;

import static org.plumbrow.estimate.place.Side.say;

import org.plumbrow.project.ProjectFacts;
import org.plumbrow.survey.SurveyFacts;

/** Ways of the conductors in words. */
final class Routes {

    private Routes() {}

    /** "Array to barn: trench of 300 ft, crosses field lane." */
    static String words(SurveyFacts.Route route) {
        String kind = route.isTrench() ? "trench" : route.isBore() ? "bore" : "above ground";
        Double feet = route.lengthFt();
        String length = feet == null ? ", length not read" : say(", %,.0f ft", feet);
        String crosses = route.crosses();
        return "%s: %s%s%s."
                .formatted(
                        route.name(),
                        kind,
                        length,
                        crosses == null ? "; what it crosses was not read" : "; crosses " + crosses);
    }

    static Lack lack(ProjectFacts project, String sentence) {
        return new Lack(sentence, "/projects/" + project.id() + "/survey/routes", "Routes");
    }
}
