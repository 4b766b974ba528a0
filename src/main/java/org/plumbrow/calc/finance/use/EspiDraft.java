package org.plumbrow.calc.finance.use;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/** One entry while it is being read. */
final class EspiDraft {

    private static final String READING = "IntervalReading";

    private String kind = "";
    private String self = "";
    private String up = "";
    private final List<String> related = new ArrayList<>();
    private final TreeMap<String, String> fields = new TreeMap<>();
    private final List<EspiFeed.Reading> readings = new ArrayList<>();
    private final Deque<String> path = new ArrayDeque<>();
    private TreeMap<String, String> reading = new TreeMap<>();

    void link(String rel, String href) {
        switch (rel) {
            case "self" -> self = href;
            case "up" -> up = href;
            case "related" -> related.add(href);
            default -> {
                // other links join nothing that is read
            }
        }
    }

    void begin(String element) {
        if (kind.isEmpty()) {
            kind = element;
            return;
        }
        path.addLast(element);
        if (element.equals(READING)) {
            reading = new TreeMap<>();
        }
    }

    /** @return whether a reading was completed */
    boolean end(String element, String text) {
        if (path.isEmpty()) {
            return false;
        }
        boolean inReading = READING.equals(path.peekFirst());
        if (inReading && element.equals(READING)) {
            readings.add(new EspiFeed.Reading(
                    number("timePeriod/start"),
                    number("timePeriod/duration"),
                    number("value"),
                    reading.containsKey("ReadingQuality/quality") ? (int) number("ReadingQuality/quality") : 0));
        } else if (inReading) {
            reading.put(String.join("/", path).substring(READING.length() + 1), text);
        } else {
            fields.put(String.join("/", path), text);
        }
        path.removeLast();
        return inReading && element.equals(READING);
    }

    private long number(String field) {
        String text = reading.getOrDefault(field, "");
        try {
            return Long.parseLong(text);
        } catch (NumberFormatException e) {
            throw new UseRefused(
                    "Reading %,d: %s reads \"%s\", a whole number is expected."
                            .formatted(readings.size() + 1, field, text),
                    "Ask the utility for a whole Green Button file.");
        }
    }

    Optional<EspiFeed.Entry> entry() {
        return kind.isEmpty()
                ? Optional.empty()
                : Optional.of(new EspiFeed.Entry(kind, self, up, related, fields, readings));
    }
}
