package org.plumbrow.project.gate;

import java.util.function.Function;

/** A rule that is one function. */
record Judged(String item, Function<GateLook, Finding> judge) implements GateRule {
    @Override
    public Finding check(GateLook look) {
        return judge.apply(look);
    }
}
