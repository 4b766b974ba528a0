package org.plumbrow.calc.planning.exact;

import java.util.ArrayList;
import java.util.List;
import org.plumbrow.calc.planning.search.CrewDays;
import org.plumbrow.calc.planning.search.Task;

/**
 * A run of starts from which a crew takes the same number of slots for a task.
 *
 * @param first start
 * @param last start
 * @param length in slots, days of absence in between included
 */
record Span(int first, int last, int length) {

    /** All starts between two slots; days off of the crew are left out. Neighbours are merged down to a number of spans. */
    static List<Span> of(Task task, CrewDays crew, int halfDays, int from, int to, int most) {
        List<Span> spans = new ArrayList<>();
        for (int slot = from; slot <= to; slot++) {
            int index = crew.indexAtOrAfter[slot];
            int length = crew.isPresent(slot) ? crew.length(index, halfDays, task.inTheWeather) : -1;
            if (length > 0) {
                add(spans, slot, crew.present[index + length - 1] - slot + 1);
            }
        }
        while (spans.size() > most) {
            mergeShortest(spans);
        }
        return spans;
    }

    private static void add(List<Span> spans, int slot, int length) {
        int at = spans.size() - 1;
        boolean same = at >= 0 && spans.get(at).length == length && spans.get(at).last == slot - 1;
        if (same) {
            spans.set(at, new Span(spans.get(at).first, slot, length));
        } else {
            spans.add(new Span(slot, slot, length));
        }
    }

    /** The shorter length of two neighbours counts for both: never too much. */
    private static void mergeShortest(List<Span> spans) {
        int best = 0;
        int cost = Integer.MAX_VALUE;
        for (int at = 0; at + 1 < spans.size(); at++) {
            Span one = spans.get(at);
            Span two = spans.get(at + 1);
            int widths = Math.min(one.last - one.first, two.last - two.first) + 1;
            int loss = Math.abs(one.length - two.length) * widths + two.first - one.last - 1;
            if (loss < cost) {
                cost = loss;
                best = at;
            }
        }
        Span two = spans.remove(best + 1);
        Span one = spans.get(best);
        spans.set(best, new Span(one.first, two.last, Math.min(one.length, two.length)));
    }
}
