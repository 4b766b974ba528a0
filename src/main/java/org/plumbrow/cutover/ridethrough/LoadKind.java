package org.plumbrow.cutover.ridethrough;

import static org.plumbrow.design.part.Col.choice;
import static org.plumbrow.design.part.Col.count;
import static org.plumbrow.design.part.Col.date;
import static org.plumbrow.design.part.Col.figure;
import static org.plumbrow.design.part.Col.text;
import static org.plumbrow.design.part.Col.time;
import static org.plumbrow.design.part.Col.yesNo;
import static org.plumbrow.design.part.FieldPage.Fields.one;
import static org.plumbrow.design.part.FieldPage.Fields.rows;

import java.util.Optional;
import org.plumbrow.design.part.FieldPage;

/** What on a site suffers without power or helps against it; each kind is a page of its own with its own version. */
public enum LoadKind implements FieldPage {
    HOUSES(rows(
            "Houses with animals",
            text("mark", "Name", "house 1").must(),
            choice("animals", "Animals", LoadChoices.animals()).must(),
            count("number", "How many", 1, 500_000, "").must(),
            figure("massLb", "Weight of one on the day", 0.1, 2600, "lb").must(),
            figure("eggsLb", "Eggs of one hen", 0, 0.17, "lb a day").saying("layers only, usually 0.12"),
            figure("milkLb", "Milk of one cow", 0, 176, "lb a day").saying("cows only, usually 75"),
            figure("feedLevel", "Feed over maintenance", 1, 4, "times").saying("pigs only, usually 3"),
            figure("lengthFt", "Length inside", 10, 1500, "ft").must(),
            figure("widthFt", "Width inside", 8, 300, "ft").must(),
            figure("heightFt", "Mean height inside", 5, 40, "ft").must(),
            figure("wallR", "Walls", 0.6, 100, "R").must(),
            figure("ceilingR", "Ceiling", 0.6, 100, "R").must(),
            figure("insideF", "Air inside when the fans stop", 20, 110, "°F").must(),
            figure("insideRh", "Humidity inside", 10, 100, "%").saying("usually 65"),
            figure("closedAch", "Air that comes in by itself, closed", 0, 60, "changes an hour")
                    .saying("usually 0.5"),
            yesNo("opens", "Curtains or vents open without power, tried"),
            figure("openAch", "Air that comes in then", 0, 60, "changes an hour")
                    .saying("usually 15"),
            figure("heatLimitF", "Own limit of heat", 60, 115, "°F").saying("else the usual one of such animals"),
            figure("coldLimitF", "Limit of cold, young animals", 30, 95, "°F").saying("chicks in their first days 82"),
            text("limitSource", "Who says so", "needed with a limit of your own"),
            figure("massFactor", "House that warms with its air", 1, 40, "times the air")
                    .saying("else the usual one of such animals"),
            yesNo("guessed", "Some of this is guessed"))),
    TANK(one(
            "Milk in the tank",
            figure("fullLb", "Milk in a full tank", 100, 220_000, "lb").must(),
            figure("milkLb", "Milk in it on the day", 100, 220_000, "lb").must(),
            figure("milkF", "Tank shows before the outage", 33, 60, "°F").must(),
            figure("roomF", "Warmest room around it", 30, 115, "°F").must(),
            time("from1", "Beginning of the first milking").must(),
            time("to1", "End of the first milking").must(),
            time("from2", "Beginning of the second milking"),
            time("to2", "End of the second milking"),
            figure("afterF", "Tank shows when milking ends", 33, 100, "°F").must(),
            figure("coolingF", "It cools under power", 1, 36, "°F an hour").must())),
    STORES(rows(
            "Cold stores and freezers",
            text("mark", "Name", "apple store").must(),
            choice("product", "Product", LoadChoices.products()).must(),
            figure("productLb", "Product in it", 1, 20_000_000, "lb").must(),
            figure("airFt3", "Air in it", 1, 3_500_000, "ft³").must(),
            figure("surfaceFt2", "Walls, floor and ceiling", 11, 1_000_000, "ft²")
                    .must(),
            figure("wallR", "Insulation", 0.6, 100, "R").must(),
            figure("insideF", "Inside before the outage", -40, 70, "°F").must(),
            figure("limitF", "Product may reach", -30, 80, "°F").must(),
            text("limitSource", "Who says so", "the buyer, the store’s rule").must(),
            figure("respiration", "Heat that living product makes", 0, 500, "W a tonne")
                    .saying("0 for what does not live"))),
    GREENHOUSES(rows(
            "Greenhouses",
            text("mark", "Name", "house A").must(),
            choice("cover", "Cover", LoadChoices.covers()).must(),
            figure("coverFt2", "Cover to the outside", 11, 1_000_000, "ft²").must(),
            figure("volumeFt3", "Air in it", 36, 35_000_000, "ft³").must(),
            figure("floorFt2", "Floor", 11, 1_000_000, "ft²").must(),
            figure("waterGal", "Water and wet soil that warm with it", 0, 2_000_000, "gal")
                    .saying("else the air alone counts"),
            figure("ach", "Air that comes in by itself", 0, 60, "changes an hour")
                    .saying("usually 1"),
            figure("insideF", "Inside before the outage", 30, 110, "°F").must(),
            figure("frostF", "Crop’s cold limit", 20, 80, "°F").must(),
            figure("heatF", "Crop’s heat limit", 60, 130, "°F").must(),
            text("limitSource", "Who says so", "the grower").must())),
    HOME(one(
            "Home",
            yesNo("medical", "Somebody depends on electrical equipment").must(),
            yesNo("agreed", "What happens with it is agreed with them"),
            yesNo("refrigerator", "A refrigerator with food"),
            choice("freezer", "Freezer", LoadChoices.freezers()))),
    GENERATOR(one(
            "Generator",
            figure("ratedKw", "On its plate", 1, 5000, "kW").must(),
            choice("transfer", "How it reaches the wiring", LoadChoices.transfers())
                    .must(),
            choice("rotation", "Its phases turn as the utility’s", LoadChoices.rotations())
                    .must(),
            figure("fuelGal", "Fuel in the tank on the day", 0, 10_000, "gal").must(),
            figure("galPerKwh", "Fuel it uses", 0.02, 0.5, "gal/kWh").saying("diesel usually 0.08"),
            figure("heightFt", "Site above the sea", -1000, 15_000, "ft").saying("else 0"),
            figure("airF", "Air at its intake", -40, 130, "°F").saying("else 77"),
            figure("changeOverS", "From losing the utility to carrying", 0, 3600, "s")
                    .saying("else 10"),
            date("lastRun", "Last run under the farm’s load"),
            date("nextRun", "Next run under the farm’s load"))),
    LOADS(rows(
            "What the generator carries",
            text("mark", "Name", "fan, each alone").must(),
            count("number", "How many", 1, 300, "").must(),
            figure("kw", "Each runs at", 0.01, 2000, "kW").must(),
            figure("start", "Start over running", 1, 8, "times").saying("motors across the line 3 to 6; else 3"))),
    TIMES(rows(
            "Times that count",
            text("mark", "Name", "catch of house 1").must(),
            choice("what", "What it is", LoadChoices.times()).must(),
            choice("weekdays", "On which days", LoadChoices.weekdays()),
            date("date", "Day of a catch or placement, first day of a vacation"),
            date("lastDate", "Last day of a vacation"),
            time("from", "Beginning").saying("a vacation has none"),
            time("to", "End").saying("a catch or a vacation has none")));

    private final Fields fields;

    LoadKind(Fields fields) {
        this.fields = fields;
    }

    @Override
    public Fields fields() {
        return fields;
    }

    public static Optional<LoadKind> of(String slug) {
        return FieldPage.of(LoadKind.class, slug);
    }
}
