package org.plumbrow.branch;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.plumbrow.web.Conflict;

/**
 * One field of a form as it stands written. A form lists all of its fields once, in order; from that list come the
 * lines of the change log and the page that lays theirs beside yours.
 *
 * @param label what people call the field
 * @param name what the form calls it
 * @param value as the form sends it
 * @param words as people read it
 */
public record Written(String label, String name, String value, String words) {

    public static Written of(String label, String name, @Nullable Object value) {
        String text = value == null ? "" : value.toString();
        return new Written(label, name, text, text);
    }

    /** @param words of a value that people would not read as it is sent */
    public static Written of(String label, String name, @Nullable Object value, String words) {
        return new Written(label, name, value == null ? "" : value.toString(), words);
    }

    /** A figure as people write it: 45, not 45.0. */
    public static BigDecimal figure(double figure) {
        BigDecimal exact = BigDecimal.valueOf(figure).stripTrailingZeros();
        return exact.scale() < 0 ? exact.setScale(0) : exact;
    }

    /** A field whose words are different now. */
    record Change(String field, String was, String now) {}

    static List<Change> changes(List<Written> before, List<Written> after) {
        List<Change> changes = new ArrayList<>();
        for (int i = 0; i < after.size(); i++) {
            String was = before.isEmpty() ? "" : before.get(i).words();
            if (!was.equals(after.get(i).words())) {
                changes.add(new Change(after.get(i).label(), was, after.get(i).words()));
            }
        }
        return changes;
    }

    /** Every field of either side, yours in their order first; what only one side has is empty on the other. */
    public static List<Conflict.Row> beside(List<Written> theirs, List<Written> yours) {
        Map<String, Written> stored = byName(theirs);
        Map<String, Written> typed = byName(yours);
        Set<String> names = new LinkedHashSet<>(typed.keySet());
        names.addAll(stored.keySet());
        return names.stream()
                .map(name -> row(name, Optional.ofNullable(stored.get(name)), Optional.ofNullable(typed.get(name))))
                .toList();
    }

    private static Map<String, Written> byName(List<Written> fields) {
        Map<String, Written> byName = new LinkedHashMap<>();
        fields.forEach(field -> byName.putIfAbsent(field.name, field));
        return byName;
    }

    private static Conflict.Row row(String name, Optional<Written> theirs, Optional<Written> yours) {
        return new Conflict.Row(
                yours.or(() -> theirs).map(Written::label).orElseThrow(),
                name,
                theirs.map(Written::value).orElse(""),
                yours.map(Written::value).orElse(""),
                theirs.map(Written::words).orElse("–"),
                yours.map(Written::words).orElse("–"));
    }
}
