package org.plumbrow.calc.energy;

import java.util.ArrayList;
import java.util.List;

/** The way from the light on the modules to the meter, step by step, so that each loss can be seen and asked about. */
public final class LossLadder {

    private final EnergyYield yield;
    private final List<Step> steps = new ArrayList<>();

    private LossLadder(EnergyYield yield) {
        this.yield = yield;
        steps.add(new Step(Stage.OPEN_LIGHT.words(), 0, sum(Stage.OPEN_LIGHT)));
        to(Stage.LIGHT.words(), sum(Stage.LIGHT));
        to(Stage.ENTERED.words(), sum(Stage.ENTERED));
        to(Stage.WARM_DC.words(), sum(Stage.WARM_DC));
        yield.losses().lines().forEach(line -> to(line.name(), last() * line.kept()));
        if (last() - sum(Stage.DC) > 1e-9 * last()) {
            to("Snow", sum(Stage.DC));
        }
        to(
                "Inverter",
                yield.groups().stream().mapToDouble(GroupYield::unclippedKwh).sum());
        to("Clipping at the inverter's limit", yield.kwhOfYear());
    }

    /**
     * @param name what takes it
     * @param lostPercent of what arrived at this step; negative when cold cells give more than their rating
     * @param kwh what is left after it, a year
     */
    public record Step(String name, double lostPercent, double kwh) {}

    /** First the light as it would give energy at the modules' rating, last the AC energy of the year. */
    public static List<Step> of(EnergyYield yield) {
        return List.copyOf(new LossLadder(yield).steps);
    }

    private double sum(Stage stage) {
        return yield.groups().stream()
                .flatMap(group -> group.sections().stream())
                .mapToDouble(section -> section.kwh(stage))
                .sum();
    }

    private double last() {
        return steps.get(steps.size() - 1).kwh();
    }

    private void to(String name, double kwh) {
        double lost = last() > 0 ? 100 * (1 - kwh / last()) : 0;
        steps.add(new Step(name, lost, kwh));
    }
}
