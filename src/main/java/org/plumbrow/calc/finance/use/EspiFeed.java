package org.plumbrow.calc.finance.use;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/** A Green Button feed as it stands: entries with their links and plain fields, blocks with their readings. */
final class EspiFeed {

    private final List<Entry> entries = new ArrayList<>();

    /**
     * One resource.
     *
     * @param kind name of its element: "UsagePoint", "ReadingType", …
     * @param self its own address; may be empty
     * @param up address of what it belongs to
     * @param related addresses of what goes with it
     * @param fields text of its elements by path: "ServiceCategory/kind"
     * @param readings of a block
     */
    record Entry(
            String kind,
            String self,
            String up,
            List<String> related,
            TreeMap<String, String> fields,
            List<Reading> readings) {

        Optional<String> field(String path) {
            return Optional.ofNullable(fields.get(path));
        }

        int number(String path, int unsaid) {
            String text = fields.getOrDefault(path, String.valueOf(unsaid));
            try {
                return Integer.parseInt(text);
            } catch (NumberFormatException e) {
                throw new UseRefused("%s reads \"%s\".".formatted(path, text), "Ask the utility for a whole file.");
            }
        }
    }

    /** @param quality 0 when the file says none */
    record Reading(long startS, long durationS, long value, int quality) {}

    void add(Entry entry) {
        entries.add(entry);
    }

    List<Entry> of(String kind) {
        return entries.stream().filter(entry -> entry.kind().equals(kind)).toList();
    }

    boolean isEmpty() {
        return entries.isEmpty();
    }

    /** Addresses may be absolute or relative: one that ends with the other is the same. */
    static boolean isSame(String one, String other) {
        String a = plain(one);
        String b = plain(other);
        return !a.isEmpty() && !b.isEmpty() && (a.equals(b) || a.endsWith("/" + b) || b.endsWith("/" + a));
    }

    static String plain(String address) {
        return address.trim()
                .replaceFirst("^[a-zA-Z]+://[^/]*", "")
                .replaceAll("/+", "/")
                .replaceAll("^/|/$", "");
    }
}
