package org.plumbrow.design.drawing;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.Device;
import org.plumbrow.design.Obstruction;
import org.plumbrow.design.PlacedInverter;
import org.plumbrow.design.PvArray;
import org.plumbrow.design.Racking;
import org.plumbrow.design.Run;

/** What stands beside a plan: the array in figures, its rows, what is near it, and once for the site routes and shut-off. */
final class LayoutFacts {

    private LayoutFacts() {}

    static void write(Flow flow, DesignFacts facts, PvArray array, ArrayShape shape) {
        flow.table(figures(facts, array, shape));
        flow.table(rows(facts, array));
        flow.table(obstructions(array));
        flow.table(inverters(facts, array));
        if (array.equals(facts.arrays().get(0))) {
            flow.table(shutOff(facts));
            flow.table(routes(facts));
        }
    }

    private static Table figures(DesignFacts facts, PvArray array, ArrayShape shape) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Array", array.mark() + ", " + array.name()));
        rows.add(List.of("Mounting", array.mounting().words() + (array.onDwelling() ? ", on a house" : "")));
        rows.add(List.of("Modules", array.modules() + ", " + Say.figure(array.kwDc()) + " kW"));
        rows.add(List.of("Module", array.module().name()));
        rows.add(List.of("Its size", size(array)));
        rows.add(List.of("Tilt, azimuth", Say.figure(array.tiltDeg()) + "°, " + Say.figure(array.azimuthDeg()) + "°"));
        rows.add(List.of("Overall", Layout.feet(shape.lengthFt()) + " × " + Layout.feet(shape.overallDepthFt())));
        rows.add(List.of("Row pitch", Say.of(array.rowPitchFt(), "ft")));
        rows.add(List.of(
                array.mounting() == Mounting.GROUND ? "Setback" : "Fire path", Say.of(array.setbackFt(), "ft")));
        if (array.planeLengthFt() != null && array.planeWidthFt() != null) {
            String plane = Say.figure(array.planeLengthFt()) + " × " + Say.figure(array.planeWidthFt());
            rows.add(List.of("Plane", plane + " ft, array drawn in its middle"));
        }
        posts(facts.racking(), array, rows);
        return new Table("The array", List.of("What", "Figure"), rows);
    }

    private static String size(PvArray array) {
        return "%d × %d mm, %s"
                .formatted(
                        array.module().longSideMm(),
                        array.module().shortSideMm(),
                        array.portrait() ? "upright" : "lying");
    }

    private static void posts(@Nullable Racking racking, PvArray array, List<List<String>> rows) {
        if (racking == null || array.mounting() != Mounting.GROUND) {
            return;
        }
        String posts = racking.posts() == null ? Say.UNKNOWN : racking.posts() + " on the site";
        rows.add(List.of("Posts", posts + ", " + Say.of(racking.postSpacingFt(), "ft") + " apart"));
        rows.add(List.of(
                "Post",
                Say.of(racking.postLengthFt(), "ft") + " long, " + Say.of(racking.embedmentIn(), "in") + " deep"));
    }

    /** Posts of the site shared by modules among the ground arrays and their rows, so that their sum is kept. */
    static List<Integer> postsByRow(DesignFacts facts, PvArray array) {
        Racking racking = facts.racking();
        if (racking == null || racking.posts() == null || array.mounting() != Mounting.GROUND) {
            return List.of();
        }
        List<Integer> counts = new ArrayList<>();
        int all = facts.arrays().stream()
                .filter(one -> one.mounting() == Mounting.GROUND)
                .mapToInt(PvArray::modules)
                .sum();
        int before = 0;
        for (PvArray one : facts.arrays()) {
            for (int wide : one.mounting() == Mounting.GROUND ? one.modulesWide() : List.<Integer>of()) {
                int after = before + wide * one.modulesHigh();
                if (one.equals(array)) {
                    counts.add(share(racking.posts(), after, all) - share(racking.posts(), before, all));
                }
                before = after;
            }
        }
        return counts;
    }

    private static int share(int posts, int modules, int all) {
        return (int) Math.round((double) posts * modules / all);
    }

    /** Equal rows that follow one another in one line. */
    private static Table rows(DesignFacts facts, PvArray array) {
        List<Integer> posts = postsByRow(facts, array);
        List<List<String>> rows = new ArrayList<>();
        int first = 0;
        for (int row = 1; row <= array.rows(); row++) {
            boolean ends = row == array.rows() || !same(array, posts, first, row);
            if (ends) {
                String which = row - first == 1 ? String.valueOf(row) : (first + 1) + " to " + row;
                int wide = array.modulesWide().get(first);
                String count = wide + " × " + array.modulesHigh() + " = " + wide * array.modulesHigh();
                rows.add(
                        posts.isEmpty()
                                ? List.of(which, count)
                                : List.of(which, count, posts.get(first).toString()));
                first = row;
            }
        }
        List<String> heads = List.of("Row", "Modules each", "Posts each");
        return new Table("Rows, counted from the foot of the plan", heads.subList(0, posts.isEmpty() ? 2 : 3), rows);
    }

    private static boolean same(PvArray array, List<Integer> posts, int first, int row) {
        return array.modulesWide().get(first).equals(array.modulesWide().get(row))
                && (posts.isEmpty() || posts.get(first).equals(posts.get(row)));
    }

    private static Table obstructions(PvArray array) {
        List<List<String>> rows = new ArrayList<>();
        for (Obstruction thing : array.obstructions()) {
            rows.add(List.of(
                    "O" + (rows.size() + 1),
                    thing.name(),
                    Say.figure(thing.widthFt()) + " × " + Say.figure(thing.lengthFt()) + " ft",
                    Say.figure(thing.heightFt()) + " ft high"));
        }
        return new Table("In the way", List.of("Mark", "What", "Size", "Height"), rows);
    }

    private static Table inverters(DesignFacts facts, PvArray array) {
        return new Table(
                "Inverters of its strings",
                List.of("Mark", "Type", "Place"),
                facts.inverters().stream()
                        .filter(inverter -> array.mark().equals(inverter.array())
                                || facts.stringsOf(inverter.mark()).stream()
                                        .anyMatch(string -> string.array().equals(array.mark())))
                        .map(inverter ->
                                List.of(inverter.mark(), inverter.type().name(), place(inverter)))
                        .toList());
    }

    private static String place(PlacedInverter inverter) {
        String at = inverter.array() == null ? "at the service" : "at " + inverter.array();
        return inverter.place().isBlank() ? at : at + ", " + inverter.place();
    }

    private static Table shutOff(DesignFacts facts) {
        return new Table(
                "Shut-off (wires from modules stay live in daylight)",
                List.of("Mark", "What", "Place", "Who may open it"),
                facts.devices().stream()
                        .filter(Device::utilityDisconnect)
                        .map(device -> List.of(device.mark(), device.name(), device.place(), device.whoMayOpen()))
                        .toList());
    }

    private static Table routes(DesignFacts facts) {
        return new Table(
                "Trenches and bores",
                List.of("Run", "From, to", "Length", "Lies", "In"),
                facts.runs().stream()
                        .filter(run -> run.coverIn() != null)
                        .map(LayoutFacts::route)
                        .toList());
    }

    private static List<String> route(Run run) {
        return List.of(
                run.mark(),
                run.from() + " to " + run.to(),
                Say.figure(run.lengthFt()) + " ft",
                Schedules.buried(run),
                Say.raceway(run));
    }
}
