package org.plumbrow.survey;

import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.calc.electrical.ServiceVoltage;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.SiteLoad;
import org.plumbrow.survey.SurveyFacts.RoofPlane;

/** What a designer needs of a survey, and on which sites. Pure. */
final class Needs {

    static final int LEAST_PROBES = 2;
    static final int LEAST_HORIZON = 9;

    /** Above this rating of the main device the fault current is asked for. */
    static final double FAULT_ASKED_ABOVE_A = 200;

    private Needs() {}

    /**
     * One thing that the designer needs.
     *
     * @param words what is missing while it is not there: "Main device rating"
     * @param when on which sites
     */
    record Need(SurveyPart part, String words, Predicate<ProjectFacts> when, Predicate<SurveyFacts> there) {}

    static boolean onRoof(ProjectFacts project) {
        return project.contract().has(Mounting.FLAT_ROOF)
                || project.contract().has(Mounting.PITCHED_ROOF)
                || PhotoItem.undecided(project);
    }

    static boolean onGround(ProjectFacts project) {
        return project.contract().has(Mounting.GROUND) || PhotoItem.undecided(project);
    }

    /** Whether anything but a home hangs on the power. */
    static boolean hasCriticalLoads(ProjectFacts project) {
        return project.site().loads().stream().anyMatch(load -> load != SiteLoad.HOME);
    }

    /** Whether a part is asked for on this site. */
    static boolean asksFor(SurveyPart part, ProjectFacts project) {
        return switch (part) {
            case ROOF -> onRoof(project);
            case GROUND -> onGround(project);
            case LOADS -> hasCriticalLoads(project);
            case DAY_ONE -> false;
            default -> true;
        };
    }

    private static Need always(SurveyPart part, String words, Predicate<SurveyFacts> there) {
        return new Need(part, words, project -> true, there);
    }

    static final List<Need> ALL = List.of(
            always(SurveyPart.SERVICE, "Service type", facts -> facts.service().type() != null),
            always(SurveyPart.SERVICE, "Voltages of every pair of the service", Needs::voltagesRead),
            always(
                    SurveyPart.SERVICE,
                    "Main device rating",
                    facts -> facts.service().mainA() != null),
            always(SurveyPart.SERVICE, "Busbar rating", facts -> facts.service().busA() != null),
            always(
                    SurveyPart.SERVICE,
                    "Interrupting rating of the gear",
                    facts -> facts.service().interruptingKa() != null),
            always(
                    SurveyPart.SERVICE,
                    "Meter number",
                    facts -> facts.service().meter().number() != null),
            always(
                    SurveyPart.SERVICE,
                    "Transformer rating",
                    facts -> facts.service().transformer().kva() != null),
            new Need(
                    SurveyPart.SERVICE,
                    "Fault current at the service",
                    project -> project.site().supplySideTap(),
                    facts -> facts.service().faultKa() != null),
            new Need(
                    SurveyPart.SERVICE,
                    "Ampacity of the service conductors",
                    project -> project.site().supplySideTap(),
                    facts -> facts.service().conductorA() != null),
            new Need(
                    SurveyPart.SERVICE,
                    "Phase rotation",
                    project -> project.site().threePhase(),
                    facts -> facts.service().rotation() != null),
            always(
                    SurveyPart.SERVICE,
                    "Grounding and the place of the neutral bond",
                    facts -> facts.service().grounding() != null),
            always(
                    SurveyPart.SERVICE,
                    "Whether there are other sources",
                    facts -> facts.service().otherSources() != null),
            new Need(
                    SurveyPart.SERVICE,
                    "Generator: rating, switch and place",
                    project -> project.site().generator(),
                    facts -> generatorRead(facts.service().generator())),
            always(
                    SurveyPart.SERVICE,
                    "Point of interconnection",
                    facts -> facts.service().interconnection() != null),
            always(
                    SurveyPart.SERVICE,
                    "Distances from array to inverter, connection, meter and disconnect",
                    facts -> distancesRead(facts.distances())),
            new Need(
                    SurveyPart.ROOF,
                    "A roof plane with its measures",
                    Needs::onRoof,
                    facts -> !facts.roof().isEmpty() && facts.roof().stream().allMatch(Needs::measured)),
            new Need(
                    SurveyPart.ROOF,
                    "Covering, its year and structure of each plane",
                    Needs::onRoof,
                    facts -> !facts.roof().isEmpty() && facts.roof().stream().allMatch(Needs::described)),
            new Need(
                    SurveyPart.GROUND,
                    "Length and width of the field",
                    Needs::onGround,
                    facts -> facts.ground().fieldLengthFt() != null
                            && facts.ground().fieldWidthFt() != null),
            new Need(
                    SurveyPart.GROUND,
                    "Slope of the field",
                    Needs::onGround,
                    facts -> facts.ground().slopeNorthSouthPercent() != null
                            && facts.ground().slopeEastWestPercent() != null),
            new Need(
                    SurveyPart.GROUND,
                    "Soil, wet places and drain tiles",
                    Needs::onGround,
                    facts -> facts.ground().soil() != null
                            && facts.ground().wet() != null
                            && facts.ground().tiles() != null),
            new Need(
                    SurveyPart.GROUND,
                    "Frost depth",
                    Needs::onGround,
                    facts -> facts.ground().frostDepthIn() != null),
            new Need(
                    SurveyPart.GROUND,
                    "Two probes with depth and refusal",
                    Needs::onGround,
                    facts -> probes(facts) >= LEAST_PROBES),
            always(
                    SurveyPart.ROUTES,
                    "A route with kind, length and what it crosses",
                    facts -> !facts.routes().isEmpty()
                            && facts.routes().stream()
                                    .allMatch(route -> route.kind() != null
                                            && route.lengthFt() != null
                                            && route.crosses() != null)),
            always(
                    SurveyPart.SHADE,
                    "Horizon in at least nine directions",
                    facts -> facts.horizon(SurveyFacts.Occasion.BEFORE).size() >= LEAST_HORIZON),
            new Need(
                    SurveyPart.ACCESS,
                    "Width of the gate",
                    Needs::onGround,
                    facts -> facts.access().gateWidthFt() != null),
            always(SurveyPart.ACCESS, "Lane", facts -> facts.access().lane() != null),
            always(SurveyPart.ACCESS, "Overhead lines", facts -> facts.access().overheadLines() != null),
            new Need(
                    SurveyPart.LOADS,
                    "Each load that must not stop, with what hangs on it",
                    Needs::hasCriticalLoads,
                    facts -> !facts.loads().isEmpty()
                            && facts.loads().stream().allMatch(load -> load.kind() != null && load.details() != null)),
            new Need(
                    SurveyPart.LOADS,
                    "Times when the power may not be cut",
                    Needs::hasCriticalLoads,
                    facts -> facts.loads().stream().anyMatch(load -> load.blackoutTimes() != null)),
            always(SurveyPart.CLOSE, "Who surveyed", facts -> facts.surveyedBy() != null),
            always(SurveyPart.CLOSE, "Day of the survey", facts -> facts.surveyedOn() != null));

    static boolean voltagesRead(SurveyFacts facts) {
        var type = facts.service().type();
        return type != null
                && ServiceVoltage.judge(type, facts.service().volts()).isComplete();
    }

    static boolean generatorRead(SurveyFacts.Generator generator) {
        return Boolean.FALSE.equals(generator.present())
                || allThere(generator.kva(), generator.switchKind(), generator.place());
    }

    static boolean distancesRead(SurveyFacts.Distances distances) {
        return allThere(
                distances.arrayToInverterFt(),
                distances.inverterToPoiFt(),
                distances.inverterToMeterFt(),
                distances.disconnectToMeterFt());
    }

    static boolean measured(RoofPlane plane) {
        return allThere(plane.pitchDeg(), plane.azimuthDeg(), plane.widthFt(), plane.lengthFt());
    }

    static boolean described(RoofPlane plane) {
        return allThere(plane.covering(), plane.year(), plane.lifeYears(), plane.structure());
    }

    static long probes(SurveyFacts facts) {
        return facts.ground().probes().stream()
                .filter(probe -> probe.depthFt() != null && probe.refused() != null)
                .count();
    }

    /** Of a figure that was asked for before. */
    static double given(@Nullable Double figure) {
        return java.util.Objects.requireNonNull(figure);
    }

    private static boolean allThere(@Nullable Object... things) {
        for (Object thing : things) {
            if (thing == null) {
                return false;
            }
        }
        return true;
    }
}
