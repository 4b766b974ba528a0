package org.plumbrow.estimate.place;

import static org.plumbrow.estimate.place.Side.say;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.survey.SurveyFacts;
import org.plumbrow.survey.SurveyFacts.Ground;
import org.plumbrow.survey.SurveyFacts.Probe;

/** What is said of the ground. */
final class GroundCells {

    private static final double STEEP_PERCENT = 15;
    private static final double LEAST_GATE_FT = 8;
    private static final int LEAST_PROBES = 2;
    private static final double SQ_FT_PER_ACRE = 43_560;

    private final ProjectFacts project;
    private final SurveyFacts survey;
    private final Ground ground;
    private final Side side;

    GroundCells(ProjectFacts project, SurveyFacts survey, Side side) {
        this.project = project;
        this.survey = survey;
        this.ground = survey.ground();
        this.side = side;
    }

    private Lack ground(String sentence) {
        return new Lack(sentence, "/projects/" + project.id() + "/survey/ground", "Ground");
    }

    private boolean isMeasured() {
        return ground.fieldLengthFt() != null && ground.fieldWidthFt() != null;
    }

    Cell size(double moduleW) {
        Cell.Making cell = Cell.making();
        side.size().ifPresent(cell::say);
        if (!isMeasured()) {
            cell.lack(ground("The field was not measured."));
        } else if (side.spots().isEmpty()) {
            cell.lack(new Lack(
                    "How far apart rows must stand cannot be told without the site’s coordinates.",
                    "/projects/" + project.id() + "/site",
                    "Site"));
        }
        return cell.source(say(
                        "Rows of two modules of %,.0f W above one another, east to west, without shade on one another for %.0f hours of the shortest day; %.0f ft kept free around. Setbacks, wet places and slopes are not taken off; the designer’s layout counts.",
                        moduleW, Spots.FREE_HOURS, Spots.FIELD_EDGE_FT))
                .done();
    }

    Cell facing() {
        Cell.Making cell = Cell.making();
        side.spots()
                .forEach(spot -> cell.say(say(
                        "Tilt %.0f°, azimuth %.0f°.",
                        spot.plane().tiltDeg(), spot.plane().azimuthDeg())));
        if (!isMeasured()) {
            cell.lack(ground("The field was not measured."));
        }
        return cell.done();
    }

    Cell land() {
        Cell.Making cell = Cell.making();
        if (!isMeasured()) {
            return cell.lack(ground("The field was not measured.")).done();
        }
        double field = given(ground.fieldLengthFt()) * given(ground.fieldWidthFt()) / SQ_FT_PER_ACRE;
        side.spots()
                .forEach(spot -> cell.say(say(
                        "About %.2f acres for %,.1f kW DC, of the %.2f acres that were measured.",
                        spot.acresPerKw() * side.usedKw(), side.usedKw(), field)));
        return cell.say("What grows there now, and mowing under the rows, is for the owner to weigh.")
                .done();
    }

    Cell route() {
        Cell.Making cell = Cell.making();
        List<SurveyFacts.Route> buried = survey.routes().stream()
                .filter(route -> route.isTrench() || route.isBore())
                .toList();
        buried.forEach(route -> cell.say(Routes.words(route)));
        if (buried.size() > 1) {
            cell.say(say("Together %,.0f ft of trench and %,.0f ft of bore.", feet(buried, true), feet(buried, false)));
        }
        if (buried.isEmpty()) {
            cell.lack(Routes.lack(project, "No trench or bore was walked."));
        }
        return cell.done();
    }

    private static double feet(List<SurveyFacts.Route> routes, boolean trench) {
        return routes.stream()
                .filter(route -> route.isTrench() == trench)
                .map(SurveyFacts.Route::lengthFt)
                .filter(java.util.Objects::nonNull)
                .mapToDouble(Double::doubleValue)
                .sum();
    }

    Cell soil() {
        Cell.Making cell = Cell.making();
        said("Soil", soilWords(ground.soil()), "The soil was not read.", cell);
        probes(cell);
        Double frost = ground.frostDepthIn();
        said(
                "Frost",
                frost == null ? null : say("to %.0f in; posts reach below it", frost),
                "Frost depth was not read.",
                cell);
        said("Slope", slope(), "The slope was not read.", cell);
        said("Wet places", ground.wet(), "Wet places were not asked for.", cell);
        said("Drain tiles", ground.tiles(), "Drain tiles were not asked for.", cell);
        return cell.done();
    }

    private void said(String what, @Nullable String value, String otherwise, Cell.Making cell) {
        if (value == null) {
            cell.lack(ground(otherwise));
        } else {
            cell.say(what + ": " + value + ".");
        }
    }

    private static @Nullable String soilWords(@Nullable String stored) {
        return stored == null ? null : stored.toLowerCase(java.util.Locale.ROOT);
    }

    private void probes(Cell.Making cell) {
        List<Probe> probes = ground.probes();
        if (probes.size() < LEAST_PROBES) {
            cell.lack(ground("Fewer than two probe posts or auger holes."));
        }
        if (!probes.isEmpty()) {
            List<Probe> refused = probes.stream()
                    .filter(probe -> Boolean.TRUE.equals(probe.refused()))
                    .toList();
            cell.say(say("%d of %d probes went no deeper%s.", refused.size(), probes.size(), depths(refused)));
        }
    }

    private static String depths(List<Probe> refused) {
        return refused.stream()
                .map(Probe::depthFt)
                .filter(java.util.Objects::nonNull)
                .map(depth -> say("%.1f ft", depth))
                .reduce((one, other) -> one + ", " + other)
                .map(all -> " (at " + all + ")")
                .orElse("");
    }

    /** The survey writes falls to south and west with a minus. */
    private @Nullable String slope() {
        Double northSouth = ground.slopeNorthSouthPercent();
        Double eastWest = ground.slopeEastWestPercent();
        return northSouth == null || eastWest == null
                ? null
                : falls(northSouth, "south", "north") + ", " + falls(eastWest, "west", "east");
    }

    private static String falls(double percent, String minus, String plus) {
        return say("%.0f %% falling to the %s", Math.abs(percent), percent < 0 ? minus : plus);
    }

    Cell cautions() {
        Cell.Making cell = Cell.making();
        if (isSteep(ground.slopeNorthSouthPercent()) || isSteep(ground.slopeEastWestPercent())) {
            cell.say(say("Steeper than %.0f %%: the post driver may not stand there.", STEEP_PERCENT));
        }
        if (ground.probes().stream().anyMatch(probe -> Boolean.TRUE.equals(probe.refused()))) {
            cell.say("Where posts are refused they are drilled or stand on another footing: more days.");
        }
        Double gate = survey.access().gateWidthFt();
        if (gate != null && gate < LEAST_GATE_FT) {
            cell.say(say("The narrowest gate has %.0f ft; the post driver needs %.0f to 10 ft.", gate, LEAST_GATE_FT));
        }
        if (side.wantedKw() != null && !side.spots().isEmpty() && !side.isEnough()) {
            cell.say("By this rule of thumb the field alone does not hold the contract’s size.");
        }
        return cell.say("Zoning, setbacks, wetlands and private buried lines are asked before anybody digs.")
                .done();
    }

    private static boolean isSteep(@Nullable Double percent) {
        return percent != null && Math.abs(percent) > STEEP_PERCENT;
    }

    private static double given(@Nullable Double figure) {
        return java.util.Objects.requireNonNull(figure);
    }
}
