package org.plumbrow.estimate.place;

import static org.plumbrow.estimate.place.Side.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.estimate.EnergyInputs;
import org.plumbrow.estimate.EstimateFacts;
import org.plumbrow.estimate.Estimates;
import org.plumbrow.estimate.place.PlaceView.Change;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectContact;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectTitle;
import org.plumbrow.project.ProjectTitles;
import org.plumbrow.project.Projects;
import org.plumbrow.survey.SurveyFacts;
import org.plumbrow.survey.Surveys;
import org.plumbrow.web.Access;
import org.plumbrow.web.May;
import org.plumbrow.web.Words;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What the pages of roof or ground show: the survey's readings, the estimate's weather, the decision. */
@Service
@Transactional(readOnly = true)
class PlaceReading {

    private final Projects projects;
    private final ProjectAccess projectAccess;
    private final ProjectTitles titles;
    private final Surveys surveys;
    private final Estimates estimates;
    private final Placements placements;
    private final Access access;
    private final Words words;

    PlaceReading(
            Projects projects,
            ProjectAccess projectAccess,
            ProjectTitles titles,
            Surveys surveys,
            Estimates estimates,
            Placements placements,
            Access access,
            Words words) {
        this.projects = projects;
        this.projectAccess = projectAccess;
        this.titles = titles;
        this.surveys = surveys;
        this.estimates = estimates;
        this.placements = placements;
        this.access = access;
        this.words = words;
    }

    PlaceView of(UUID projectId) {
        projectAccess.require(projectId, May.SEE_ESTIMATE);
        ProjectFacts project = projects.facts(projectId);
        SurveyFacts survey = surveys.factsUnchecked(projectId);
        Optional<EnergyInputs> inputs = estimates.inputs(projectId);
        Spots spots = new Spots(project, inputs.orElse(null));
        Double wanted = wantedKw(project.contract());
        Side roof = Side.of(spots.roof(survey.roof()), wanted);
        Side ground = Side.of(spots.ground(survey.ground()).stream().toList(), wanted);
        Placement placement = placements.ofUnchecked(projectId);
        return new PlaceView(
                titles.of(project),
                placement,
                placement.isAgainst(project.contract()),
                changes(projectId, placement),
                roof,
                ground,
                rows(project, survey, roof, ground, spots.moduleW()),
                inputs.map(known -> remarks(known.weather())).orElse(List.of()),
                inputs.isPresent() ? List.of() : estimates.missing(projectId));
    }

    private static @Nullable Double wantedKw(ProjectFacts.Contract contract) {
        return contract.systemKwDc() == null ? null : contract.systemKwDc().doubleValue();
    }

    private static List<String> remarks(EstimateFacts.Weather weather) {
        List<String> remarks = new ArrayList<>();
        if (weather.invented()) {
            remarks.add("The weather “%s” is invented: the figures are for practice only.".formatted(weather.name()));
        } else if (weather.fromMonthlyMeans()) {
            remarks.add("The weather “%s” is made from twelve monthly means.".formatted(weather.name()));
        }
        return remarks;
    }

    private List<PlaceView.Row> rows(ProjectFacts project, SurveyFacts survey, Side roof, Side ground, double moduleW) {
        RoofCells onRoof = new RoofCells(project, survey, roof, words.today().getYear());
        GroundCells onGround = new GroundCells(project, survey, ground);
        Lack horizon = new Lack("No horizon was read.", "/projects/" + project.id() + "/survey/shade", "Shade");
        return List.of(
                new PlaceView.Row("size", onRoof.size(moduleW), onGround.size(moduleW)),
                new PlaceView.Row("year", year(roof), year(ground)),
                new PlaceView.Row("specific", specific(roof), specific(ground)),
                new PlaceView.Row("facing", onRoof.facing(), onGround.facing()),
                new PlaceView.Row(
                        "shade",
                        onRoof.obstructed(shade(survey, roof, horizon)),
                        shade(survey, ground, horizon).done()),
                new PlaceView.Row("age", onRoof.age(), Cell.of("No roof to renew under it.")),
                new PlaceView.Row("land", Cell.of("None."), onGround.land()),
                new PlaceView.Row("route", onRoof.route(), onGround.route()),
                new PlaceView.Row("structure", onRoof.structure(), onGround.soil()),
                new PlaceView.Row("cautions", onRoof.cautions(), onGround.cautions()));
    }

    private static Cell year(Side side) {
        Cell.Making cell = Cell.making();
        side.year().ifPresent(cell::say);
        return cell.done();
    }

    private static Cell specific(Side side) {
        Cell.Making cell = Cell.making();
        side.kwhPerKw().ifPresent(kwh -> cell.say(say("%,.0f kWh for each kW DC.", kwh)));
        return cell.done();
    }

    /** The one horizon of the survey, for both places. */
    private static Cell.Making shade(SurveyFacts survey, Side side, Lack unread) {
        Cell.Making cell = Cell.making().source("One horizon was read; it is taken for both places.");
        if (survey.horizon().isEmpty()) {
            return cell.lack(unread);
        }
        side.spots().stream()
                .filter(spot -> spot.shadePercent() != null)
                .findFirst()
                .ifPresent(spot -> cell.say(say("What stands around takes %.1f %%.", spot.shadePercent())));
        return cell;
    }

    private static List<Change> changes(UUID projectId, Placement placement) {
        String base = "/projects/" + projectId;
        List<Change> changes = new ArrayList<>();
        changes.add(new Change(
                "A signed change of the contract: mounting, modules, tilt and azimuth of each array, trench and bore.",
                base + "/contract",
                "Contract",
                true));
        if (placement.choice().takesRoof()) {
            changes.add(new Change("The roof is surveyed.", base + "/survey/roof", "Roof", false));
        }
        if (placement.choice().takesGround()) {
            changes.add(new Change("The field is surveyed.", base + "/survey/ground", "Ground", false));
        }
        changes.add(new Change("The routes are walked again.", base + "/survey/routes", "Routes", false));
        changes.add(new Change(
                "The design is drawn anew from contract and survey; papers of the old one are stale.",
                base + "/design",
                "Design",
                false));
        changes.add(new Change(
                "Other crews and machines, other permits: the promised date is looked at again.",
                base + "/promises",
                "Promises",
                false));
        return changes;
    }

    /** @param proposed a form for a first decision */
    record Deciding(ProjectTitle title, Placement now, DecisionForm proposed) {}

    Deciding deciding(UUID projectId) {
        projectAccess.require(projectId, May.EDIT_PROJECT);
        Placement now = placements.ofUnchecked(projectId);
        String with = projects.contacts(projectId).stream()
                .findFirst()
                .map(ProjectContact::name)
                .orElse("");
        return new Deciding(
                titles.of(projectId),
                now,
                now.isWritten()
                        ? DecisionForm.of(now)
                        : DecisionForm.proposed(
                                access.actor().name(), with, words.today().toString()));
    }
}
