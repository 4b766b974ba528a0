package org.plumbrow.design.draft;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.plumbrow.design.part.Cells;
import org.plumbrow.design.part.Col;
import org.plumbrow.design.part.Part;

/** What is different between two states of a part, in words. */
final class PartChanges {

    private PartChanges() {}

    /** "R3: size 2/0, was 1/0", "S4 added", "D2 taken out". */
    static List<String> between(Part part, List<Cells> before, List<Cells> after) {
        Map<String, Cells> was = named(before);
        Map<String, Cells> now = named(after);
        List<String> changes = new ArrayList<>();
        now.forEach((name, row) -> {
            Cells old = was.get(name);
            if (old == null) {
                changes.add(part.isRepeated() ? name + " added" : "written");
            } else {
                changes.addAll(ofRow(part, name, old, row));
            }
        });
        was.keySet().stream().filter(name -> !now.containsKey(name)).forEach(name -> changes.add(name + " taken out"));
        return changes.isEmpty() ? List.of("order of the rows") : changes;
    }

    private static List<String> ofRow(Part part, String name, Cells old, Cells row) {
        List<String> changes = new ArrayList<>();
        for (Col col : part.cols()) {
            String before = old.text(col.name());
            String after = row.text(col.name());
            if (!before.equals(after)) {
                String of = part.isRepeated() ? name + ": " : "";
                changes.add("%s%s %s, was %s"
                        .formatted(of, col.label().toLowerCase(java.util.Locale.ROOT), or(after), or(before)));
            }
        }
        return changes;
    }

    private static String or(String text) {
        return text.isEmpty() ? "empty" : text;
    }

    private static Map<String, Cells> named(List<Cells> rows) {
        Map<String, Cells> named = new LinkedHashMap<>();
        for (int at = 0; at < rows.size(); at++) {
            String mark = rows.get(at).text("mark");
            named.put(mark.isEmpty() ? "row " + (at + 1) : mark, rows.get(at));
        }
        return named;
    }
}
