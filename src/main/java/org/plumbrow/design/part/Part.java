package org.plumbrow.design.part;

import static org.plumbrow.design.part.Col.choice;
import static org.plumbrow.design.part.Col.count;
import static org.plumbrow.design.part.Col.date;
import static org.plumbrow.design.part.Col.figure;
import static org.plumbrow.design.part.Col.oneOf;
import static org.plumbrow.design.part.Col.spots;
import static org.plumbrow.design.part.Col.text;
import static org.plumbrow.design.part.Col.yesNo;
import static org.plumbrow.design.part.FieldPage.Fields.one;
import static org.plumbrow.design.part.FieldPage.Fields.rows;

import java.util.Optional;

/** The parts of a design in the order in which they are drawn up; each is a page of its own with its own version. */
public enum Part implements FieldPage {
    SITE(one(
            "Site and service",
            figure("designLowC", "Lowest expected air temperature", -60, 30, "°C"),
            figure("designHighC", "2 % high air temperature", 10, 60, "°C"),
            text("temperatureSource", "Source of the temperatures", "data set and station"),
            choice("service", "Service", Choices.services()),
            figure("highestV", "Highest line-to-line voltage read", 100, 700, "V"),
            text("meterNumber", "Meter number", ""),
            figure("mainA", "Main device", 15, 6000, "A"),
            figure("busA", "Busbar", 15, 6000, "A"),
            figure("interruptingKa", "Interrupting rating of the gear", 5, 200, "kA"),
            figure("faultKa", "Available fault current", 0.1, 200, "kA"),
            figure("conductorA", "Ampacity of the service conductors", 15, 6000, "A"),
            figure("transformerKva", "Transformer", 1, 5000, "kVA"),
            text("transformerNumber", "Number on the transformer", ""),
            text("checkedBy", "Checked by", "a second designer"))),
    ARRAYS(rows(
            "Arrays",
            text("mark", "Mark", "A1").must(),
            text("name", "Name", "north field"),
            choice("mounting", "Stands on", Choices.mountings()).must(),
            yesNo("onDwelling", "On a one- or two-family house"),
            figure("tiltDeg", "Tilt", 0, 90, "°").must(),
            figure("azimuthDeg", "Azimuth", 0, 360, "°")
                    .saying("from true north, 180 faces south")
                    .must(),
            oneOf("module", "Module", "modules").must(),
            choice("portrait", "Long side of a module", Choices.portrait()),
            count("modulesHigh", "Modules above one another in a row", 1, 10, "modules")
                    .must(),
            text(
                            "modulesWide",
                            "Modules beside one another, row by row",
                            "for example 18, 18, 9; the southern or lowest row first")
                    .must(),
            figure("rowPitchFt", "Row to row", 1, 200, "ft"),
            figure("setbackFt", "Free strip around it", 0, 500, "ft"),
            figure("planeLengthFt", "Length of the roof plane or field", 1, 5000, "ft"),
            figure("planeWidthFt", "Depth of the roof plane or field", 1, 5000, "ft"))),
    OBSTRUCTIONS(rows(
            "Obstructions",
            oneOf("array", "Array", "arrays").must(),
            text("name", "What it is", "vent, silo, tree").must(),
            figure("rightFt", "From the left edge", -1000, 5000, "ft").must(),
            figure("upFt", "From the lower edge", -1000, 5000, "ft").must(),
            figure("widthFt", "Width", 0.1, 500, "ft").must(),
            figure("lengthFt", "Length", 0.1, 500, "ft").must(),
            figure("heightFt", "Height", 0, 300, "ft"))),
    INVERTERS(rows(
            "Inverters",
            text("mark", "Mark", "INV 1").must(),
            oneOf("type", "Inverter", "inverters").must(),
            oneOf("array", "Stands at array", "arrays"),
            text("place", "Place", "north end of row 1"))),
    COMBINERS(rows(
            "Combiners",
            text("mark", "Mark", "CB 1").must(),
            text("place", "Place", "on the frame of row 2"),
            count("circuits", "Circuits", 1, 60, "circuits").must(),
            figure("fuseA", "Fuse of each string", 1, 100, "A"),
            figure("ratedV", "Rated voltage", 100, 2000, "V").must(),
            figure("ratedA", "Rated current", 1, 2000, "A").must())),
    STRINGS(rows(
            "Strings",
            text("mark", "Mark", "1.2.1: inverter, input, string").must(),
            oneOf("array", "Array", "arrays").must(),
            oneOf("inverter", "Inverter", "inverterMarks").must(),
            count("input", "Input", 1, 60, "").must(),
            count("modules", "Modules in series", 1, 60, "modules").must(),
            count("firstModule", "First module in the array", 1, 20000, "")
                    .saying("counted row by row")
                    .must(),
            oneOf("combiner", "Combiner", "combiners"))),
    RUNS(rows(
            "Conductor runs",
            text("mark", "Mark", "R1").must(),
            choice("flow", "What flows", Choices.flows()).must(),
            oneOf("from", "From", "marks").must(),
            oneOf("to", "To", "marks").must(),
            figure("lengthFt", "Length one way", 1, 5000, "ft").must(),
            text("lengthFrom", "The length is", "as surveyed; measured on the plan; usual, not measured"),
            choice("size", "Size", Choices.sizes()).must(),
            choice("material", "Material", Choices.materials()).must(),
            choice("insulation", "Insulation", Choices.insulations()).must(),
            count("conductors", "Conductors that carry current", 1, 60, "")
                    .saying("in one set")
                    .must(),
            count("sets", "Sets side by side", 1, 12, "").saying("each in its own raceway, of at least 1/0"),
            choice("groundSize", "Equipment ground", Choices.sizes()),
            choice("groundMaterial", "Material of the ground", Choices.materials()),
            choice("raceway", "Lies in", Choices.raceways()).must(),
            choice("racewaySize", "Trade size", Choices.tradeSizes()),
            figure("ambientC", "Hottest part of the way", -20, 90, "°C"),
            figure("coverIn", "Earth over it", 0, 240, "in").saying("where it is buried"),
            choice("under", "Lies under", Choices.covers()),
            choice("terminalC", "Terminals marked", Choices.terminals()).must(),
            text("crossings", "Crosses", "driveway; water line"))),
    DEVICES(rows(
            "Devices",
            text("mark", "Mark", "D1").must(),
            choice("kind", "What it is", Choices.devices()).must(),
            text("name", "Name", "AC disconnect of the array").must(),
            oneOf("inRun", "At the end of run", "runs"),
            figure("ratedA", "Rated current", 1, 6000, "A").must(),
            figure("ratedV", "Rated voltage", 50, 2000, "V").must(),
            figure("interruptingKa", "Interrupting rating", 1, 200, "kA"),
            text("place", "Place", "outside, north wall"),
            choice("whoMayOpen", "Who may open it", Choices.openers()),
            yesNo("utilityDisconnect", "The disconnect that the utility asks for"),
            figure("toMeterFt", "Distance to the meter", 0, 2000, "ft"),
            yesNo("utilityLetter", "The utility agreed to a longer distance in writing"))),
    CONNECTION(one(
            "Connection",
            choice("kind", "How the array meets the service", Choices.connections())
                    .must(),
            figure("breakerA", "Breaker or device of the array", 15, 6000, "A"),
            figure("otherDevicesA", "Sum of all other breakers on the bus", 0, 10000, "A"),
            figure("otherSourcesA", "Output of sources already there", 0, 6000, "A"),
            figure("newMainA", "Smaller main, where one is set", 15, 6000, "A"),
            yesNo("dwelling", "A one- or two-family house"),
            text("place", "Place", "main panel in the milk house"),
            yesNo("generator", "A generator feeds this service"),
            figure("generatorKva", "Generator", 0.5, 5000, "kVA"),
            text("switchKind", "Its switch", "manual double-throw"),
            text("switchPlace", "Place of the switch", ""),
            yesNo("arrayOnUtilitySide", "The array meets the utility's side of the switch"),
            text("interlock", "How generator and array are kept apart", ""))),
    RACKING(one(
            "Racking and structure",
            count("posts", "Posts", 0, 20000, "posts"),
            figure("postLengthFt", "Post length", 1, 60, "ft"),
            figure("embedmentIn", "Embedment", 6, 300, "in"),
            figure("exposedIn", "Exposed height", 1, 300, "in"),
            figure("postSpacingFt", "Post to post", 1, 60, "ft"),
            figure("frontClearanceIn", "Lower edge over the ground", 0, 240, "in"),
            figure("windMph", "Wind that the letter assumes", 50, 250, "mph"),
            figure("snowPsf", "Ground snow that the letter assumes", 0, 300, "psf"),
            figure("frostIn", "Frost depth that the letter assumes", 0, 120, "in"),
            figure("siteWindMph", "Wind of the site", 50, 250, "mph"),
            figure("siteSnowPsf", "Ground snow of the site", 0, 300, "psf"),
            figure("siteFrostIn", "Frost depth of the site", 0, 120, "in"),
            text("letterBy", "Engineer, with license", ""),
            date("letterDate", "Date of the letter"))),
    PLAN(rows(
            "Site plan",
            choice("kind", "What it is", Choices.places()).must(),
            oneOf("mark", "Mark", "placed"),
            text("name", "Name", "barn, north boundary; of lines and buildings"),
            spots("points", "Where").must())),
    LABELS(rows(
            "Labels",
            text("place", "Place", "main panel").must(),
            text("text", "Words", "").must(),
            text("clause", "Clause", "NEC 690.13")));

    private final Fields fields;

    Part(Fields fields) {
        this.fields = fields;
    }

    @Override
    public Fields fields() {
        return fields;
    }

    public static Optional<Part> of(String slug) {
        return FieldPage.of(Part.class, slug);
    }
}
