package org.plumbrow.design.drawing;

import java.awt.geom.Arc2D;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.design.Racking;

/** The picture of a section: the side that the array faces is at the left. */
final class SectionView {

    private static final double GROUND = 330;
    private static final double MIDDLE = (Frame.LEFT + Frame.RIGHT) / 2;

    private final Canvas canvas;
    private final Dimensions dimensions;
    private final double points;
    private final Section section;
    private final double first;
    private final double last;
    private final double ground;

    SectionView(Canvas canvas, PlanScale scale, Section section) {
        this.canvas = canvas;
        this.dimensions = new Dimensions(canvas);
        this.points = scale.points();
        this.section = section;
        double next = section.hasNext() ? section.shape().pitchFt() * points : 0;
        double whole = next + section.shape().depthFt() * points;
        this.first = MIDDLE - whole / 2;
        this.last = first + next;
        this.ground = GROUND - Math.max(0, section.deepFt() * points - 60) / 2;
    }

    private double depth() {
        return section.shape().depthFt() * points;
    }

    private double foot() {
        return ground - section.clearFt() * points;
    }

    private double top() {
        return ground - section.topFt() * points;
    }

    void draw() {
        canvas.line(Frame.LEFT + 60, ground, Frame.RIGHT - 60, ground, Weight.HEAVY);
        boolean field = section.array().mounting() == Mounting.GROUND;
        canvas.text(Frame.LEFT + 60, ground + 14, 8, Anchor.START, field ? "ground" : "roof");
        row(first);
        if (section.hasNext()) {
            row(last);
            sun();
        }
        tilt();
        heights();
        lengths();
        canvas.quiet(Frame.LEFT, Frame.TOP + 9, 8.5, Anchor.START, faces());
    }

    private String faces() {
        return "Seen along the rows; the array faces "
                + Say.figure(section.array().azimuthDeg()) + "°, to the left.";
    }

    private void row(double left) {
        Racking racking = section.racking();
        if (racking != null) {
            double x = left + depth() / 2;
            double bottom = ground + section.deepFt() * points;
            canvas.rect(x - 2, (foot() + top()) / 2, 4, bottom - (foot() + top()) / 2, Weight.THIN, Canvas.SHADE);
        }
        double slope = Math.atan2(section.riseFt(), section.shape().depthFt());
        double thickX = 3 * Math.sin(slope);
        double thickY = 3 * Math.cos(slope);
        canvas.polygon(
                Weight.LINE,
                Canvas.PAPER,
                left,
                foot(),
                left + depth(),
                top(),
                left + depth() - thickX,
                top() - thickY,
                left - thickX,
                foot() - thickY);
    }

    /** Over the upper edge of the row in front: the winter sun where it is known, else the lowest that clears. */
    private void sun() {
        double angle = section.winter()
                .map(winter -> winter.profileDeg())
                .or(section::clearingDeg)
                .orElse(0.0);
        if (angle <= 0 || angle >= 90) {
            return;
        }
        double fall = Math.tan(Math.toRadians(angle));
        double edge = first + depth();
        double reach = Math.min(90 / fall, edge - Frame.LEFT - 320);
        double down = Math.min(downTo(edge, fall), Frame.RIGHT - 70 - edge);
        canvas.dashed(edge - reach, top() - reach * fall, edge + down, top() + down * fall, Weight.THIN);
        double x = edge - reach;
        double y = top() - reach * fall;
        canvas.circle(x, y, 7, Weight.LINE, Canvas.PAPER);
        String words = section.winter().isPresent()
                ? "sun at " + Section.degrees(angle) + " in the section: shortest day, 2 hours from noon"
                : "lowest sun that clears the row in front: " + Section.degrees(angle);
        canvas.text(x - 13, y + 3, 8, Anchor.END, words);
    }

    /** How far the ray goes from an edge: to the next row, or to the ground. */
    private double downTo(double edge, double fall) {
        double slope = section.riseFt() / section.shape().depthFt();
        double meets = (foot() - top() + last * slope + edge * fall) / (fall + slope);
        boolean shades = meets >= last && meets <= last + depth();
        return shades ? meets - edge : section.topFt() * points / fall;
    }

    private void tilt() {
        canvas.line(last, foot(), last + 64, foot(), Weight.HAIR);
        double tilt = section.array().tiltDeg();
        Arc2D arc = new Arc2D.Double(last - 50, foot() - 50, 100, 100, 0, tilt, Arc2D.OPEN);
        canvas.path(arc, Weight.HAIR, Canvas.NONE);
        boolean onTheLine = ground - foot() < 9;
        canvas.text(last + 68, onTheLine ? ground + 12 : foot() + 3, 8, Anchor.START, Say.figure(tilt) + "°");
    }

    private void heights() {
        Racking racking = section.racking();
        double right = last + depth() + 26;
        dimensions.lead(last + depth() + 3, top(), right + 4, top());
        dimensions.up(right, ground, top(), "top " + Layout.feet(section.topFt()));
        if (racking == null) {
            return;
        }
        if (racking.frontClearanceIn() != null && racking.frontClearanceIn() > 0) {
            dimensions.lead(first - 24, foot(), first - 5, foot());
            dimensions.upAtLeft(first - 20, ground, foot(), "front " + Say.of(racking.frontClearanceIn(), "in"));
        }
        double post = first + depth() / 2;
        if (racking.embedmentIn() != null) {
            double bottom = ground + section.deepFt() * points;
            dimensions.up(post + 16, bottom, ground, "embedment " + Say.of(racking.embedmentIn(), "in"));
        }
        if (racking.exposedIn() != null && racking.exposedIn() / 12 < section.topFt()) {
            double end = ground - racking.exposedIn() / 12 * points;
            dimensions.up(post + 16, ground, end, "exposed " + Say.of(racking.exposedIn(), "in"));
        }
    }

    private void lengths() {
        double y = Math.max(ground + section.deepFt() * points, ground + 20) + 14;
        double edge = first + depth();
        dimensions.along(first, edge, y, Layout.feet(section.shape().depthFt()));
        if (section.hasNext()) {
            if (section.gapFt() * points > 70) {
                dimensions.along(edge, last, y, "clear " + Layout.feet(section.gapFt()));
            }
            dimensions.along(
                    first, last, y + 24, "pitch " + Say.figure(section.shape().pitchFt()) + " ft");
        }
    }
}
