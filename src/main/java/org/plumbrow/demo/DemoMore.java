package org.plumbrow.demo;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/**
 * Generated projects beside the told ones, where {@code plumbrow.demo.projects} asks for more than the seed has, with crews
 * and machines in proportion. Each is a told project moved to another place of the valley, at some stage up to permitted;
 * the same number gives the same projects.
 */
@Component
@WithDemo
class DemoMore {

    /** A crew of each kind and a machine of each for so many projects: tighter than in the seed, so that a lost crew is felt. */
    private static final int PROJECTS_A_SET = 50;

    private static final int MOST = 600;
    private static final int FIRST_METER = 730_000;
    private static final List<String> FIRST = List.of(
            "Alder",
            "Aspen",
            "Bracken",
            "Bramble",
            "Burdock",
            "Campion",
            "Clover",
            "Comfrey",
            "Dogwood",
            "Fescue",
            "Foxtail",
            "Furrow",
            "Garnet",
            "Hazel",
            "Hemlock",
            "Lark",
            "Linden",
            "Mallow",
            "Marl",
            "Meadowsweet",
            "Nettle",
            "Otter",
            "Pebble",
            "Pewter",
            "Rushes",
            "Sorrel",
            "Swallow",
            "Teasel",
            "Timothy",
            "Vetch",
            "Willow",
            "Yarrow");
    private static final List<String> SECOND = List.of(
            "Bank", "Bend", "Bottom", "Corner", "Dell", "End", "Flat", "Fork", "Glen", "Hill", "Hollow", "Knoll",
            "Lane", "Rise", "Run", "Slope", "Top", "View", "Water");
    private static final List<String> PEOPLE = List.of(
            "Anke", "Bodil", "Cato", "Dagny", "Edda", "Falk", "Greta", "Hauke", "Imke", "Jorun", "Kaj", "Lioba",
            "Malte", "Neele", "Ortrun", "Pelle", "Rieke", "Siv", "Tjark", "Ulla", "Veit", "Wiebke");
    private static final Map<String, String> KINDS = Map.of(
            "dairy", "Dairy",
            "poultry", "Poultry",
            "swine", "Swine",
            "cold store", "Cold Store",
            "home", "home",
            "greenhouse", "Greenhouse",
            "none", "Workshops");
    /** Days since each stage, back from the last one; what follows is not reached yet. */
    private static final List<String> STAGES = List.of("permitted", "designed", "surveyed", "signed");

    private final int wanted;

    DemoMore(@Value("${plumbrow.demo.projects:0}") int wanted) {
        if (wanted > MOST) {
            throw new IllegalStateException("plumbrow.demo.projects is " + wanted + "; at most " + MOST);
        }
        this.wanted = wanted;
    }

    /** The told rows, and behind them as many more as it takes to have so many in all. */
    List<SeedRow> projects(List<SeedRow> told) {
        List<SeedRow> all = new ArrayList<>(told);
        Random random = new Random(wanted);
        List<SeedRow> like = told.stream().filter(row -> !row.has("standing")).toList();
        Set<String> names = new HashSet<>();
        for (int number = 1; all.size() < wanted; number++) {
            all.add(project(like.get(random.nextInt(like.size())), number, names, random));
        }
        return all;
    }

    private static SeedRow project(SeedRow like, int number, Set<String> names, Random random) {
        Map<String, String> cells = new HashMap<>(like.cells());
        String key = "more" + number;
        String place = place(names, random);
        cells.put("key", key);
        cells.put("name", place + " " + KINDS.getOrDefault(like.text("loads"), "Farm"));
        cells.put("contact", of(PEOPLE, random));
        cells.put("phone", "555-555-%04d".formatted(1000 + number));
        cells.put("email", key + "@customer.example");
        cells.put("street", (1 + random.nextInt(300)) + " " + place + " Road");
        cells.put("latitude", "%.4f".formatted(41.73 + 0.4 * random.nextDouble()));
        cells.put("longitude", "%.4f".formatted(-77.6 + 0.55 * random.nextDouble()));
        cells.put("meter_number", Integer.toString(FIRST_METER + number));
        stages(cells, random);
        return new SeedRow(like.file(), cells);
    }

    private static String place(Set<String> names, Random random) {
        String place = of(FIRST, random) + " " + of(SECOND, random);
        while (!names.add(place)) {
            place = of(FIRST, random) + " " + of(SECOND, random);
        }
        return place;
    }

    /**
     * The later its stage, the longer ago it was signed and the sooner it is promised: about as many a month as the crews can
     * build, with hardly a week to spare, so that most promises hold and a crew that is lost breaks some.
     */
    private static void stages(Map<String, String> cells, Random random) {
        cells.keySet().stream().filter(column -> column.endsWith("_days_ago")).forEach(column -> cells.put(column, ""));
        cells.put("cutover_in_days", "");
        int reached = random.nextInt(STAGES.size());
        int ago = 3 + random.nextInt(25);
        for (String stage : STAGES.subList(reached, STAGES.size())) {
            cells.put(stage + "_days_ago", Integer.toString(ago));
            ago += 10 + random.nextInt(25);
        }
        cells.put("promised_in_days", Integer.toString(68 + 72 * reached + random.nextInt(112)));
    }

    /** Crews like the told ones: "Crew 5", which is like Crew 1, and so on. */
    List<SeedRow> crews(List<SeedRow> told) {
        List<SeedRow> all = new ArrayList<>(told);
        while (all.size() < told.size() * sets()) {
            Map<String, String> cells =
                    new HashMap<>(told.get(all.size() % told.size()).cells());
            cells.put("name", "Crew " + (all.size() + 1));
            cells.put("lead", "");
            all.add(new SeedRow("crews.csv", cells));
        }
        return all;
    }

    /** Machines like the told ones, numbered: "Post driver 2". */
    List<SeedRow> machines(List<SeedRow> told) {
        List<SeedRow> all = new ArrayList<>(told);
        for (int set = 2; set <= sets(); set++) {
            for (SeedRow like : told) {
                Map<String, String> cells = new HashMap<>(like.cells());
                cells.put("name", "%s %d".formatted(like.text("name"), set));
                all.add(new SeedRow("equipment.csv", cells));
            }
        }
        return all;
    }

    private int sets() {
        return Math.max(1, Math.round((float) wanted / PROJECTS_A_SET));
    }

    private static String of(List<String> some, Random random) {
        return some.get(random.nextInt(some.size()));
    }
}
