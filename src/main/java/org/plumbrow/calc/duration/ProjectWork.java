package org.plumbrow.calc.duration;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What the activities of a project are made from.
 *
 * @param home a home rather than a farm or a business: smaller crews, one short visit
 * @param arrays at least one; their mounting may differ
 * @param known what is already counted for the whole job; the rest is estimated by rule
 */
public record ProjectWork(
        boolean home,
        List<ArrayWork> arrays,
        InverterKind inverterKind,
        Map<QuantityKind, Double> known,
        WaitChoices waits) {

    public ProjectWork {
        if (arrays.isEmpty()) {
            throw new IllegalArgumentException("a project needs at least one array");
        }
        arrays = List.copyOf(arrays);
        known = Map.copyOf(known);
        known.forEach((kind, amount) -> kind.range().check(kind.words(), amount));
    }

    /** With nothing counted yet, string inverters and the usual waits. */
    public static ProjectWork of(boolean home, ArrayWork... arrays) {
        List<ArrayWork> all = List.of(arrays);
        double kwDc = all.stream().mapToDouble(ArrayWork::kwDc).sum();
        boolean onGround = all.stream().anyMatch(array -> array.mounting() == Mounting.GROUND);
        return new ProjectWork(
                home, all, InverterKind.STRING_INVERTERS, Map.of(), WaitChoices.usual(home, kwDc, onGround));
    }

    public ProjectWork with(QuantityKind kind, double amount) {
        Map<QuantityKind, Double> more = new EnumMap<>(QuantityKind.class);
        more.putAll(known);
        more.put(kind, amount);
        return new ProjectWork(home, arrays, inverterKind, more, waits);
    }

    public ProjectWork with(InverterKind kind) {
        return new ProjectWork(home, arrays, kind, known, waits);
    }

    public ProjectWork with(WaitChoices choices) {
        return new ProjectWork(home, arrays, inverterKind, known, choices);
    }

    double kwDc() {
        return arrays.stream().mapToDouble(ArrayWork::kwDc).sum();
    }

    boolean onGround() {
        return arrays.stream().anyMatch(array -> array.mounting() == Mounting.GROUND);
    }
}
