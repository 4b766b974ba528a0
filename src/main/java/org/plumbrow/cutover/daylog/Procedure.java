package org.plumbrow.cutover.daylog;

import java.util.ArrayList;
import java.util.List;
import org.plumbrow.calc.outage.OutageMinutes;

/**
 * The usual order of a cutover, fitted to the job: a job without a generator has no step 12. The minutes of the steps
 * without power are those that the outage was planned with.
 */
final class Procedure {

    static final String POWER_OFF = "4";
    static final String CONNECT = "7";
    static final String UTILITY_CLOSES = "10";
    static final String LOADS_BACK = "11";
    static final String ARRAY = "13";
    static final String LAST = "14";

    private final OutageMinutes minutes;
    private final List<LogStep> steps = new ArrayList<>();

    private Procedure(OutageMinutes minutes) {
        this.minutes = minutes;
    }

    static List<LogStep> of(boolean generator, OutageMinutes minutes) {
        Procedure procedure = new Procedure(minutes);
        procedure.before(generator);
        procedure.powerOff();
        procedure.powerOn();
        procedure.after(generator);
        return List.copyOf(procedure.steps);
    }

    private void before(boolean generator) {
        step(
                "1",
                10,
                "Brief everybody",
                "Person in charge",
                "Go through the steps, the signals, the stop word and the latest reversal time.");
        step(
                "2",
                10,
                "Readings before",
                "Electrician",
                "Read every pair and the load on the main. Photos of the old connections; note clocks and motors that run.");
        step(
                "3",
                15,
                "Loads ready, big motors off",
                "Customer",
                generator
                        ? "Big motors off one after the other, computers down. The generator carries its load through the"
                                + " transfer switch; watch it for 5 to 10 minutes."
                        : "Big motors off one after the other, computers down. Curtains and alarms as agreed.");
        hold(
                "H1",
                "Ready to lose power",
                "Person in charge and customer",
                "Everybody is ready and knows the latest reversal time. The outage clock starts with step 4.");
    }

    private void powerOff() {
        step(
                POWER_OFF,
                "Utility opens the service",
                "Utility",
                "Array disconnects, inverter AC and main are open. Tap when the power goes off.");
        step(
                "5",
                "Lock and tag every source",
                "Electrician",
                "Service, generator path, array, batteries. Each worker hangs an own lock.");
        step(
                "6",
                "Prove absence of voltage",
                "Electrician and second person",
                "Tester on a source known to be live, then every pair, then the live source again.");
        hold(
                "H2",
                "Locked, tagged, proved dead",
                "Electrician",
                "What is locked and proved is written down: who, when, which readings.");
        step(
                CONNECT,
                "Make connections",
                "Electrician",
                "Torque by the maker's sheet with a calibrated tool; mark each lug, take a photo.");
        step(
                "8",
                "Check and insulation",
                "Electrician",
                "Phase marks, nothing left inside, covers, one neutral bond, insulation of the new conductors.");
        hold(
                "H3",
                "Checked by a second person",
                "Second qualified person",
                "Another person has looked at torque and phase marks. The inspector too, where the office asks for it.");
    }

    private void powerOn() {
        step(
                "9",
                "Locks off by their owners",
                "Electrician",
                "Grounds, tools and people away; locks off in reverse order. Main and array disconnects stay open.");
        step(
                UTILITY_CLOSES,
                "Utility closes",
                "Utility and electrician",
                "Read every pair on the line side as in step 2. Warn everybody: large motors may start by themselves.");
        hold(
                "H4",
                "Voltage and rotation right",
                "Electrician",
                "Within the limits and as before. If not: open again and reverse.");
        step(
                LOADS_BACK,
                "Loads back in order",
                "Customer and electrician",
                "Alarms and controls, ventilation from small to large, water, cooling, lights, feed, the rest.");
    }

    private void after(boolean generator) {
        add(
                "12",
                false,
                5,
                "Generator back",
                "Customer",
                "Transfer back, let it cool down, leave it in automatic.",
                generator ? null : "no generator here");
        hold("H5", "Critical loads run", "Customer", "What must run, runs. The signature stops the outage clock.");
        step(
                ARRAY,
                20,
                "Array",
                "Electrician",
                "Only with the utility's permission to test or run; else it stays locked open.");
        step(
                LAST,
                15,
                "Seals, labels, photos after",
                "Crew",
                "Seals, labels, readings after, clean up, show the customer the shut-off.");
    }

    private void step(String code, String words, String who, String what) {
        step(code, typical(code), words, who, what);
    }

    private int typical(String code) {
        return minutes.parts().stream()
                .filter(part -> Integer.toString(part.step()).equals(code))
                .mapToInt(OutageMinutes.Part::typical)
                .sum();
    }

    private void step(String code, int minutes, String words, String who, String what) {
        add(code, false, minutes, words, who, what, null);
    }

    private void hold(String code, String words, String who, String what) {
        add(code, true, 0, words, who, what, null);
    }

    private void add(
            String code,
            boolean hold,
            int minutes,
            String words,
            String who,
            String what,
            @org.jspecify.annotations.Nullable String whyNot) {
        steps.add(new LogStep(code, steps.size() + 1, hold, words, what, who, minutes, whyNot));
    }
}
