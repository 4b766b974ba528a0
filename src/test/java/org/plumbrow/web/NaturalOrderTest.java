package org.plumbrow.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NaturalOrderTest {

    @Test
    void numbersInNamesCountAsNumbers() {
        List<String> names =
                List.of("Crew 10", "Crew 2", "crew 1", "Crew", "Bore rig", "Crew 2b", "Crew 02", "10", "9");
        assertThat(names.stream().sorted(NaturalOrder.OF_NAMES))
                .containsExactly("9", "10", "Bore rig", "Crew", "crew 1", "Crew 02", "Crew 2", "Crew 2b", "Crew 10");
    }
}
