package org.plumbrow.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

class WordsTest {

    /** 11:30 pm on Mon, Mar 1, 2027 in the branch; already the next day in UTC. */
    private static final Clock LATE = Clock.fixed(Instant.parse("2027-03-02T04:30:00Z"), ZoneOffset.UTC);

    private final Access access = new Access();
    private final Words words = new Words(LATE, access);

    private String inTheBranch(Supplier<String> said) {
        UUID id = UUID.randomUUID();
        BranchCard branch =
                new BranchCard(id, "QV", "Quillback Valley", ZoneId.of("America/New_York"), Set.of(Role.MANAGER));
        return access.as(new Visitor(UUID.randomUUID(), "Ines", "ines@test.example", List.of(branch), id), said);
    }

    @Test
    void todayIsTheBranchs() {
        assertThat(inTheBranch(() -> words.today().toString())).isEqualTo("2027-03-01");
    }

    @Test
    void aDateHasItsWeekdayAndItsYearOnlyWhenItIsAnother() {
        assertThat(inTheBranch(() -> words.day(LocalDate.of(2027, 3, 26)))).isEqualTo("Fri, Mar 26");
        assertThat(inTheBranch(() -> words.day(LocalDate.of(2026, 11, 9)))).isEqualTo("Mon, Nov 9, 2026");
    }

    @Test
    void aDistanceStandsBehindTheDate() {
        assertThat(inTheBranch(() -> words.dayAndDistance(LocalDate.of(2027, 3, 3))))
                .isEqualTo("Wed, Mar 3 (in 2 days)");
        assertThat(inTheBranch(() -> words.dayAndDistance(LocalDate.of(2027, 3, 1))))
                .isEqualTo("Mon, Mar 1 (today)");
    }

    @Test
    void noonAndMidnightHaveNoFigures() {
        assertThat(words.time(LocalTime.of(12, 0))).isEqualTo("noon");
        assertThat(words.time(LocalTime.MIDNIGHT)).isEqualTo("midnight");
        assertThat(words.time(LocalTime.of(9, 5))).isEqualTo("9:05 am");
    }

    @Test
    void aMomentIsToldInTheBranchsZone() {
        assertThat(inTheBranch(() -> words.moment(Instant.parse("2027-03-01T11:40:00Z"))))
                .isEqualTo("Mon, Mar 1, 6:40 am");
    }

    @Test
    void figuresAreGroupedAndRoundedOnlyForDisplay() {
        assertThat(words.number(26410, 0)).isEqualTo("26,410");
        assertThat(words.number(98.96, 1)).isEqualTo("99.0");
        assertThat(words.number(-4, 0)).isEqualTo("−4");
        assertThat(words.money(new BigDecimal("18240.00"))).isEqualTo("$18,240");
        assertThat(words.money(new BigDecimal("18240.505"))).isEqualTo("$18,240.51");
        assertThat(words.money(new BigDecimal("-1200"))).isEqualTo("−$1,200");
    }

    @Test
    void minutesBecomeHours() {
        assertThat(words.minutes(45)).isEqualTo("45 min");
        assertThat(words.minutes(210)).isEqualTo("3 h 30 min");
    }

    @Test
    void whatIsMissingIsADash() {
        assertThat(words.day(null)).isEqualTo("–");
        assertThat(words.number(null, 1)).isEqualTo("–");
    }
}
