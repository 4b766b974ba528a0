package org.plumbrow.project.gate;

import java.util.List;

/** Rules that a room brings together, where all of its items are judged in one manner: one bean instead of one an item. */
public record GateRuleSet(List<GateRule> rules) {
    public GateRuleSet {
        rules = List.copyOf(rules);
    }
}
