package org.plumbrow.cutover.daylog;

import java.util.List;

/**
 * The usual order of a cutover, as crews know it: fourteen steps and five hold points, with who acts and the usual minutes
 * of the steps with power. Source: common practice, and the order of electrically protected work in NFPA 70E, 120.5.
 */
final class ProcedureTable {

    /**
     * One line.
     *
     * @param minutes usual minutes; 0 for a hold point, and where the planned outage says them
     * @param withGenerator what to do where there is a generator; empty when it makes no difference
     */
    record Line(String code, int minutes, String words, String who, String what, String withGenerator) {
        Line(String code, int minutes, String words, String who, String what) {
            this(code, minutes, words, who, what, "");
        }

        boolean isHold() {
            return code.startsWith("H");
        }
    }

    static final List<Line> LINES = List.of(
            new Line(
                    "1",
                    10,
                    "Brief everybody",
                    "Person in charge",
                    "Go through the steps, the signals, the stop word and the latest reversal time."),
            new Line(
                    "2",
                    10,
                    "Readings before",
                    "Electrician",
                    "Read every pair and the load on the main. Photos of the old connections; note clocks and motors that run."),
            new Line(
                    "3",
                    15,
                    "Loads ready, big motors off",
                    "Customer",
                    "Big motors off one after the other, computers down. Curtains and alarms as agreed.",
                    "Big motors off one after the other, computers down. The generator carries its load through the"
                            + " transfer switch; watch it for 5 to 10 minutes."),
            new Line(
                    "H1",
                    0,
                    "Ready to lose power",
                    "Person in charge and customer",
                    "Everybody is ready and knows the latest reversal time. The outage clock starts with step 4."),
            new Line(
                    "4",
                    0,
                    "Utility opens the service",
                    "Utility",
                    "Array disconnects, inverter AC and main are open. Tap when the power goes off."),
            new Line(
                    "5",
                    0,
                    "Lock and tag every source",
                    "Electrician",
                    "Service, array, batteries. Each worker hangs an own lock.",
                    "Service, generator path, array, batteries. Each worker hangs an own lock."),
            new Line(
                    "6",
                    0,
                    "Prove absence of voltage",
                    "Electrician and second person",
                    "Tester on a source known to be live, then every pair, then the live source again."),
            new Line(
                    "H2",
                    0,
                    "Locked, tagged, tested: live, dead, live",
                    "Electrician",
                    "What is locked and proved is written down: who, when, which readings."),
            new Line(
                    "7",
                    0,
                    "Make connections",
                    "Electrician",
                    "Torque by the maker's sheet with a calibrated tool; mark each lug, take a photo."),
            new Line(
                    "8",
                    0,
                    "Check and insulation",
                    "Electrician",
                    "Phase marks, nothing left inside, covers, one neutral bond, insulation of the new conductors."),
            new Line(
                    "H3",
                    0,
                    "Checked by a second person",
                    "Second qualified person",
                    "Another person has looked at torque and phase marks. The inspector too, where the office asks for it."),
            new Line(
                    "9",
                    0,
                    "Locks off by their owners",
                    "Electrician",
                    "Grounds, tools and people away; locks off in reverse order. Main and array disconnects stay open."),
            new Line(
                    "10",
                    0,
                    "Utility closes",
                    "Utility and electrician",
                    "Read every pair on the line side as in step 2. Warn everybody: large motors may start by themselves."),
            new Line(
                    "H4",
                    0,
                    "Voltage and rotation right",
                    "Electrician",
                    "Within the limits and as before. If not: open again and reverse."),
            new Line(
                    "11",
                    0,
                    "Loads back in order",
                    "Customer and electrician",
                    "Alarms and controls, ventilation from small to large, water, cooling, lights, feed, the rest."),
            new Line("12", 5, "Generator back", "Customer", "Transfer back, let it cool down, leave it in automatic."),
            new Line(
                    "H5",
                    0,
                    "Critical loads run",
                    "Customer",
                    "What must run, runs. The signature stops the outage clock."),
            new Line(
                    "13",
                    20,
                    "Array",
                    "Electrician",
                    "Only with the utility's permission to test or run; else it stays locked open."),
            new Line(
                    "14",
                    15,
                    "Seals, labels, photos after",
                    "Crew",
                    "Seals, labels, readings after, clean up, show the customer the shut-off."));

    private ProcedureTable() {}
}
