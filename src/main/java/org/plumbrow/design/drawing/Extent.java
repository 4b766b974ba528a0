package org.plumbrow.design.drawing;

import java.util.Optional;
import java.util.stream.Stream;
import org.plumbrow.design.Obstruction;
import org.plumbrow.design.PvArray;

/** A box in plan, feet from the lower left corner of the array. */
record Extent(double leftFt, double bottomFt, double rightFt, double topFt) {

    double width() {
        return rightFt - leftFt;
    }

    double height() {
        return topFt - bottomFt;
    }

    private Extent with(Extent other) {
        return new Extent(
                Math.min(leftFt, other.leftFt),
                Math.min(bottomFt, other.bottomFt),
                Math.max(rightFt, other.rightFt),
                Math.max(topFt, other.topFt));
    }

    private static Extent array(ArrayShape shape) {
        return new Extent(0, 0, Math.max(1, shape.lengthFt()), Math.max(1, shape.overallDepthFt()));
    }

    /** The free strip around it. */
    static Optional<Extent> setback(PvArray array, ArrayShape shape) {
        return Optional.ofNullable(array.setbackFt())
                .filter(feet -> feet > 0)
                .map(feet -> new Extent(-feet, -feet, shape.lengthFt() + feet, shape.overallDepthFt() + feet));
    }

    /** The roof plane or field, with the array in its middle. */
    static Optional<Extent> plane(PvArray array, ArrayShape shape) {
        if (array.planeLengthFt() == null || array.planeWidthFt() == null) {
            return Optional.empty();
        }
        double aside = (array.planeLengthFt() - shape.lengthFt()) / 2;
        double below = (array.planeWidthFt() - shape.overallDepthFt()) / 2;
        return Optional.of(new Extent(-aside, -below, shape.lengthFt() + aside, shape.overallDepthFt() + below));
    }

    static Extent of(PvArray array, ArrayShape shape) {
        Stream<Extent> boxes = Stream.concat(
                Stream.concat(plane(array, shape).stream(), setback(array, shape).stream()),
                array.obstructions().stream().map(Extent::of));
        return boxes.reduce(array(shape), Extent::with);
    }

    private static Extent of(Obstruction thing) {
        return new Extent(
                thing.rightFt(), thing.upFt(), thing.rightFt() + thing.widthFt(), thing.upFt() + thing.lengthFt());
    }
}
