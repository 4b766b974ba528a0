package org.plumbrow.cutover;

import java.util.ArrayList;
import java.util.List;

/** What a booked window still lacks, as keys of sentences, and how that looks. */
final class OutageReadiness {

    private OutageReadiness() {}

    /** Keys below {@code cutover.open.}, most urgent first; empty when the day is ready as far as the window knows. */
    static List<String> open(OutageFacts window) {
        List<String> open = new ArrayList<>();
        if (window.state() == OutageState.PROPOSED) {
            open.add("book");
            return open;
        }
        if (window.customerAnswer() != null && !window.customerAnswer().agrees()) {
            open.add("refused");
        }
        if (window.utilityTold() == null) {
            open.add("utility");
        }
        if (window.customerTold() == null) {
            open.add("customer");
        }
        if (window.utilityConfirmation() == null) {
            open.add("confirmation");
        }
        if (window.customerAnswer() == null) {
            open.add("answer");
        }
        return open;
    }

    /** Name of the shape before the words. */
    static String shape(OutageFacts window) {
        List<String> open = open(window);
        if (open.contains("refused")) {
            return "trouble";
        }
        if (open.isEmpty()) {
            return "done";
        }
        return window.state() == OutageState.PROPOSED ? "todo" : "wait";
    }
}
