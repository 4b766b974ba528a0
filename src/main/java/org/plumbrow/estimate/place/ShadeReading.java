package org.plumbrow.estimate.place;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.energy.Horizon;
import org.plumbrow.estimate.EnergyInputs;
import org.plumbrow.estimate.Estimates;
import org.plumbrow.estimate.site.SurveyedHorizon;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectTitles;
import org.plumbrow.project.Projects;
import org.plumbrow.survey.SurveyFacts;
import org.plumbrow.survey.SurveyFacts.Occasion;
import org.plumbrow.survey.Surveys;
import org.plumbrow.web.May;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * What the page of shade shows. Where day one read only some directions, the others keep what was read before. A year
 * under one horizon takes less than a millisecond, so it is worked out at each visit and nothing can be stale.
 */
@Service
@Transactional(readOnly = true)
class ShadeReading {

    /** As the survey asks. */
    private static final int LEAST_READINGS = 9;

    private static final List<String> POINTS = List.of("N", "NE", "E", "SE", "S", "SW", "W", "NW");

    private final Projects projects;
    private final ProjectAccess access;
    private final ProjectTitles titles;
    private final Surveys surveys;
    private final Estimates estimates;

    ShadeReading(Projects projects, ProjectAccess access, ProjectTitles titles, Surveys surveys, Estimates estimates) {
        this.projects = projects;
        this.access = access;
        this.titles = titles;
        this.surveys = surveys;
        this.estimates = estimates;
    }

    ShadeView of(UUID projectId) {
        access.require(projectId, May.SEE_ESTIMATE);
        ProjectFacts project = projects.facts(projectId);
        SurveyFacts survey = surveys.factsUnchecked(projectId);
        List<Horizon.Reading> before = SurveyedHorizon.of(survey, Occasion.BEFORE);
        List<Horizon.Reading> dayOne = SurveyedHorizon.of(survey, Occasion.DAY_ONE);
        Optional<EnergyInputs> inputs = estimates.inputs(projectId);
        List<Horizon.Reading> whole = filled(dayOne, before);
        return new ShadeView(
                titles.of(project),
                before.size(),
                dayOne.size(),
                dayOne.isEmpty() ? 0 : whole.size() - dayOne.size(),
                readings(survey),
                HorizonPlot.of(before, dayOne, SitePlace.of(project, inputs.orElse(null))),
                inputs.map(known -> underBoth(known, before, whole, project)).orElse(null),
                new Lacks(projectId, before.size(), dayOne.size(), inputs.orElse(null)).of(estimates));
    }

    private static @Nullable ShadeYield underBoth(
            EnergyInputs inputs, List<Horizon.Reading> before, List<Horizon.Reading> dayOne, ProjectFacts project) {
        if (before.isEmpty() && dayOne.isEmpty()) {
            return null;
        }
        boolean again = !before.isEmpty() && !dayOne.isEmpty();
        return ShadeYield.of(
                inputs,
                again ? Optional.of(new Horizon(before)) : Optional.empty(),
                new Horizon(dayOne.isEmpty() ? before : dayOne),
                project.contract().guaranteedKwhPerYear());
    }

    private static List<Horizon.Reading> filled(List<Horizon.Reading> dayOne, List<Horizon.Reading> before) {
        if (dayOne.isEmpty()) {
            return dayOne;
        }
        Map<Double, Horizon.Reading> byAzimuth = new TreeMap<>();
        before.forEach(one -> byAzimuth.put(one.azimuthDeg(), one));
        dayOne.forEach(one -> byAzimuth.put(one.azimuthDeg(), one));
        return List.copyOf(byAzimuth.values());
    }

    private static List<ShadeView.Reading> readings(SurveyFacts survey) {
        Map<Double, Double> before = byAzimuth(survey, Occasion.BEFORE);
        Map<Double, Double> dayOne = byAzimuth(survey, Occasion.DAY_ONE);
        TreeSet<Double> azimuths = new TreeSet<>(before.keySet());
        azimuths.addAll(dayOne.keySet());
        return azimuths.stream()
                .map(azimuth -> reading(azimuth, before.get(azimuth), dayOne.get(azimuth)))
                .toList();
    }

    private static Map<Double, Double> byAzimuth(SurveyFacts survey, Occasion occasion) {
        return survey.horizon(occasion).stream()
                .collect(Collectors.toMap(
                        SurveyFacts.HorizonReading::azimuthDeg,
                        SurveyFacts.HorizonReading::elevationDeg,
                        (one, other) -> other));
    }

    private static ShadeView.Reading reading(double azimuth, @Nullable Double before, @Nullable Double dayOne) {
        long degrees = Math.round(azimuth);
        String point = degrees % 45 == 0 ? " " + POINTS.get((int) (degrees / 45) % POINTS.size()) : "";
        return new ShadeView.Reading(
                degrees + "°" + point, before, dayOne, before == null || dayOne == null ? null : dayOne - before);
    }

    /** What is not known, and where it is written. */
    private record Lacks(
            UUID projectId,
            int before,
            int dayOne,
            @Nullable EnergyInputs inputs) {

        List<Lack> of(Estimates estimates) {
            String base = "/projects/" + projectId;
            List<Lack> lacks = new ArrayList<>();
            if (before < LEAST_READINGS) {
                lacks.add(new Lack(beforeSentence(), base + "/survey/shade", "Shade in the survey"));
            }
            if (dayOne < LEAST_READINGS) {
                lacks.add(new Lack(dayOneSentence(), base + "/survey/day-one", "Shade on day one"));
            }
            if (inputs == null) {
                estimates.missing(projectId).forEach(one -> lacks.add(new Lack(one, base + "/yield", "Yield")));
            } else if (!inputs.horizonApplied() && before + dayOne > 0) {
                lacks.add(new Lack(
                        "The yield of this project leaves the horizon out by choice; here it is counted.",
                        base + "/yield",
                        "Yield"));
            }
            return lacks;
        }

        private String beforeSentence() {
            return before == 0
                    ? "No horizon was read before the work."
                    : "Before the work %s read; nine are the least.".formatted(directions(before));
        }

        private String dayOneSentence() {
            return dayOne == 0
                    ? "The horizon was not read again on day one. The crew lead reads it when the work begins, or whoever is there."
                    : "On day one %s read; elsewhere the reading before counts.".formatted(directions(dayOne));
        }

        private static String directions(int count) {
            return count == 1 ? "one direction was" : count + " directions were";
        }
    }
}
