package org.plumbrow.project.gate;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.SmartInitializingSingleton;
import org.springframework.stereotype.Component;

/** Every rule of the house by the item that it judges; gathered when all rooms stand, as rules may know the gates. */
@Component
class GateRules implements SmartInitializingSingleton {

    private final ObjectProvider<GateRule> beans;
    private final ObjectProvider<GateRuleSet> sets;
    private Map<String, GateRule> byItem = Map.of();

    GateRules(ObjectProvider<GateRule> beans, ObjectProvider<GateRuleSet> sets) {
        this.beans = beans;
        this.sets = sets;
    }

    @Override
    public void afterSingletonsInstantiated() {
        byItem = gathered(
                Stream.concat(beans.orderedStream(), sets.orderedStream().flatMap(set -> set.rules().stream()))
                        .toList());
    }

    /** @throws IllegalStateException for a rule of an item that does not exist, and for a second one */
    static Map<String, GateRule> gathered(Iterable<GateRule> rules) {
        Set<String> known = new HashSet<>();
        ShippedItems.all().forEach(item -> known.add(item.code()));
        Map<String, GateRule> byItem = new HashMap<>();
        for (GateRule rule : rules) {
            if (!known.contains(rule.item())) {
                throw new IllegalStateException("no item " + rule.item() + " for " + rule);
            }
            if (byItem.put(rule.item(), rule) != null) {
                throw new IllegalStateException("two rules judge " + rule.item());
            }
        }
        return Map.copyOf(byItem);
    }

    /** @return null for an item that no rule judges */
    @Nullable
    Finding check(AskedItem item, GateLook look) {
        GateRule rule = byItem.get(item.code());
        Finding finding = rule == null ? null : rule.check(look);
        boolean byHand = finding instanceof Finding.CannotTell && !item.asks(AnswerKind.COMPUTED);
        return byHand ? null : finding;
    }

    /** Where people see what the rule of an item looks at. */
    Optional<SeenAt> seenAt(String item, UUID projectId) {
        return Optional.ofNullable(byItem.get(item)).flatMap(rule -> rule.seenAt(projectId));
    }
}
