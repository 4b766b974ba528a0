package org.plumbrow.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** What stands written in one part: values by the name of their field, empty ones left out. */
record PartReadings(SortedMap<String, String> values) {

    /** Behind the name of a field: why a reading outside its limits stays. */
    static final String WHY = ".why";

    static final PartReadings EMPTY = new PartReadings(Map.of());

    PartReadings(Map<String, String> values) {
        this(new TreeMap<>(values));
    }

    PartReadings {
        values.values().removeIf(String::isBlank);
    }

    String written(String name) {
        return values.getOrDefault(name, "");
    }

    @Nullable
    String text(String name) {
        return values.get(name);
    }

    @Nullable
    Double number(String name) {
        String written = values.get(name);
        return written == null ? null : Double.valueOf(written);
    }

    @Nullable
    Integer whole(String name) {
        Double number = number(name);
        return number == null ? null : (int) Math.rint(number);
    }

    @Nullable
    Boolean flag(String name) {
        String written = values.get(name);
        return written == null ? null : written.equals("YES");
    }

    boolean has(String name) {
        return values.containsKey(name);
    }

    public boolean isEmpty() {
        return values.isEmpty();
    }

    /** Numbers of the rows of a group in which anything is written, ascending. */
    List<Integer> rows(FieldGroup group) {
        List<Integer> rows = new ArrayList<>();
        for (int row = 1; row <= group.most(); row++) {
            if (group.row(row).stream().anyMatch(field -> has(field.name()))) {
                rows.add(row);
            }
        }
        return rows;
    }

    String why(String name) {
        return written(name + WHY);
    }
}
