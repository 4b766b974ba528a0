package org.plumbrow.calc.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ArcsTest {

    /** Two bytes count to 65,535. */
    @Test
    void whatIsTooFarBackToBeSaidIsNotFollowed() {
        assertThat((int) Arcs.back(7, 4)).isEqualTo(3);
        assertThat((int) Arcs.back(65_545, 10)).isEqualTo(65_535);
        assertThat((int) Arcs.back(65_546, 10)).isEqualTo(Arcs.UNBOUND);
        assertThat((int) Arcs.back(70_000, 10)).isEqualTo(Arcs.UNBOUND);
    }
}
