package org.plumbrow.survey;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.project.ProjectFacts;

/** The photos that a survey brings, and on which sites; each is needed unless its subject does not exist there. */
enum PhotoItem {
    GATE_SIGN(1, "House number or gate sign", Where.EVERYWHERE),
    METER(2, "Meter, its number legible", Where.EVERYWHERE),
    METER_SURROUNDINGS(3, "Meter base, and ten feet to each side", Where.EVERYWHERE),
    PANEL_CLOSED(4, "Main panel, closed", Where.EVERYWHERE),
    PANEL_LABEL(5, "Label of the main panel", Where.EVERYWHERE),
    PANEL_OPEN(6, "Main panel, door open and dead front on", Where.EVERYWHERE),
    DIRECTORY(7, "Directory of the circuits", Where.EVERYWHERE),
    TRANSFORMER(8, "Transformer, its number legible", Where.EVERYWHERE),
    SERVICE_ENTRANCE(9, "Service entrance from top to bottom", Where.EVERYWHERE),
    INVERTER_PLACE(10, "Place meant for the inverter", Where.EVERYWHERE),
    DISCONNECT_PLACE(11, "Place meant for the disconnect", Where.EVERYWHERE),
    COMBINER_PLACE(12, "Place meant for the combiner", Where.EVERYWHERE),
    ROOF_PLANES(13, "Each roof plane", Where.ROOF),
    FRAMING(14, "Framing from inside", Where.ROOF),
    COVERING(15, "Covering close up", Where.ROOF),
    FIELD_CORNERS(16, "Field from its four corners", Where.GROUND),
    FIELD_VIEWS(17, "North, east, south and west from the middle of the field", Where.GROUND),
    ROUTE(18, "Route every 50 ft, and each crossing", Where.EVERYWHERE),
    LANE(19, "Lane and gate with a tape in view", Where.GROUND),
    PROBES(20, "Probe holes with a tape", Where.GROUND),
    GENERATOR(21, "Generator and its switch", Where.GENERATOR),
    FARM(22, "Fans, curtains, tank, alarm panel", Where.FARM),
    HAZARDS(23, "Hazards: skylight, dog, bull, overhead line", Where.EVERYWHERE),
    GROUNDING(24, "Grounding electrode and the neutral bond", Where.EVERYWHERE);

    private enum Where {
        EVERYWHERE,
        ROOF,
        GROUND,
        GENERATOR,
        FARM
    }

    private final int number;
    private final String words;
    private final Where where;

    PhotoItem(int number, String words, Where where) {
        this.number = number;
        this.words = words;
        this.where = where;
    }

    public int number() {
        return number;
    }

    public String words() {
        return words;
    }

    boolean isNeeded(ProjectFacts project) {
        return switch (where) {
            case EVERYWHERE -> true;
            case ROOF -> Needs.onRoof(project);
            case GROUND -> Needs.onGround(project);
            case GENERATOR -> project.site().generator();
            case FARM -> project.site().isFarm();
        };
    }

    static List<PhotoItem> of(ProjectFacts project) {
        return Arrays.stream(values()).filter(item -> item.isNeeded(project)).toList();
    }

    static Optional<PhotoItem> numbered(int number) {
        return Arrays.stream(values()).filter(item -> item.number == number).findFirst();
    }

    /** Whether the contract says nothing about what the array stands on. */
    static boolean undecided(ProjectFacts project) {
        return Arrays.stream(Mounting.values()).noneMatch(project.contract()::has);
    }
}
