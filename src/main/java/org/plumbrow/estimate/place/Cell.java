package org.plumbrow.estimate.place;

import java.util.ArrayList;
import java.util.List;

/**
 * What is said of one place under one heading.
 *
 * @param source the rule of thumb behind it; empty for what was read or computed
 */
record Cell(List<String> said, String source, List<Lack> lacks) {

    Cell {
        said = List.copyOf(said);
        lacks = List.copyOf(lacks);
    }

    static Making making() {
        return new Making();
    }

    static Cell of(String sentence) {
        return new Cell(List.of(sentence), "", List.of());
    }

    /** Collects a cell. */
    static final class Making {
        private final List<String> said = new ArrayList<>();
        private final List<Lack> lacks = new ArrayList<>();
        private String source = "";

        Making say(String sentence) {
            said.add(sentence);
            return this;
        }

        Making source(String rule) {
            source = rule;
            return this;
        }

        Making lack(Lack lack) {
            lacks.add(lack);
            return this;
        }

        Cell done() {
            return new Cell(said, said.isEmpty() ? "" : source, lacks);
        }
    }
}
