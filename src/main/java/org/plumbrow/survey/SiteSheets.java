package org.plumbrow.survey;

import static org.plumbrow.survey.SurveyField.choice;
import static org.plumbrow.survey.SurveyField.date;
import static org.plumbrow.survey.SurveyField.lines;
import static org.plumbrow.survey.SurveyField.number;
import static org.plumbrow.survey.SurveyField.text;
import static org.plumbrow.survey.SurveyField.whole;
import static org.plumbrow.survey.SurveyField.yesNo;

import java.util.List;
import java.util.stream.IntStream;
import org.plumbrow.web.Option;

/** What is read on roof and ground, along the routes, of shade, access and loads. */
final class SiteSheets {

    static final int FIRST_AZIMUTH = 60;
    static final int LAST_AZIMUTH = 300;
    static final int AZIMUTH_STEP = 15;

    static final int MOST_PLANES = 8;
    static final int MOST_PROBES = 8;
    static final int MOST_ROUTES = 10;
    static final int MOST_LOADS = 12;

    private SiteSheets() {}

    static final List<FieldGroup> ROOF = List.of(FieldGroup.rows(
            "Roof planes",
            "Plane",
            "plane",
            MOST_PLANES,
            text("name", "Name", "For example: south barn, west side."),
            choice("covering", "Covering", RoofCovering.options()),
            whole("year", "Year of the covering", 1980, 2035, "").within(1800, 2100),
            whole("life_years", "Years that it will still last", 15, 60, "years")
                    .noted("Below 15 a new covering comes first."),
            text("structure", "Structure", "Rafters, trusses or purlins with their size; of a flat roof the deck."),
            number("spacing_in", "Rafter or truss spacing", 12, 96, "in"),
            number("pitch_deg", "Pitch", 0, 60, "degrees").within(0, 90),
            number("azimuth_deg", "Azimuth", 0, 360, "degrees from true north").within(0, 360),
            number("width_ft", "Width along the eave", 5, 1000, "ft"),
            number("length_ft", "Length up the slope", 5, 300, "ft"),
            number("eave_ft", "Eave height", 6, 60, "ft"),
            lines("obstructions", "Obstructions", "Height and distance of each; skylights, vents; or “none”.")));

    static final List<FieldGroup> GROUND = List.of(
            FieldGroup.of(
                    "Field",
                    number("field_length_ft", "Field length, east to west", 10, 5000, "ft"),
                    number("field_width_ft", "Field width, north to south", 10, 5000, "ft"),
                    number("slope_ns_percent", "Slope north to south", -15, 15, "%")
                            .within(-100, 100)
                            .noted("Falling to the south is written with a minus."),
                    number("slope_ew_percent", "Slope east to west", -15, 15, "%")
                            .within(-100, 100)
                            .noted("Falling to the west is written with a minus."),
                    choice(
                            "soil",
                            "Soil",
                            new Option("SAND", "Sand"),
                            new Option("LOAM", "Loam"),
                            new Option("CLAY", "Clay"),
                            new Option("GRAVEL", "Gravel"),
                            new Option("SHALE", "Shale or rock near the top"),
                            new Option("FILL", "Fill or peat")),
                    text("wet", "Wet places", "Where; or “none”."),
                    text("tiles", "Drain tiles", "Where, from the farmer’s map; or “none”."),
                    number("frost_in", "Frost depth", 0, 80, "in").noted("By the local code.")),
            FieldGroup.rows(
                    "Probe posts or auger holes, two or more",
                    "Probe",
                    "probe",
                    MOST_PROBES,
                    text("place", "Place", ""),
                    number("depth_ft", "Depth reached", 3, 15, "ft"),
                    yesNo("refused", "It went no deeper (refusal)")));

    static final List<FieldGroup> ROUTES = List.of(
            FieldGroup.rows(
                    "Routes of the conductors",
                    "Route",
                    "route",
                    MOST_ROUTES,
                    text("name", "From where to where", "For example: array to barn."),
                    choice(
                            "kind",
                            "Kind",
                            new Option("TRENCH", "Trench"),
                            new Option("BORE", "Bore"),
                            new Option("ABOVE_GROUND", "Above ground")),
                    number("length_ft", "Length", 1, 3000, "ft"),
                    text("crosses", "What is crossed", "Drive, road, ditch, pipe; or “nothing”."),
                    number("cover_in", "Earth over it", 18, 60, "in")),
            FieldGroup.of(
                    "What one-call does not mark",
                    lines(
                            "private_lines",
                            "Private lines",
                            "Water to barns, gas to heaters, tiles, manure lines, septic; or “none”.")));

    private static SurveyField[] elevations() {
        return IntStream.iterate(FIRST_AZIMUTH, azimuth -> azimuth <= LAST_AZIMUTH, azimuth -> azimuth + AZIMUTH_STEP)
                .mapToObj(azimuth -> number(horizonName(azimuth), azimuth + "°" + compass(azimuth), 0, 45, "degrees")
                        .within(-10, 90))
                .toArray(SurveyField[]::new);
    }

    static String horizonName(int azimuth) {
        return "h_" + azimuth;
    }

    private static String compass(int azimuth) {
        return switch (azimuth) {
            case 90 -> ", east";
            case 135 -> ", southeast";
            case 180 -> ", south";
            case 225 -> ", southwest";
            case 270 -> ", west";
            default -> "";
        };
    }

    private static FieldGroup howTheHorizonWasRead() {
        return FieldGroup.of(
                "How the horizon was read",
                text(
                        "horizon_with",
                        "Instrument",
                        "Clinometer, phone or photo with a scale; compass set to true north?"),
                text("horizon_at", "Day and hour", ""),
                text("horizon_where", "Where you stood", "Corners and middle of the array."));
    }

    static final List<FieldGroup> SHADE = List.of(
            FieldGroup.of("Height of the horizon, by direction from true north", elevations()),
            howTheHorizonWasRead(),
            FieldGroup.of(
                    "What stands there",
                    lines("objects", "Objects", "Height, distance, whether it grows or may be cut; or “none”.")));

    static final List<FieldGroup> DAY_ONE = List.of(
            FieldGroup.of("Height of the horizon on day one, by direction from true north", elevations()),
            howTheHorizonWasRead());

    static final List<FieldGroup> ACCESS = List.of(FieldGroup.of(
            "Way to the site",
            number("gate_ft", "Narrowest gate", 8, 60, "ft").noted("The post driver needs 8 to 10 ft."),
            text("lane", "Lane", "What it bears, slope, culverts, where a truck turns."),
            text("overhead", "Overhead lines", "Where and how high; or “none”."),
            text("laydown", "Lay-down area", "Where pallets and the forklift stand."),
            text("biosecurity", "Dogs, animals, biosecurity", "What a crew must know; or “none”.")));

    static final List<FieldGroup> LOADS = List.of(
            FieldGroup.rows(
                    "Buildings and things that must not stop",
                    "Load",
                    "load",
                    MOST_LOADS,
                    text("name", "Name", "For example: house 2."),
                    choice(
                            "kind",
                            "Kind",
                            new Option("POULTRY", "Poultry house"),
                            new Option("SWINE", "Swine house"),
                            new Option("MILK", "Milking and cooling"),
                            new Option("COLD_STORE", "Cold store"),
                            new Option("GREENHOUSE", "Greenhouse"),
                            new Option("WELL", "Well or water"),
                            new Option("MEDICAL", "Medical device at home"),
                            new Option("OTHER", "Other")),
                    whole("animals", "Animals", 0, 200_000, ""),
                    number("mass_lb", "Mass of each at the cutover", 0, 2000, "lb"),
                    lines("details", "What hangs on the power", "Fans, curtains, alarm, tank, temperature limits.")),
            FieldGroup.of(
                    "When the power may not be cut",
                    lines("blackout", "Blackout times", "Hours and dates; or “none”.")));

    static final List<FieldGroup> CLOSE = List.of(FieldGroup.of(
            "Who surveyed",
            text("surveyed_by", "Surveyed by", ""),
            date("surveyed_on", "Day of the survey"),
            lines("notes", "Notes for the designer (optional)", "")));
}
