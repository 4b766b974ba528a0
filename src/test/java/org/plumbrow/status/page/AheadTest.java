package org.plumbrow.status.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.duration.ActivityCode;
import org.plumbrow.project.Stage;
import org.plumbrow.schedule.PlannedDates;

class AheadTest {

    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);

    @Test
    void noStageIsReachedAfterTheOneBehindIt() {
        Ahead ahead = Ahead.of(
                List.of(
                        planned(ActivityCode.ELECTRICAL_FINISH, 20),
                        planned(ActivityCode.CUTOVER, 12),
                        planned(ActivityCode.HAND_OVER, 26)),
                Optional.empty(),
                TODAY);
        assertThat(ahead.day(Stage.INSTALLED)).contains(TODAY.plusDays(12));
        assertThat(ahead.day(Stage.CUTOVER)).contains(TODAY.plusDays(12));
        assertThat(ahead.day(Stage.COMMISSIONED)).contains(TODAY.plusDays(26));
        assertThat(ahead.day(Stage.SURVEYED)).isEmpty();
    }

    private static PlannedDates planned(ActivityCode code, int days) {
        HalfDay day = HalfDay.morning(TODAY.plusDays(days));
        return new PlannedDates(
                UUID.randomUUID(), UUID.randomUUID(), code.key(), code, code.key(), day, day, Optional.empty(), false);
    }
}
