package org.plumbrow.design.draft;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.electrical.BurialCover;
import org.plumbrow.survey.SurveyFacts;
import org.plumbrow.survey.SurveyFacts.Route;

/** What the survey says of the ways that conductors take; where it says nothing, the usual, and that it is only that. Pure. */
final class SurveyedWay {

    private static final double USUAL_STRING_RUN_FT = 100;
    private static final double USUAL_AC_RUN_FT = 50;
    private static final double USUAL_TRENCH_FT = 200;
    private static final double USUAL_COVER_IN = 24;
    private static final Set<String> NOTHING = Set.of("nothing", "none", "no");
    private static final double LEAST_FT = 1;
    private static final double MOST_FT = 5000;

    private final SurveyFacts survey;

    SurveyedWay(SurveyFacts survey) {
        this.survey = survey;
    }

    /** @param from where it is from, as the design says it */
    record Length(double feet, String from) {

        private static Length of(@Nullable Double read, double usual) {
            return read == null
                    ? new Length(usual, "usual, not measured")
                    : new Length(Math.min(MOST_FT, Math.max(LEAST_FT, read)), "as surveyed");
        }
    }

    Length arrayToInverter() {
        return Length.of(survey.distances().arrayToInverterFt(), USUAL_STRING_RUN_FT);
    }

    /** Nobody surveys where the panel of the array will stand. */
    Length inverterToPanel() {
        return Length.of(null, USUAL_AC_RUN_FT);
    }

    /** To the point of interconnection: the distance that was read, else the routes one after the other. */
    Length toService(boolean ground) {
        Double read = survey.distances().inverterToPoiFt();
        return Length.of(read == null ? routesFt() : read, ground ? USUAL_TRENCH_FT : USUAL_AC_RUN_FT);
    }

    private @Nullable Double routesFt() {
        List<Route> routes = survey.routes();
        boolean known = !routes.isEmpty() && routes.stream().allMatch(route -> route.lengthFt() != null);
        return known
                ? (Double) routes.stream()
                        .map(Route::lengthFt)
                        .filter(Objects::nonNull)
                        .mapToDouble(Double::doubleValue)
                        .sum()
                : null;
    }

    /** Earth over the way to the service; null above ground. Of routes with different covers the least is drawn. */
    @Nullable
    Double coverIn(boolean ground) {
        if (survey.routes().isEmpty()) {
            return ground ? (Double) USUAL_COVER_IN : null;
        }
        return survey.routes().stream().anyMatch(SurveyedWay::isBuried)
                ? (Double) survey.routes().stream()
                        .filter(SurveyedWay::isBuried)
                        .map(Route::coverIn)
                        .filter(Objects::nonNull)
                        .min(Double::compare)
                        .orElse(USUAL_COVER_IN)
                : null;
    }

    /** A way that is bored wholly lies under a street or a driveway. */
    BurialCover under() {
        List<Route> buried =
                survey.routes().stream().filter(SurveyedWay::isBuried).toList();
        return !buried.isEmpty() && buried.stream().allMatch(Route::isBore)
                ? BurialCover.UNDER_STREETS_AND_DRIVEWAYS
                : BurialCover.ELSEWHERE;
    }

    private static boolean isBuried(Route route) {
        return route.isTrench() || route.isBore();
    }

    String crossings() {
        return survey.routes().stream()
                .map(Route::crosses)
                .filter(Objects::nonNull)
                .filter(what ->
                        !what.isBlank() && !NOTHING.contains(what.strip().toLowerCase(Locale.ROOT)))
                .distinct()
                .collect(Collectors.joining("; "));
    }
}
