package org.plumbrow.calc.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RowsTest {

    private static final BitSet NONE = new BitSet();

    private static Step behind(int... before) {
        Step.Arc[] arcs =
                Arrays.stream(before).mapToObj(step -> new Step.Arc(step, 0, 0)).toArray(Step.Arc[]::new);
        return new Step("s", 0, arcs, Draw.always(1), null, null, false, new Claim[0], Step.OPEN, Step.OPEN);
    }

    @Test
    void aChainNeedsOneRow() {
        assertThat(Rows.reused(new Step[] {behind(), behind(0), behind(1)}, NONE)
                        .count())
                .isEqualTo(1);
    }

    @Test
    void whatIsAskedForKeepsItsRow() {
        BitSet first = new BitSet();
        first.set(0);
        Rows rows = Rows.reused(new Step[] {behind(), behind(0), behind(1)}, first);
        assertThat(rows.count()).isEqualTo(2);
        assertThat(rows.of()[0]).isNotEqualTo(rows.of()[1]).isNotEqualTo(rows.of()[2]);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void whoWaitsStillFindsWhatItWaitsFor(long seed) {
        Random random = new Random(seed);
        Step[] steps = IntStream.range(0, 400)
                .mapToObj(number -> behind(random.ints(random.nextInt(4), Math.max(0, number - 40), Math.max(1, number))
                        .filter(before -> before < number)
                        .toArray()))
                .toArray(Step[]::new);
        BitSet kept = new BitSet();
        IntStream.range(0, steps.length).filter(step -> random.nextInt(8) == 0).forEach(kept::set);
        Rows rows = Rows.reused(steps, kept);
        int[] owner = new int[rows.count()];
        for (int number = 0; number < steps.length; number++) {
            for (Step.Arc arc : steps[number].arcs()) {
                assertThat(owner[rows.of()[arc.step()]]).isEqualTo(arc.step());
            }
            owner[rows.of()[number]] = number;
        }
        kept.stream().forEach(step -> assertThat(owner[rows.of()[step]]).isEqualTo(step));
        assertThat(rows.count()).isLessThan(kept.cardinality() + 45);
    }
}
