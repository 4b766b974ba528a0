package org.plumbrow.cutover.ridethrough;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.plumbrow.calc.ridethrough.Caution;
import org.plumbrow.calc.ridethrough.Limit;
import org.plumbrow.calc.ridethrough.LimitTime;
import org.plumbrow.calc.ridethrough.RideThrough;
import org.plumbrow.calc.ridethrough.house.Animal;
import org.plumbrow.calc.ridethrough.house.Envelope;
import org.plumbrow.calc.ridethrough.house.HouseAir;
import org.plumbrow.calc.ridethrough.house.HouseDoubts;
import org.plumbrow.calc.ridethrough.house.HouseLimits;
import org.plumbrow.calc.ridethrough.house.HouseQuestion;
import org.plumbrow.calc.ridethrough.house.LivestockHouse;
import org.plumbrow.calc.ridethrough.house.Outdoors;
import org.plumbrow.design.part.Cells;

/** One house with animals, from what people wrote. */
record HouseLoad(Cells cells) {

    /** Share of the sun that a roof takes up, and heat from roof to air, W/(m2 K): common practice for a sun-warmed roof. */
    private static final double SUN_TAKEN = 0.6;

    private static final double ROOF_TO_AIR = 17;

    LivestockHouse closed() {
        LivestockHouse house = LivestockHouse.closed(
                cells.text("mark"),
                animal(),
                cells.whole("number", 1),
                length() * width() * cells.number("heightFt", 0) * UsUnits.M3,
                Envelope.ofBox(
                                length() * UsUnits.M,
                                width() * UsUnits.M,
                                cells.number("heightFt", 0) * UsUnits.M,
                                UsUnits.uOfR(cells.number("wallR", 1)),
                                UsUnits.uOfR(cells.number("ceilingR", 1)))
                        .uaWPerK(),
                cells.number("closedAch", 0.5));
        Double factor = cells.number("massFactor");
        return factor == null ? house : house.withMassFactor(factor);
    }

    boolean opens() {
        return cells.yes("opens");
    }

    LivestockHouse opened() {
        return closed().opened(cells.number("openAch", 15));
    }

    private double length() {
        return cells.number("lengthFt", 0);
    }

    private double width() {
        return cells.number("widthFt", 0);
    }

    private Animal animal() {
        double kg = cells.number("massLb", 0) * UsUnits.KG;
        double eggs = cells.number("eggsLb", 0.12) * UsUnits.KG;
        return switch (cells.text("animals")) {
            case "LAYERS_CAGED" -> new Animal.Layer(kg, eggs, true);
            case "LAYERS_FLOOR" -> new Animal.Layer(kg, eggs, false);
            case "PULLETS" -> new Animal.Pullet(kg);
            case "TURKEYS" -> new Animal.Turkey(kg);
            case "PIGS" -> new Animal.FatteningPig(kg, cells.number("feedLevel", 3));
            case "PIGLETS" -> new Animal.Piglet(kg, cells.number("feedLevel", 3));
            case "COWS" -> new Animal.Cow(kg, cells.number("milkLb", 75) * UsUnits.KG, 0);
            default -> new Animal.Broiler(kg);
        };
    }

    /** The usual limits, what people set themselves in their place. */
    HouseLimits limits() {
        List<Limit> limits =
                new ArrayList<>(HouseLimits.usual(animal().species()).limits());
        Double heatF = cells.number("heatLimitF");
        Double coldF = cells.number("coldLimitF");
        if (heatF != null) {
            limits.removeIf(limit -> limit.kind() == Limit.Kind.HEAT);
            limits.add(0, new Limit(Limit.Kind.HEAT, UsUnits.degC(heatF), cells.text("limitSource")));
        }
        if (coldF != null) {
            limits.add(new Limit(Limit.Kind.COLD, UsUnits.degC(coldF), cells.text("limitSource")));
        }
        return new HouseLimits(limits);
    }

    /** In that hour's weather: the shorter of its warm and its cold end at every limit. */
    RideThrough stands(LivestockHouse house, HourOutside outside, double horizonMinutes) {
        double sunW = length()
                * width()
                * UsUnits.M2
                * UsUnits.uOfR(cells.number("ceilingR", 1))
                * SUN_TAKEN
                * outside.sunWPerM2()
                / ROOF_TO_AIR;
        RideThrough warm = at(house, outside.warmC(), outside.relativeHumidityPercent(), sunW, horizonMinutes);
        return outside.warmC() == outside.coldC() && sunW == 0
                ? warm
                : shorter(warm, at(house, outside.coldC(), outside.relativeHumidityPercent(), 0, horizonMinutes));
    }

    private RideThrough at(LivestockHouse house, double airC, double humidity, double sunW, double horizonMinutes) {
        return new HouseQuestion(
                        house,
                        new Outdoors(airC, humidity, sunW),
                        HouseAir.of(UsUnits.degC(cells.number("insideF", 70)), cells.number("insideRh", 65)),
                        limits(),
                        HouseDoubts.USUAL,
                        cells.yes("guessed"),
                        horizonMinutes)
                .asGiven();
    }

    static RideThrough shorter(RideThrough one, RideThrough other) {
        List<LimitTime> times = new ArrayList<>();
        for (int i = 0; i < one.times().size(); i++) {
            LimitTime a = one.times().get(i);
            LimitTime b = other.times().get(i);
            times.add(new LimitTime(
                    a.limit(),
                    first(a.shortEnd(), b.shortEnd()),
                    first(a.likely(), b.likely()),
                    first(a.longEnd(), b.longEnd())));
        }
        Set<Caution> cautions = EnumSet.copyOf(one.cautions());
        cautions.addAll(other.cautions());
        return new RideThrough(one.load(), one.horizonMinutes(), times, cautions);
    }

    private static OptionalDouble first(OptionalDouble a, OptionalDouble b) {
        return a.isEmpty() ? b : b.isEmpty() ? a : OptionalDouble.of(Math.min(a.getAsDouble(), b.getAsDouble()));
    }
}
