package org.plumbrow.design.check;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.plumbrow.calc.electrical.Check;
import org.plumbrow.design.part.Part;

/**
 * Which item of the gate to designed a check of a design belongs to: by words of its subject, else by the part where its
 * cause is changed, so that no check that fails leaves the gate open. Pure.
 */
public final class ItemsOfChecks {

    private static final Map<String, List<String>> WORDS = words();
    private static final Map<Part, String> PARTS = parts();

    private ItemsOfChecks() {}

    /** Codes of all items that checks are counted to. */
    public static Set<String> items() {
        return WORDS.keySet();
    }

    /** Checks of a design that belong to an item, in their order. */
    public static List<Check> of(String item, List<DesignChecks.Group> groups) {
        List<Check> own = new ArrayList<>();
        for (DesignChecks.Group group : groups) {
            group.checks().stream()
                    .filter(check -> item(group.part(), check).equals(item))
                    .forEach(own::add);
        }
        return own;
    }

    static String item(Part part, Check check) {
        Optional<String> byWords = WORDS.entrySet().stream()
                .filter(item -> item.getValue().stream().anyMatch(check.subject()::contains))
                .map(Map.Entry::getKey)
                .findFirst();
        return byWords.orElseGet(() -> {
            String item = PARTS.get(part);
            if (item == null) {
                throw new IllegalStateException("no item of a gate for checks of " + part);
            }
            return item;
        });
    }

    private static Map<String, List<String>> words() {
        Map<String, List<String>> words = new LinkedHashMap<>();
        words.put("designed.1", List.of("voltage in the cold"));
        words.put("designed.2", List.of("voltage in the heat"));
        words.put("designed.3", List.of("short-circuit current into", "fuses of the strings"));
        words.put("designed.4", List.of(": terminals", ": in its heat", "small conductor", "Conductors"));
        words.put("designed.5", List.of(": voltage drop", ": voltage rise", "Voltage at the inverter"));
        words.put("designed.6", List.of(": its device", "equipment ground", "conduit fill", "Device of the array"));
        words.put("designed.7", List.of("Busbar", "Tap ahead"));
        words.put("designed.8", List.of("Interrupting rating"));
        words.put("designed.9", List.of("Disconnect to meter"));
        words.put("designed.10", List.of("Rapid shutdown", "Arc-fault"));
        words.put("designed.11", List.of("Wind", "Ground snow", "Frost depth", "Structural letter", "Embedment"));
        words.put("designed.12", List.of(": cover"));
        words.put("designed.13", List.of("free strip"));
        words.put("designed.20", List.of("Generator and array"));
        return words;
    }

    private static Map<Part, String> parts() {
        Map<Part, String> parts = new EnumMap<>(Part.class);
        parts.put(Part.STRINGS, "designed.3");
        parts.put(Part.INVERTERS, "designed.3");
        parts.put(Part.COMBINERS, "designed.6");
        parts.put(Part.RUNS, "designed.4");
        parts.put(Part.DEVICES, "designed.6");
        parts.put(Part.CONNECTION, "designed.7");
        parts.put(Part.SITE, "designed.11");
        parts.put(Part.RACKING, "designed.11");
        parts.put(Part.ARRAYS, "designed.13");
        parts.put(Part.OBSTRUCTIONS, "designed.13");
        parts.put(Part.PLAN, "designed.13");
        parts.put(Part.LABELS, "designed.10");
        return parts;
    }
}
