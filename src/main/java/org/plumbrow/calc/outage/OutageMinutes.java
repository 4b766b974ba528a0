package org.plumbrow.calc.outage;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * Expected minutes without power: steps 4 (the utility opens) to 11 (the last load is back), added up, with what makes
 * this job longer.
 * <p>Source: common practice for the order of steps and their usual minutes; a tap ahead of the main comes to 60 to 90
 * minutes, a new main panel or meter base to 2 to 4 hours, a new transformer to half a day. Low and high are the ends
 * of what is usual. Limits: the crew's own finished cutovers know better; weather and a late utility are not in it.
 */
public record OutageMinutes(List<Part> parts) {

    private static final int QUARTER = 15;
    private static final int MOST = 720;
    private static final int STEP_CONNECT = 7;

    private static final List<Longer> LONGER = List.of(
            new Longer(OutageWork::mainPanel, new Part(STEP_CONNECT, "new main panel", 60, 105, 150)),
            new Longer(
                    work -> work.meterBase() && !work.mainPanel(),
                    new Part(STEP_CONNECT, "new meter base", 60, 105, 150)),
            // Beside a new panel the meter base shares the preparation and costs half.
            new Longer(
                    work -> work.meterBase() && work.mainPanel(),
                    new Part(STEP_CONNECT, "new meter base beside the panel", 30, 50, 75)),
            new Longer(OutageWork::newTransformer, new Part(10, "utility changes the transformer", 180, 195, 210)),
            new Longer(
                    OutageWork::currentTransformers, new Part(STEP_CONNECT, "current transformer cabinet", 10, 15, 30)),
            new Longer(OutageWork::generator, new Part(5, "generator path locked and checked", 0, 5, 10)),
            new Longer(OutageWork::threePhase, new Part(STEP_CONNECT, "three phases: more lugs, rotation", 5, 10, 15)),
            new Longer(OutageWork::oldGear, new Part(STEP_CONNECT, "old gear", 0, 15, 30)));

    public OutageMinutes {
        parts = List.copyOf(parts);
    }

    /**
     * @param step number of the procedure's step
     * @param low minutes when all goes well
     * @param typical minutes to expect
     * @param high minutes when it goes slowly, nothing breaking
     */
    public record Part(int step, String words, int low, int typical, int high) {}

    public static OutageMinutes of(OutageWork work) {
        List<Part> parts = new ArrayList<>(List.of(
                new Part(4, "utility opens the service", 4, 5, 6),
                new Part(5, "lock and tag every source", 4, 5, 6),
                new Part(6, "prove absence of voltage", 4, 5, 6),
                connections(work),
                new Part(8, "check, insulation, covers", 9, 10, 11),
                new Part(9, "locks off by their owners", 5, 5, 5),
                new Part(10, "utility closes, voltages read", 4, 5, 6),
                new Part(11, "loads back in order", 10, 10, 10)));
        addWhatMakesItLonger(work, parts);
        return new OutageMinutes(parts);
    }

    private static Part connections(OutageWork work) {
        return work.supplySideTap()
                ? new Part(STEP_CONNECT, "connections ahead of the main", 20, 30, 40)
                : new Part(STEP_CONNECT, "connections on a breaker or lugs", 10, 15, 25);
    }

    private static void addWhatMakesItLonger(OutageWork work, List<Part> parts) {
        LONGER.stream()
                .filter(longer -> longer.when.test(work))
                .map(Longer::part)
                .forEach(parts::add);
        int more = work.meters() - 1;
        if (more > 0) {
            parts.add(
                    new Part(10, more == 1 ? "second meter" : more + " more meters", 10 * more, 15 * more, 25 * more));
        }
    }

    /** What takes longer, and by how much. */
    private record Longer(Predicate<OutageWork> when, Part part) {}

    public int low() {
        return parts.stream().mapToInt(Part::low).sum();
    }

    public int typical() {
        return parts.stream().mapToInt(Part::typical).sum();
    }

    public int high() {
        return parts.stream().mapToInt(Part::high).sum();
    }

    /** Minutes to plan, and to tell the customer: the high end, up to the next quarter of an hour. */
    public int planned() {
        return upToTheQuarter(high());
    }

    /** The same with what finished outages of this kind have taught; never beyond what can be planned in one day. */
    public int planned(LearnedOutage learned) {
        return Math.min(MOST, upToTheQuarter(learned.minutes(high())));
    }

    private static int upToTheQuarter(int minutes) {
        return (minutes + QUARTER - 1) / QUARTER * QUARTER;
    }
}
