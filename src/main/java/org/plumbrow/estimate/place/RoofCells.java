package org.plumbrow.estimate.place;

import static org.plumbrow.estimate.place.Side.say;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.survey.RoofCovering;
import org.plumbrow.survey.SurveyFacts;
import org.plumbrow.survey.SurveyFacts.RoofPlane;

/** What is said of the roof. */
final class RoofCells {

    private static final int ASBESTOS_BEFORE = 1980;

    private final ProjectFacts project;
    private final SurveyFacts survey;
    private final Side side;
    private final int year;
    private final Lack unsurveyed;

    /** @param year of today */
    RoofCells(ProjectFacts project, SurveyFacts survey, Side side, int year) {
        this.project = project;
        this.survey = survey;
        this.side = side;
        this.year = year;
        this.unsurveyed = roof("No roof was surveyed.");
    }

    private Lack roof(String sentence) {
        return new Lack(sentence, "/projects/" + project.id() + "/survey/roof", "Roof");
    }

    /** A name at the beginning of a sentence. */
    private static String begun(String name) {
        return name.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + name.substring(1);
    }

    private boolean none() {
        return survey.roof().isEmpty();
    }

    Cell size(double moduleW) {
        Cell.Making cell = Cell.making();
        side.size().ifPresent(cell::say);
        if (side.spots().size() > 1) {
            side.spots().forEach(spot -> cell.say(say("%s: %,d modules.", begun(spot.name()), spot.modules())));
        }
        if (none()) {
            cell.lack(unsurveyed);
        }
        survey.roof().stream()
                .filter(plane -> !Spots.isMeasured(plane))
                .forEach(plane ->
                        cell.lack(roof("“%s” lacks its width, length, pitch or azimuth.".formatted(plane.name()))));
        return cell.source(say(
                        "Whole modules of %,.0f W with %.0f ft kept free at ridge and sides, %.0f ft around on a flat roof (fire paths, common practice). What stands on the roof is not taken off; the designer’s layout counts.",
                        moduleW, Spots.ROOF_EDGE_FT, Spots.FLAT_EDGE_FT))
                .done();
    }

    Cell facing() {
        Cell.Making cell = Cell.making();
        side.spots()
                .forEach(spot -> cell.say(say(
                        "%s: tilt %.0f°, azimuth %.0f°.",
                        begun(spot.name()), spot.plane().tiltDeg(), spot.plane().azimuthDeg())));
        return none() ? cell.lack(unsurveyed).done() : cell.done();
    }

    Cell obstructed(Cell.Making cell) {
        survey.roof().stream()
                .filter(plane -> plane.obstructions() != null)
                .forEach(plane -> cell.say("%s: %s.".formatted(begun(plane.name()), plane.obstructions())));
        return none() ? cell.lack(unsurveyed).done() : cell.done();
    }

    Cell age() {
        Cell.Making cell = Cell.making().source(RoofLife.SOURCE);
        survey.roof().forEach(plane -> age(plane, cell));
        return none() ? cell.lack(unsurveyed).done() : cell.done();
    }

    private void age(RoofPlane plane, Cell.Making cell) {
        RoofCovering covering = plane.covering();
        Integer built = plane.year();
        Integer left = plane.lifeYears();
        if (covering != null && built != null) {
            cell.say(say(
                            "%s: %s of %d, %s.",
                            begun(plane.name()), covering.words().toLowerCase(java.util.Locale.ROOT), built, old(built))
                    + RoofLife.of(covering)
                            .map(life -> say(" Such a covering lasts %d to %d years.", life.least(), life.most()))
                            .orElse(""));
        }
        if (left != null) {
            cell.say("The surveyor gives it %s more.".formatted(years(left)));
        }
        if (covering == null || built == null || left == null) {
            cell.lack(roof("“%s” lacks its covering, its year or the years it will last.".formatted(plane.name())));
        }
    }

    private String old(int built) {
        return built > year ? "not yet laid" : years(year - built) + " old";
    }

    private static String years(int count) {
        return count == 1 ? "1 year" : count + " years";
    }

    Cell route() {
        Cell.Making cell = Cell.making();
        List<SurveyFacts.Route> above = survey.routes().stream()
                .filter(route -> !route.isTrench() && !route.isBore())
                .toList();
        above.forEach(route -> cell.say(Routes.words(route)));
        if (above.isEmpty()) {
            cell.lack(Routes.lack(project, "No route above ground was walked."));
        }
        return cell.done();
    }

    Cell structure() {
        Cell.Making cell = Cell.making();
        for (RoofPlane plane : survey.roof()) {
            Double apart = plane.rafterSpacingIn();
            if (plane.structure() == null) {
                cell.lack(roof("What carries “%s” was not read.".formatted(plane.name())));
            } else {
                cell.say("%s: %s%s."
                        .formatted(
                                begun(plane.name()),
                                plane.structure(),
                                apart == null ? "" : say(", %.0f in apart", apart)));
            }
        }
        if (none()) {
            cell.lack(unsurveyed);
        }
        return cell.say("Whether it carries an array, an engineer says in writing.")
                .done();
    }

    Cell cautions() {
        Cell.Making cell = Cell.making();
        survey.roof().forEach(plane -> cautions(plane, cell));
        if (project.site().isFarm()) {
            cell.say(
                    "Roofs of barns and poultry houses are often light trusses with nothing to spare: taken as not enough until an engineer’s letter says otherwise.");
        }
        if (side.wantedKw() != null && !side.spots().isEmpty() && !side.isEnough()) {
            cell.say("By this rule of thumb the roof alone does not hold the contract’s size.");
        }
        return cell.say("Holes in a roof are flashed, and its warranty may need the roofer’s consent.")
                .done();
    }

    private static void cautions(RoofPlane plane, Cell.Making cell) {
        Integer left = plane.lifeYears();
        if (left != null && left < RoofLife.LEAST_LEFT) {
            cell.say(say(
                    "%s will not last %d more years: a new covering comes first, or the array has to come down for it.",
                    begun(plane.name()), RoofLife.LEAST_LEFT));
        }
        if (mayHoldAsbestos(plane.covering(), plane.year())) {
            cell.say(
                    begun(plane.name())
                            + ": old sheets may hold asbestos. Nobody walks on them or drills until a laboratory has said what they are.");
        }
    }

    private static boolean mayHoldAsbestos(@Nullable RoofCovering covering, @Nullable Integer built) {
        return covering == RoofCovering.SHEET_OLD && (built == null || built < ASBESTOS_BEFORE);
    }
}
