package org.plumbrow.design.drawing;

import java.util.ArrayList;
import java.util.List;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.Obstruction;
import org.plumbrow.design.PvArray;

/** One array seen from above (a roof plane seen square to it), to scale, with what is known of it beside the plan. */
final class Layout {

    private static final double PLAN_RIGHT = 806;
    private static final double PLAN_BOTTOM = 626;
    private static final double ROW_WORDS = 96;
    private static final double DIMENSIONS = 150;
    private static final double FEET = 34;
    private static final double ROW_NAMED_FROM = 11.5;
    private static final double FACTS_LEFT = 834;

    private final DesignFacts facts;
    private final PvArray array;
    private final ArrayShape shape;
    private final Extent extent;
    private final PlanScale scale;

    Layout(DesignFacts facts, PvArray array) {
        this.facts = facts;
        this.array = array;
        this.shape = new ArrayShape(array);
        this.extent = Extent.of(array, shape);
        this.scale = PlanScale.fitting(
                extent.width(),
                extent.height(),
                PLAN_RIGHT - Frame.LEFT - ROW_WORDS - DIMENSIONS,
                PLAN_BOTTOM - Frame.TOP - FEET - 16);
    }

    List<Drawn> sheets() {
        Canvas canvas = new Canvas();
        plan(canvas);
        scale.bar(canvas, Frame.LEFT + 12, 662);
        north(canvas, PLAN_RIGHT - 60, 650);
        canvas.line(PLAN_RIGHT + 12, Frame.TOP, PLAN_RIGHT + 12, Frame.BOTTOM, Weight.HAIR);
        Flow flow = new Flow(canvas, FACTS_LEFT, Frame.TOP, Frame.RIGHT - FACTS_LEFT);
        LayoutFacts.write(flow, facts, array, shape);
        String says = "%s, %s, from above: %s in %s, %s by %s, facing %s degrees."
                .formatted(
                        array.mark(),
                        array.name(),
                        Say.count(array.modules(), "module", "modules"),
                        Say.count(array.rows(), "row", "rows"),
                        feet(shape.lengthFt()),
                        feet(shape.overallDepthFt()),
                        Say.figure(array.azimuthDeg()));
        return Drawn.all(
                "layout-" + Drawings.slug(array.mark()),
                "Array layout " + array.mark(),
                "A",
                scale.words(),
                says,
                flow.canvases());
    }

    static String feet(double feet) {
        return Say.rounded(feet, 1) + " ft";
    }

    private double x(double rightFt) {
        double used = extent.width() * scale.points();
        double room = PLAN_RIGHT - Frame.LEFT - ROW_WORDS - DIMENSIONS;
        return Frame.LEFT + ROW_WORDS + (room - used) / 2 + (rightFt - extent.leftFt()) * scale.points();
    }

    private double y(double upFt) {
        double used = extent.height() * scale.points();
        double room = PLAN_BOTTOM - Frame.TOP - FEET - 16;
        return PLAN_BOTTOM - FEET - (room - used) / 2 - (upFt - extent.bottomFt()) * scale.points();
    }

    private void box(Canvas canvas, Extent box, Weight weight, boolean dashed) {
        double width = box.width() * scale.points();
        double height = box.height() * scale.points();
        if (dashed) {
            canvas.dashedRect(x(box.leftFt()), y(box.topFt()), width, height, weight);
        } else {
            canvas.rect(x(box.leftFt()), y(box.topFt()), width, height, weight, Canvas.NONE);
        }
    }

    private void plan(Canvas canvas) {
        Extent.plane(array, shape).ifPresent(plane -> box(canvas, plane, Weight.LINE, false));
        Extent.setback(array, shape).ifPresent(setback -> box(canvas, setback, Weight.THIN, true));
        modules(canvas);
        posts(canvas);
        rowNames(canvas);
        canvas.text(x(extent.leftFt()), y(extent.topFt()) - 7, 8, Anchor.START, edges());
        dimensions(canvas);
        obstructions(canvas);
    }

    /** What the lines around the array are. */
    private String edges() {
        List<String> edges = new ArrayList<>();
        if (array.setbackFt() != null && array.setbackFt() > 0) {
            edges.add("dashed: %s free".formatted(Say.of(array.setbackFt(), "ft")));
        }
        if (array.planeLengthFt() != null && array.planeWidthFt() != null) {
            edges.add("outer line: plane of %s by %s"
                    .formatted(Say.of(array.planeLengthFt(), "ft"), Say.of(array.planeWidthFt(), "ft")));
        }
        if (shape.isFlush()) {
            edges.add("seen square to the roof, eave at the foot");
        }
        return String.join("; ", edges);
    }

    private void modules(Canvas canvas) {
        double width = shape.acrossFt() * scale.points();
        double height = shape.upFt() * shape.shortening() * scale.points();
        for (ArrayShape.Spot spot : shape.spots()) {
            canvas.rect(x(spot.rightFt()), y(spot.upFt()) - height, width, height, Weight.HAIR, Canvas.TINT);
        }
        for (int row = 0; row < array.rows(); row++) {
            double depth = shape.depthFt() * scale.points();
            double foot = y(row * shape.pitchFt());
            double length = shape.rowLengthFt(row) * scale.points();
            canvas.rect(x(0), foot - depth, length, depth, Weight.LINE, Canvas.NONE);
        }
    }

    /** As many as the racking has, shared among the rows by their length. */
    private void posts(Canvas canvas) {
        List<Integer> posts = LayoutFacts.postsByRow(facts, array);
        for (int row = 0; row < posts.size(); row++) {
            double y = y(row * shape.pitchFt() + shape.depthFt() / 2);
            double step = shape.rowLengthFt(row) / posts.get(row);
            for (int post = 0; post < posts.get(row); post++) {
                canvas.circle(x((post + 0.5) * step), y, 1.5, Weight.HAIR, Canvas.INK);
            }
        }
    }

    private void rowNames(Canvas canvas) {
        double step = shape.pitchFt() * scale.points();
        int every = (int) Math.max(1, Math.ceil(ROW_NAMED_FROM / step));
        for (int row = 0; row < array.rows(); row += every) {
            String words = "Row %d: %d".formatted(row + 1, array.modulesWide().get(row) * array.modulesHigh());
            double middle = y(row * shape.pitchFt() + shape.depthFt() / 2);
            canvas.text(x(extent.leftFt()) - 10, middle + 3, 8, Anchor.END, words);
        }
    }

    private void dimensions(Canvas canvas) {
        Dimensions dimensions = new Dimensions(canvas);
        double right = x(extent.rightFt()) + 14;
        double foot = y(0);
        if (array.rows() > 1) {
            double next = y(shape.pitchFt());
            dimensions.lead(x(shape.rowLengthFt(0)) + 2, foot, right + 4, foot);
            dimensions.lead(x(shape.rowLengthFt(1)) + 2, next, right + 4, next);
            right = dimensions.up(right, foot, next, "pitch " + Say.figure(shape.pitchFt()) + " ft") + 14;
        }
        double top = y(shape.overallDepthFt());
        if (array.rows() > 0) {
            dimensions.lead(x(shape.rowLengthFt(0)) + 2, foot, right + 4, foot);
            dimensions.lead(x(shape.rowLengthFt(array.rows() - 1)) + 2, top, right + 4, top);
        }
        dimensions.up(right, foot, top, feet(shape.overallDepthFt()));
        double below = y(extent.bottomFt()) + 16;
        dimensions.lead(x(0), foot + 2, x(0), below + 4);
        dimensions.lead(x(shape.lengthFt()), foot + 2, x(shape.lengthFt()), below + 4);
        dimensions.along(x(0), x(shape.lengthFt()), below, feet(shape.lengthFt()));
    }

    private void obstructions(Canvas canvas) {
        List<double[]> taken = new ArrayList<>();
        for (int i = 0; i < array.obstructions().size(); i++) {
            Obstruction thing = array.obstructions().get(i);
            double width = thing.widthFt() * scale.points();
            double height = thing.lengthFt() * scale.points();
            double left = x(thing.rightFt());
            double top = y(thing.upFt()) - height;
            canvas.rect(left, top, width, height, Weight.LINE, Canvas.SHADE);
            canvas.line(left, top, left + width, top + height, Weight.HAIR);
            double beside = width < 30 || height < 18 ? width / 2 + 15 : 0;
            double[] spot = free(taken, left + width / 2 + beside, top + height / 2);
            new Symbols(canvas).balloon(spot[0], spot[1], "O" + (i + 1));
        }
    }

    /** A place for a balloon that no other takes. */
    private static double[] free(List<double[]> taken, double x, double y) {
        double[] spot = {x, y};
        while (taken.stream()
                .anyMatch(other -> Math.abs(other[0] - spot[0]) < 28 && Math.abs(other[1] - spot[1]) < 14)) {
            spot[1] += 14;
        }
        taken.add(spot);
        return spot;
    }

    /** The foot of the plan is the side that the array faces. */
    private void north(Canvas canvas, double x, double y) {
        double turn = Math.toRadians(180 - array.azimuthDeg());
        double right = Math.sin(turn);
        double up = Math.cos(turn);
        canvas.circle(x, y, 16, Weight.THIN, Canvas.PAPER);
        canvas.polygon(
                Weight.THIN,
                Canvas.INK,
                x + 22 * right,
                y - 22 * up,
                x - 9 * up - 11 * right,
                y - 9 * right + 11 * up,
                x - 5 * right,
                y + 5 * up,
                x + 9 * up - 11 * right,
                y + 9 * right + 11 * up);
        canvas.bold(x + 31 * right, y - 31 * up + 3.5, 10, Anchor.MIDDLE, "N");
    }
}
