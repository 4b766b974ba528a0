package org.plumbrow.schedule.activity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.duration.DoneWork;
import org.plumbrow.calc.duration.ShippedTable;

class LearnedRatesTest {

    private static final UUID ONE = new UUID(0, 1);
    private static final UUID OTHER = new UUID(0, 2);
    private static final double TABLE =
            ShippedTable.all().rate("modules-ground").typical();

    private static LearnedRates.OfRow row(Map<UUID, List<DoneWork>> works) {
        List<LearnedRates.OfRow> rows = new LearnedRates(ShippedTable.all(), Map.of("modules-ground", works)).rows();
        assertThat(rows).hasSize(1);
        return rows.get(0);
    }

    @Test
    void theOnlyCrewStartsFromTheTable() {
        LearnedRates.OfRow row = row(Map.of(ONE, List.of(new DoneWork(600, 5))));
        assertThat(row.all().mean()).isEqualTo((5 * TABLE + 600) / 10);
        assertThat(row.byCrew().get(ONE).mean()).isEqualTo(row.all().mean());
    }

    @Test
    void aCrewStartsFromTheOthersAndNobodysWorkCountsTwice() {
        LearnedRates.OfRow row = row(Map.of(ONE, List.of(new DoneWork(600, 5)), OTHER, List.of(new DoneWork(300, 5))));
        double ofTheOther = (5 * TABLE + 300) / 10;
        assertThat(row.byCrew().get(ONE).mean()).isCloseTo((5 * ofTheOther + 600) / 10, within(1e-9));
        assertThat(row.all().mean()).isCloseTo((5 * TABLE + 900) / 15, within(1e-9));
    }

    @Test
    void withoutWorkThereIsNothingLearned() {
        assertThat(new LearnedRates(ShippedTable.all(), Map.of()).rows()).isEmpty();
    }
}
