package org.plumbrow.calc.outage.ranking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Stretches of time that must stay free, in order and apart from each other, each with its reason. */
final class Spans {

    /** From one minute, included, to another, not included; of no length: one moment. */
    record Span(int from, int to, String reason) {}

    private final List<Span> spans;

    private Spans(List<Span> spans) {
        this.spans = spans;
    }

    /** Those that overlap become one, with the reason of the first. */
    static Spans of(List<Span> any) {
        List<Span> joined = new ArrayList<>();
        for (Span span : any.stream()
                .sorted(Comparator.comparingInt(Span::from).thenComparingInt(Span::to))
                .toList()) {
            int last = joined.size() - 1;
            if (last >= 0 && span.from < joined.get(last).to) {
                Span earlier = joined.get(last);
                joined.set(last, new Span(earlier.from, Math.max(earlier.to, span.to), earlier.reason));
            } else {
                joined.add(span);
            }
        }
        return new Spans(joined);
    }

    boolean isEmpty() {
        return spans.isEmpty();
    }

    /** Place of the first that ends after this minute; their number when none does. */
    private int firstEndingAfter(int minute) {
        int low = 0;
        int high = spans.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (spans.get(middle).to > minute) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    /** Minutes of [from, to) that are taken. */
    int overlap(int from, int to) {
        int taken = 0;
        for (int i = firstEndingAfter(from); i < spans.size() && spans.get(i).from < to; i++) {
            taken += Math.min(to, spans.get(i).to) - Math.max(from, spans.get(i).from);
        }
        return taken;
    }

    /** Why [from, to) is not free; empty when it is. */
    String reason(int from, int to) {
        int first = firstEndingAfter(from);
        return first < spans.size() && spans.get(first).from < to ? spans.get(first).reason : "";
    }

    /** Start of the first that begins at or after this minute; never when none does. */
    int nextFrom(int minute) {
        return next(minute) < spans.size() ? spans.get(next(minute)).from : SiteClock.NEVER;
    }

    String nextReason(int minute) {
        return next(minute) < spans.size() ? spans.get(next(minute)).reason : "";
    }

    private int next(int minute) {
        int low = 0;
        int high = spans.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (spans.get(middle).from >= minute) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    /** End of the last one that began before or at this minute; {@code before} when none did. */
    int lastTo(int minute, int before) {
        int last = next(minute + 1) - 1;
        return last < 0 ? before : spans.get(last).to;
    }
}
