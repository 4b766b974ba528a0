package org.plumbrow.design.drawing;

import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.PlaceKind;
import org.plumbrow.design.Placed;
import org.plumbrow.design.Run;
import org.plumbrow.design.Spot;
import org.plumbrow.design.drawing.SiteGeometry.Field;
import org.plumbrow.design.drawing.SiteGeometry.Thing;
import org.plumbrow.design.drawing.SiteGeometry.Way;

/** The whole site from above, north up, the meter as its zero: arrays, inverters, shut-off, trenches, lines, buildings. */
final class SitePlan {

    private static final double RIGHT = 806;
    private static final double BOTTOM = 630;
    private static final double EDGE = 46;
    private static final double FACTS_LEFT = 834;

    private final DesignFacts facts;
    private final SiteGeometry geometry;
    private final PlanScale scale;
    private final double west;
    private final double south;
    private final double width;
    private final double height;
    private final Canvas canvas = new Canvas();
    private final FreeSpots labels = new FreeSpots(canvas, Frame.LEFT, Frame.TOP, RIGHT, BOTTOM + 10);

    SitePlan(DesignFacts facts) {
        this.facts = facts;
        this.geometry = new SiteGeometry(facts);
        List<Spot> all = all();
        this.west = all.stream().mapToDouble(Spot::eastFt).min().orElse(0);
        this.south = all.stream().mapToDouble(Spot::northFt).min().orElse(0);
        this.width = all.stream().mapToDouble(Spot::eastFt).max().orElse(0) - west;
        this.height = all.stream().mapToDouble(Spot::northFt).max().orElse(0) - south;
        this.scale = PlanScale.fitting(
                Math.max(1, width), Math.max(1, height), RIGHT - Frame.LEFT - 2 * EDGE, BOTTOM - Frame.TOP - 2 * EDGE);
    }

    private List<Spot> all() {
        return Stream.of(
                        Stream.of(new Spot(0, 0)),
                        geometry.arrays().stream()
                                .flatMap(field -> field.rows().stream())
                                .flatMap(List::stream),
                        geometry.arrays().stream().flatMap(field -> field.strip().stream()),
                        geometry.things().stream().map(Thing::at),
                        geometry.routes().stream().flatMap(way -> way.points().stream()),
                        facts.places().stream().flatMap(place -> place.points().stream()))
                .flatMap(spots -> spots)
                .toList();
    }

    List<Drawn> sheets() {
        if (geometry.arrays().isEmpty()) {
            return List.of();
        }
        lines();
        geometry.arrays().forEach(this::field);
        geometry.routes().forEach(this::way);
        signs();
        names();
        scale.bar(canvas, Frame.LEFT + 12, 662);
        north();
        canvas.line(RIGHT + 12, Frame.TOP, RIGHT + 12, Frame.BOTTOM, Weight.HAIR);
        Flow flow = new Flow(canvas, FACTS_LEFT, Frame.TOP, Frame.RIGHT - FACTS_LEFT);
        flow.table(places());
        flow.table(ways());
        flow.table(others());
        flow.notes("How to read it", notes());
        return Drawn.all("site-plan", "Site plan", "L", scale.words(), says(), flow.canvases());
    }

    private double x(Spot spot) {
        double used = width * scale.points();
        return (Frame.LEFT + RIGHT - used) / 2 + (spot.eastFt() - west) * scale.points();
    }

    private double y(Spot spot) {
        double used = height * scale.points();
        return (Frame.TOP + BOTTOM + used) / 2 - (spot.northFt() - south) * scale.points();
    }

    private Path2D joined(List<Spot> spots, boolean closed) {
        Path2D path = new Path2D.Double();
        path.moveTo(x(spots.get(0)), y(spots.get(0)));
        spots.stream().skip(1).forEach(spot -> path.lineTo(x(spot), y(spot)));
        if (closed) {
            path.closePath();
        }
        return path;
    }

    /** Lines and buildings that are there. */
    private void lines() {
        for (Placed place : there()) {
            boolean area = place.kind().isArea() && place.points().size() > 2;
            Path2D path = joined(place.points(), area);
            switch (place.kind()) {
                case BUILDING, TREES -> canvas.path(path, Weight.LINE, Canvas.SHADE);
                case BOUNDARY -> canvas.path(path, Weight.HEAVY, Canvas.NONE);
                case CONTOUR, LANE -> canvas.path(path, Weight.HAIR, Canvas.NONE);
                default -> canvas.dashedPath(path, Weight.THIN);
            }
        }
    }

    private List<Placed> there() {
        return facts.places().stream()
                .filter(place -> place.kind() != PlaceKind.THING && place.kind() != PlaceKind.ROUTE)
                .toList();
    }

    private void field(Field field) {
        for (List<Spot> row : field.rows()) {
            canvas.path(joined(row, true), field.measured() ? Weight.LINE : Weight.HAIR, Canvas.TINT);
        }
        if (!field.strip().isEmpty()) {
            canvas.dashedPath(joined(field.strip(), true), Weight.HAIR);
        }
    }

    private void way(Way way) {
        Path2D path = joined(way.points(), false);
        if (way.measured()) {
            canvas.path(path, Weight.HEAVY, Canvas.NONE);
        } else {
            canvas.dashedPath(path, Weight.LINE);
        }
    }

    private void signs() {
        for (Thing thing : geometry.things()) {
            String fill = thing.measured() ? Canvas.INK : Canvas.PAPER;
            canvas.rect(x(thing.at()) - 4, y(thing.at()) - 4, 8, 8, Weight.LINE, fill);
            labels.keepFree(x(thing.at()), y(thing.at()), 5);
        }
        Spot meter = new Spot(0, 0);
        new Symbols(canvas).meter(x(meter), y(meter));
        labels.keepFree(x(meter), y(meter), 14);
    }

    /** Written last, each where no other stands. */
    private void names() {
        geometry.arrays().stream()
                .filter(field -> !field.rows().isEmpty())
                .forEach(field -> labels.bold(
                        x(middle(field)), y(middle(field)), field.array().mark()));
        labels.bold(x(new Spot(0, 0)), y(new Spot(0, 0)), "meter");
        geometry.things().forEach(thing -> labels.bold(x(thing.at()), y(thing.at()), Say.range(thing.marks())));
        geometry.routes().forEach(this::lengths);
        there().forEach(place -> {
            Spot at = place.points().get(place.points().size() / 2);
            labels.plain(x(at), y(at), name(place));
        });
    }

    private static Spot middle(Field field) {
        Spot one = field.rows().get(0).get(0);
        Spot other = field.rows().get(field.rows().size() - 1).get(2);
        return new Spot((one.eastFt() + other.eastFt()) / 2, (one.northFt() + other.northFt()) / 2);
    }

    private void lengths(Way way) {
        List<Double> legs = way.legsFt();
        if (!way.measured() || legs.size() == 1) {
            Spot middle = between(way, 1);
            labels.plain(x(middle), y(middle), runs(way) + ": " + feet(way.runs()));
            return;
        }
        for (int leg = 1; leg <= legs.size(); leg++) {
            Spot middle = between(way, leg);
            String mark = leg == 1 ? runs(way) + ": " : "";
            labels.plain(x(middle), y(middle), mark + Layout.feet(legs.get(leg - 1)));
        }
    }

    private static Spot between(Way way, int leg) {
        Spot from = way.points().get(leg - 1);
        Spot to = way.points().get(leg);
        return new Spot((from.eastFt() + to.eastFt()) / 2, (from.northFt() + to.northFt()) / 2);
    }

    private static String runs(Way way) {
        return Say.range(way.runs().stream().map(Run::mark).toList());
    }

    private static String feet(List<Run> runs) {
        return Say.figure(runs.stream().mapToDouble(Run::lengthFt).max().orElse(0)) + " ft";
    }

    private static String name(Placed place) {
        return place.name().isBlank() ? place.kind().words() : place.name();
    }

    private void north() {
        double x = RIGHT - 60;
        double y = 650;
        canvas.circle(x, y, 16, Weight.THIN, Canvas.PAPER);
        canvas.polygon(Weight.THIN, Canvas.INK, x, y - 22, x - 9, y + 11, x, y + 5, x + 9, y + 11);
        canvas.bold(x, y - 27.5, 10, Anchor.MIDDLE, "N");
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        notes.add(
                "The meter is the zero; north is up. Existing lines are shown as far as they are written: locate before"
                        + " digging.");
        boolean byRule = geometry.arrays().stream().anyMatch(field -> !field.measured())
                || geometry.things().stream().anyMatch(thing -> !thing.measured())
                || geometry.routes().stream().anyMatch(way -> !way.measured());
        if (byRule) {
            notes.add(
                    "Open signs, thin arrays and dashed ways stand by rule and are not measured: do not stake from them."
                            + " Write their places under “Site plan” of the design.");
        }
        return notes;
    }

    private Table places() {
        List<List<String>> rows = new ArrayList<>();
        for (Field field : geometry.arrays()) {
            rows.add(place(field.array().mark(), "lower left corner", field.corner(), field.measured()));
        }
        geometry.things()
                .forEach(
                        thing -> rows.add(place(Say.range(thing.marks()), thing.what(), thing.at(), thing.measured())));
        return new Table(
                "Where it stands, feet from the meter", List.of("Mark", "What", "East", "North", "Place"), rows);
    }

    private static List<String> place(String mark, String what, Spot at, boolean measured) {
        return List.of(
                mark,
                what,
                measured ? Say.figure(at.eastFt()) : Say.rounded(at.eastFt(), 0),
                measured ? Say.figure(at.northFt()) : Say.rounded(at.northFt(), 0),
                measured ? "as written" : "by rule, not measured");
    }

    private Table ways() {
        List<List<String>> rows = new ArrayList<>();
        for (Way way : geometry.routes()) {
            double plan = way.legsFt().stream().mapToDouble(Double::doubleValue).sum();
            for (Run run : way.runs()) {
                rows.add(List.of(
                        run.mark(),
                        Say.figure(run.lengthFt()) + " ft",
                        way.measured() ? Layout.feet(plan) : "not measured",
                        Schedules.buried(run).isEmpty() ? "not buried" : Schedules.buried(run),
                        Say.raceway(run)));
            }
        }
        return new Table("Trenches and ways", List.of("Run", "Length", "On the plan", "Lies", "In"), rows);
    }

    private Table others() {
        return new Table(
                "Lines and buildings",
                List.of("Name", "What", "Points east, north"),
                there().stream()
                        .map(place -> List.of(
                                name(place),
                                place.kind().words(),
                                String.join(
                                        "; ",
                                        place.points().stream()
                                                .map(spot ->
                                                        Say.figure(spot.eastFt()) + " " + Say.figure(spot.northFt()))
                                                .toList())))
                        .toList());
    }

    private String says() {
        long measured = geometry.arrays().stream().filter(Field::measured).count();
        return "The site from above with the meter as zero: %s, %s of them placed as measured; %s."
                .formatted(
                        Say.count(geometry.arrays().size(), "array", "arrays"),
                        measured,
                        Say.count(
                                geometry.routes().size(),
                                "way of buried or placed runs",
                                "ways of buried or placed runs"));
    }
}
