package org.plumbrow.design.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.Device;
import org.plumbrow.design.PlaceKind;
import org.plumbrow.design.Placed;
import org.plumbrow.design.PlacedInverter;
import org.plumbrow.design.PvArray;
import org.plumbrow.design.PvString;
import org.plumbrow.design.Run;
import org.plumbrow.design.Spot;

/**
 * Where everything lies, in feet east and north of the meter: as measured where that is written, else by rule. By rule an
 * array lies on the side that it faces, as far from the meter as its buried runs are long, arrays beside one another;
 * inverters stand at their array's end nearest the meter; a disconnect stands on the way to the array.
 */
final class SiteGeometry {

    private static final double LEAST_WAY_FT = 20;
    private static final double BESIDE_FT = 4;
    private static final double BETWEEN_ARRAYS_FT = 20;

    /** A thing that stands somewhere. @param marks of all that stand there */
    record Thing(List<String> marks, String what, Spot at, boolean measured) {}

    /**
     * An array's outline.
     *
     * @param rows corners of each of its rows, counterclockwise from the lower left
     * @param strip corners of the free strip around it; empty without one
     */
    record Field(PvArray array, Spot corner, List<List<Spot>> rows, List<Spot> strip, boolean measured) {}

    /** @param runs that lie in it */
    record Way(List<Run> runs, List<Spot> points, boolean measured) {

        /** Of its legs one by one. */
        List<Double> legsFt() {
            List<Double> legs = new ArrayList<>();
            for (int i = 1; i < points.size(); i++) {
                legs.add(distance(points.get(i - 1), points.get(i)));
            }
            return legs;
        }
    }

    private final DesignFacts facts;
    private final List<Field> fields = new ArrayList<>();
    private final List<Thing> things = new ArrayList<>();
    private final List<Way> ways = new ArrayList<>();

    SiteGeometry(DesignFacts facts) {
        this.facts = facts;
        fields();
        inverters();
        devices();
        ways();
    }

    List<Field> arrays() {
        return fields;
    }

    List<Thing> things() {
        return things;
    }

    List<Way> routes() {
        return ways;
    }

    static double distance(Spot one, Spot other) {
        return Math.hypot(one.eastFt() - other.eastFt(), one.northFt() - other.northFt());
    }

    private Optional<List<Spot>> measured(PlaceKind kind, String mark) {
        return facts.places().stream()
                .filter(place -> place.kind() == kind && place.mark().equals(mark))
                .map(Placed::points)
                .findFirst();
    }

    private Optional<Spot> measured(String mark) {
        return measured(PlaceKind.THING, mark).map(points -> points.get(0));
    }

    /** From an array's own feet, along the row and up the slope, to the site's. */
    private static Spot from(Spot corner, PvArray array, double rightFt, double upFt) {
        double facing = Math.toRadians(array.azimuthDeg());
        double upEast = -Math.sin(facing);
        double upNorth = -Math.cos(facing);
        return new Spot(
                corner.eastFt() + rightFt * upNorth + upFt * upEast,
                corner.northFt() - rightFt * upEast + upFt * upNorth);
    }

    private static double flat(ArrayShape shape, PvArray array) {
        return shape.isFlush() ? Math.cos(Math.toRadians(array.tiltDeg())) : 1;
    }

    private void fields() {
        double aside = 0;
        double way = Math.max(
                LEAST_WAY_FT,
                facts.runs().stream()
                        .filter(run -> run.coverIn() != null)
                        .mapToDouble(Run::lengthFt)
                        .max()
                        .orElse(0));
        for (PvArray array : facts.arrays()) {
            ArrayShape shape = new ArrayShape(array);
            double depth = shape.overallDepthFt() * flat(shape, array);
            Optional<Spot> written = measured(array.mark());
            double left = fields.isEmpty() ? -shape.lengthFt() / 2 : aside;
            Spot corner = written.orElseGet(() -> from(new Spot(0, 0), array, left, -way - depth));
            fields.add(new Field(
                    array, corner, rows(array, shape, corner), strip(array, shape, corner), written.isPresent()));
            aside = left + shape.lengthFt() + BETWEEN_ARRAYS_FT;
        }
    }

    private static List<List<Spot>> rows(PvArray array, ArrayShape shape, Spot corner) {
        double flat = flat(shape, array);
        List<List<Spot>> rows = new ArrayList<>();
        for (int row = 0; row < array.rows(); row++) {
            double low = row * shape.pitchFt() * flat;
            double high = low + shape.depthFt() * flat;
            double length = shape.rowLengthFt(row);
            rows.add(List.of(
                    from(corner, array, 0, low),
                    from(corner, array, length, low),
                    from(corner, array, length, high),
                    from(corner, array, 0, high)));
        }
        return rows;
    }

    private static List<Spot> strip(PvArray array, ArrayShape shape, Spot corner) {
        double flat = flat(shape, array);
        return Extent.setback(array, shape)
                .map(box -> List.of(
                        from(corner, array, box.leftFt(), box.bottomFt() * flat),
                        from(corner, array, box.rightFt(), box.bottomFt() * flat),
                        from(corner, array, box.rightFt(), box.topFt() * flat),
                        from(corner, array, box.leftFt(), box.topFt() * flat)))
                .orElse(List.of());
    }

    private void inverters() {
        Map<String, List<String>> byRule = new LinkedHashMap<>();
        for (PlacedInverter inverter : facts.inverters()) {
            Optional<Spot> at = measured(inverter.mark());
            if (at.isPresent()) {
                things.add(new Thing(List.of(inverter.mark()), "inverter", at.get(), true));
            } else {
                byRule.computeIfAbsent(inverter.array() == null ? "" : inverter.array(), array -> new ArrayList<>())
                        .add(inverter.mark());
            }
        }
        byRule.forEach((array, marks) -> {
            Spot at = field(array).map(SiteGeometry::endNearestTheMeter).orElse(new Spot(-BESIDE_FT, -BESIDE_FT));
            things.add(new Thing(marks, marks.size() == 1 ? "inverter" : "inverters", at, false));
        });
    }

    private Optional<Field> field(String mark) {
        return fields.stream()
                .filter(field ->
                        field.array().mark().equals(mark) && !field.rows().isEmpty())
                .findFirst();
    }

    private static Spot endNearestTheMeter(Field field) {
        ArrayShape shape = new ArrayShape(field.array());
        double up = shape.overallDepthFt() * flat(shape, field.array());
        Spot meter = new Spot(0, 0);
        return Stream.of(-BESIDE_FT, shape.lengthFt() + BESIDE_FT)
                .flatMap(right -> Stream.of(0.0, up).map(high -> from(field.corner(), field.array(), right, high)))
                .min(java.util.Comparator.comparingDouble(spot -> distance(spot, meter)))
                .orElse(field.corner());
    }

    private void devices() {
        facts.combiners()
                .forEach(combiner -> measured(combiner.mark())
                        .ifPresent(at -> things.add(new Thing(List.of(combiner.mark()), "combiner", at, true))));
        for (Device device : facts.devices()) {
            Optional<Spot> at = measured(device.mark());
            String what = device.utilityDisconnect() ? "shut-off: " + device.name() : device.name();
            if (at.isPresent()) {
                things.add(new Thing(List.of(device.mark()), what, at.get(), true));
            } else if (device.utilityDisconnect() && device.toMeterFt() != null) {
                things.add(new Thing(List.of(device.mark()), what, onTheWay(device.toMeterFt()), false));
            }
        }
    }

    private Spot onTheWay(double feet) {
        Spot end = things.isEmpty() ? new Spot(0, -1) : things.get(0).at();
        double whole = Math.max(1, distance(end, new Spot(0, 0)));
        return new Spot(end.eastFt() * feet / whole, end.northFt() * feet / whole);
    }

    /** Buried runs, and others whose way is written. Those of one pair of ends, or without a way of their own, together. */
    private void ways() {
        Map<String, List<Run>> byRule = new LinkedHashMap<>();
        for (Run run : facts.runs()) {
            Optional<List<Spot>> way = measured(PlaceKind.ROUTE, run.mark()).filter(points -> points.size() > 1);
            if (way.isPresent()) {
                ways.add(new Way(List.of(run), way.get(), true));
            } else if (run.coverIn() != null) {
                byRule.computeIfAbsent(arrayOf(run), array -> new ArrayList<>()).add(run);
            }
        }
        byRule.forEach((array, runs) -> ways.add(new Way(runs, List.of(start(array), new Spot(0, 0)), false)));
    }

    /** Mark of the array that a run comes from; the first one where inverters of several meet in it. */
    private String arrayOf(Run run) {
        Circuits circuits = new Circuits(facts);
        return Stream.concat(
                        circuits.string(run.from()).map(PvString::array).stream(),
                        circuits.invertersBehind(run.from()).stream()
                                .map(PlacedInverter::array)
                                .filter(java.util.Objects::nonNull))
                .findFirst()
                .orElse(facts.arrays().isEmpty() ? "" : facts.arrays().get(0).mark());
    }

    private Spot start(String array) {
        return things.stream()
                .filter(thing -> thing.what().startsWith("inverter"))
                .filter(thing -> facts.inverter(thing.marks().get(0))
                        .filter(inverter -> array.equals(inverter.array()))
                        .isPresent())
                .map(Thing::at)
                .findFirst()
                .or(() -> field(array).map(SiteGeometry::endNearestTheMeter))
                .orElse(new Spot(0, -LEAST_WAY_FT));
    }
}
