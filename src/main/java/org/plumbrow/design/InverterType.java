package org.plumbrow.design;

/**
 * An inverter as its data sheet tells it.
 *
 * @param phases 1 or 3
 * @param acV line to line
 * @param acA continuous output current
 * @param maxDcV the highest voltage that its inputs bear
 * @param mpptFromV an input works from here to {@code mpptToV}
 * @param fullFromV and gives its full power from here to {@code fullToV}
 * @param inputs MPPT inputs (each seeks its own best voltage)
 * @param stringsPerInput how many strings can be landed on one input
 * @param inputMaxA operating current of one input; more is clipped
 * @param inputShortCircuitA the most that may be fed into one input in a short circuit
 * @param efficiencyPercent weighted
 * @param rapidShutdown whether it has what NEC 690.12 asks on a building, or starts it
 * @param arcFault whether it detects arcs in the DC circuits
 */
public record InverterType(
        String name,
        double powerKwAc,
        int phases,
        double acV,
        double acA,
        double maxDcV,
        double mpptFromV,
        double mpptToV,
        double fullFromV,
        double fullToV,
        int inputs,
        int stringsPerInput,
        double inputMaxA,
        double inputShortCircuitA,
        double efficiencyPercent,
        boolean rapidShutdown,
        boolean arcFault) {}
