package org.plumbrow.design.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.calc.energy.Plane;
import org.plumbrow.calc.energy.RowSpacing;
import org.plumbrow.calc.energy.sun.Place;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.PvArray;
import org.plumbrow.design.Racking;

/** Across two rows, seen along them: tilt, clearance, embedment, pitch, and the winter sun over the row in front. */
final class Section {

    private static final double FEET_PER_M = 1 / 0.3048;
    private static final double WIDTH = 620;
    private static final double HEIGHT = 250;
    private static final double TABLE_TOP = 470;
    /** Hours around noon that are usually kept free of shade. */
    private static final double FREE_HOURS = 4;

    private final PvArray array;
    private final ArrayShape shape;
    private final @Nullable Racking racking;
    private final @Nullable Place place;

    Section(DesignFacts facts, PvArray array, @Nullable Place place) {
        this.array = array;
        this.shape = new ArrayShape(array);
        this.racking = array.mounting() == Mounting.GROUND ? facts.racking() : null;
        this.place = place;
    }

    /** None of modules that lie flush on a roof or flat. */
    List<Drawn> sheets() {
        if (shape.isFlush() || array.tiltDeg() <= 0 || array.rows() == 0) {
            return List.of();
        }
        Canvas canvas = new Canvas();
        PlanScale scale = PlanScale.fitting(overallFt(), topFt() + deepFt(), WIDTH, HEIGHT);
        new SectionView(canvas, scale, this).draw();
        Flow flow = new Flow(canvas, Frame.LEFT, TABLE_TOP, 560);
        flow.table(new Table("The section in figures", List.of("What", "Figure"), figures()));
        return Drawn.all(
                "section-" + Drawings.slug(array.mark()),
                "Row section " + array.mark(),
                "S",
                scale.words(),
                "Section across the rows of " + array.mark() + ": tilt " + Say.figure(array.tiltDeg())
                        + " degrees, row pitch " + Say.of(array.rowPitchFt(), "ft") + ".",
                flow.canvases());
    }

    boolean hasNext() {
        return array.rows() > 1;
    }

    PvArray array() {
        return array;
    }

    ArrayShape shape() {
        return shape;
    }

    @Nullable
    Racking racking() {
        return racking;
    }

    private double overallFt() {
        return (hasNext() ? shape.pitchFt() : 0) + shape.depthFt();
    }

    double clearFt() {
        return racking == null || racking.frontClearanceIn() == null ? 0 : racking.frontClearanceIn() / 12;
    }

    double riseFt() {
        return shape.slantFt() * Math.sin(Math.toRadians(array.tiltDeg()));
    }

    double topFt() {
        return clearFt() + riseFt();
    }

    double deepFt() {
        return racking == null || racking.embedmentIn() == null ? 0 : racking.embedmentIn() / 12;
    }

    double gapFt() {
        return shape.pitchFt() - shape.depthFt();
    }

    /** The lowest sun that still clears the row in front, degrees above the ground in the section. */
    Optional<Double> clearingDeg() {
        return hasNext() && gapFt() > 0 ? Optional.of(Math.toDegrees(Math.atan2(riseFt(), gapFt()))) : Optional.empty();
    }

    /** On the shortest day, with so many hours around noon to be free; empty without a place or where the sun is behind. */
    Optional<RowSpacing> winter(double freeHours) {
        if (place == null) {
            return Optional.empty();
        }
        try {
            Plane plane = new Plane(array.tiltDeg(), array.azimuthDeg());
            return Optional.of(RowSpacing.free(place, plane, shape.slantFt() / FEET_PER_M, freeHours));
        } catch (IllegalArgumentException noSun) {
            return Optional.empty();
        }
    }

    Optional<RowSpacing> winter() {
        return winter(FREE_HOURS);
    }

    private List<List<String>> figures() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Tilt", Say.figure(array.tiltDeg()) + "°"));
        rows.add(List.of("Modules along the slope", array.modulesHigh() + ", " + Layout.feet(shape.slantFt())));
        rows.add(List.of("Row pitch", Say.of(array.rowPitchFt(), "ft")));
        if (hasNext()) {
            rows.add(List.of("Clear ground between rows", Layout.feet(gapFt())));
        }
        clearingDeg().ifPresent(sun -> rows.add(List.of("Lowest sun that clears the row in front", degrees(sun))));
        winter(0)
                .ifPresent(noon -> rows.add(
                        List.of("Sun on the shortest day at noon, in the section", degrees(noon.profileDeg()))));
        winter().ifPresent(free -> {
            rows.add(List.of("Sun on the shortest day, 2 hours from noon, in the section", degrees(free.profileDeg())));
            rows.add(List.of("Least pitch without shade for these 4 hours", Layout.feet(free.pitchM() * FEET_PER_M)));
        });
        if (racking != null) {
            racking(racking, rows);
        }
        return rows;
    }

    static String degrees(double angle) {
        return Say.rounded(angle, 1) + "°";
    }

    private static void racking(Racking racking, List<List<String>> rows) {
        rows.add(List.of("Front clearance", Say.of(racking.frontClearanceIn(), "in")));
        rows.add(List.of(
                "Post",
                "%s long, %s in the ground, %s above it"
                        .formatted(
                                Say.of(racking.postLengthFt(), "ft"),
                                Say.of(racking.embedmentIn(), "in"),
                                Say.of(racking.exposedIn(), "in"))));
        rows.add(List.of(
                "Engineer's letter: wind, snow, frost",
                loads(racking.windMph(), racking.snowPsf(), racking.frostIn()) + " (site: "
                        + loads(racking.siteWindMph(), racking.siteSnowPsf(), racking.siteFrostIn()) + ")"));
        String by = racking.letterBy() == null ? Say.UNKNOWN : racking.letterBy();
        rows.add(List.of("Letter by", racking.letterDate() == null ? by : by + ", " + racking.letterDate()));
    }

    private static String loads(@Nullable Double wind, @Nullable Double snow, @Nullable Double frost) {
        return Say.of(wind, "mph") + ", " + Say.of(snow, "psf") + ", " + Say.of(frost, "in");
    }
}
