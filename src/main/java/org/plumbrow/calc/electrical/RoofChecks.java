package org.plumbrow.calc.electrical;

import java.util.List;

/** What is asked on or in a building only. Source: NEC 690.11, 690.12 (as commonly reprinted; limits by edition 2017 on). */
public final class RoofChecks {

    private static final double ARC_FAULT_FROM_V = 80;

    private RoofChecks() {}

    /** Within 30 s at most 30 V outside the array's boundary (1 ft) and 80 V inside, or a listed system. */
    public static Check rapidShutdown(boolean onBuilding, boolean provided, boolean initiatorShown) {
        String subject = "Rapid shutdown";
        String clause = "NEC 690.12";
        if (!onBuilding) {
            return Check.said(subject, clause, Verdict.PASS, "Rapid shutdown: not asked off buildings.", "");
        }
        if (!provided) {
            return Check.said(
                    subject,
                    clause,
                    Verdict.FAIL,
                    "Rapid shutdown: nothing brings the roof's conductors to 30 V (80 V within the array) in 30 s.",
                    "Choose inverters or module electronics that do, or a listed hazard-control system.");
        }
        return initiatorShown
                ? Check.said(subject, clause, Verdict.PASS, "Rapid shutdown: provided, with its initiator outside.", "")
                : Check.said(
                        subject,
                        clause,
                        Verdict.FAIL,
                        "Rapid shutdown: the place of its initiator is not shown.",
                        "Show the initiator: outside, at hand, labelled.");
    }

    public static Check arcFault(boolean onBuilding, double vocColdV, boolean provided) {
        String clause = "NEC 690.11";
        if (!onBuilding || vocColdV < ARC_FAULT_FROM_V) {
            return Check.said(
                    "Arc-fault protection", clause, Verdict.PASS, "Arc-fault protection: not asked here.", "");
        }
        List<Check.Input> inputs = List.of(Check.Input.of("string in the cold", vocColdV, "V"));
        return new Check(
                "Arc-fault protection",
                clause,
                inputs,
                vocColdV,
                ARC_FAULT_FROM_V,
                "V",
                Double.NaN,
                provided ? Verdict.PASS : Verdict.FAIL,
                provided
                        ? "Arc-fault protection: the inverter has it."
                        : "Arc-fault protection: asked from 80 V on a building, and the inverter has none.",
                provided ? "" : "Choose an inverter that detects arcs in its DC circuits.");
    }
}
