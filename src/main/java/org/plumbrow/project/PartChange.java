package org.plumbrow.project;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.plumbrow.branch.Written;

/**
 * What changed between two states of a part: the sentence and the facts of its journal line. Values of the fields
 * named as withheld stand in neither; a field named as unspoken stands in the facts only.
 */
record PartChange(Map<String, String> facts, String sentence) {

    /** Where a house stands is the customer's; kept beside the journal. */
    static final Set<String> WITHHELD = Set.of("street", "town", "state", "zip", "coordinates");

    /** Read by people who may not see money. */
    static final Set<String> UNSPOKEN = Set.of("priceUsd");

    boolean isNothing() {
        return facts.isEmpty() && sentence.isEmpty();
    }

    /** @param what changed, as the sentence begins: "Site" */
    static PartChange between(String what, List<Written> before, List<Written> after) {
        Map<String, Written> was = byName(before);
        Map<String, Written> is = byName(after);
        Set<String> names = new LinkedHashSet<>(was.keySet());
        names.addAll(is.keySet());
        Map<String, String> facts = new LinkedHashMap<>();
        List<String> said = new ArrayList<>();
        for (String name : names) {
            Written from = was.containsKey(name) ? was.get(name) : blankLike(is.get(name));
            Written to = is.containsKey(name) ? is.get(name) : blankLike(was.get(name));
            if (!from.value().equals(to.value())) {
                said.add(said(name, from, to));
                if (!WITHHELD.contains(name)) {
                    facts.put(name + ".from", from.value());
                    facts.put(name + ".to", to.value());
                }
            }
        }
        return new PartChange(facts, said.isEmpty() ? "" : what + " changed: " + String.join("; ", said) + ".");
    }

    private static String said(String name, Written from, Written to) {
        if (WITHHELD.contains(name) || UNSPOKEN.contains(name)) {
            return to.label();
        }
        return to.label() + " " + orNothing(from.words()) + " → " + orNothing(to.words());
    }

    private static String orNothing(String words) {
        return words.isEmpty() ? "nothing" : words;
    }

    private static Written blankLike(Written other) {
        return Written.of(other.label(), other.name(), null);
    }

    private static Map<String, Written> byName(List<Written> fields) {
        return fields.stream()
                .collect(Collectors.toMap(Written::name, Function.identity(), (a, b) -> a, LinkedHashMap::new));
    }

    JournalEvent event(UUID projectId, String kind) {
        return JournalEvent.of(projectId, kind, sentence, facts);
    }
}
