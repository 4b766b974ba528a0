package org.plumbrow.calc.finance.use;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.YearMonth;
import java.time.ZoneId;
import java.time.zone.ZoneRules;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.energy.sun.HourOfYear;

/** Typed months, tables, several meters, and the year made of them. */
class UseTest {

    static final ZoneRules EASTERN = ZoneId.of("America/New_York").getRules();

    private static UseReading table(String... lines) {
        return UseTable.read("Barn", EASTERN, String.join("\n", lines));
    }

    private static String refusal(String... lines) {
        UseReading reading = table(lines);
        assertThat(reading.isRefused()).isTrue();
        assertThat(reading.channels()).isEmpty();
        return reading.findings().get(0).sentence();
    }

    @Test
    void twelveTypedMonthsAreAWholeYear() {
        List<Double> typed = List.of(1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0, 11.0, 12.0);
        UseYear year = UseYear.of(List.of(TypedMonths.of("House", EASTERN, YearMonth.of(2025, 4), typed)));
        assertThat(year.isWhole()).isTrue();
        assertThat(year.kwhOfYear().orElseThrow()).isCloseTo(78, within(1e-9));
        // April was typed first
        assertThat(year.kwhByMonth()[3]).isCloseTo(1, within(1e-9));
        assertThat(year.kwhByMonth()[2]).isCloseTo(12, within(1e-9));
        assertThat(year.findings()).isEmpty();
    }

    @Test
    void ofMoreThanTwelveMonthsTheLastCount() {
        List<Double> typed = new ArrayList<>(Collections.nCopies(6, 1000.0));
        typed.addAll(Collections.nCopies(12, 100.0));
        UseYear year = UseYear.of(List.of(TypedMonths.of("House", EASTERN, YearMonth.of(2024, 7), typed)));
        assertThat(year.kwhOfYear().orElseThrow()).isCloseTo(1200, within(1e-9));
    }

    @Test
    void elevenMonthsAreNoYear() {
        UseYear year = UseYear.of(
                List.of(TypedMonths.of("House", EASTERN, YearMonth.of(2025, 1), Collections.nCopies(11, 100.0))));
        assertThat(year.isWhole()).isFalse();
        assertThat(year.kwhOfYear()).isEmpty();
        assertThat(year.findings())
                .extracting(UseFinding::sentence)
                .containsExactly("1 of 12 months are not known. Bring the bills of the months that lack.");
        assertThat(UseYear.of(List.of()).kwhOfYear()).isEmpty();
    }

    @Test
    void metersAddUp() {
        UseChannel barn = TypedMonths.of("Barn", EASTERN, YearMonth.of(2025, 1), Collections.nCopies(12, 900.0));
        UseChannel house = TypedMonths.of("House", EASTERN, YearMonth.of(2025, 3), Collections.nCopies(12, 100.0));
        assertThat(UseYear.of(List.of(barn, house)).kwhOfYear().orElseThrow()).isCloseTo(12_000, within(1e-9));
    }

    @Test
    void billingPeriodsThatCrossMonthsAreSplitByTimeAndTheYearIsWhole() {
        UseReading reading = table(
                "from,to,kWh",
                "2025-01-14,2025-02-13,3000",
                "2025-02-13,2025-03-14,2900",
                "2025-03-14,2025-04-14,3100",
                "2025-04-14,2025-05-14,3000",
                "2025-05-14,2025-06-14,3100",
                "2025-06-14,2025-07-14,3000",
                "2025-07-14,2025-08-14,3100",
                "2025-08-14,2025-09-14,3100",
                "2025-09-14,2025-10-14,3000",
                "2025-10-14,2025-11-14,3100",
                "2025-11-14,2025-12-14,3000",
                "2025-12-14,2026-01-14,\"3,100\"");
        UseYear year = UseYear.of(reading.channels());
        assertThat(year.kwhOfYear().orElseThrow()).isCloseTo(36_500, within(1e-6));
        // 100 kWh a day all year: each month has its days
        assertThat(year.kwhByMonth()[0]).isCloseTo(3100, within(5.0));
        assertThat(year.kwhByMonth()[5]).isCloseTo(3000, within(5.0));
    }

    @Test
    void aLastDayThatIsMeantToCountIsRecognised() {
        UseReading reading =
                table("start;end;use", "1/1/2025;1/31/2025;310", "2/1/2025;2/28/2025;280", "3/1/2025;3/31/2025;310");
        assertThat(reading.findings())
                .extracting(UseFinding::sentence)
                .containsExactly("The dates in \"to\" are the last days themselves. They were read so.");
        assertThat(reading.channels().get(0).months().get(YearMonth.of(2025, 2)).kwh())
                .isCloseTo(280, within(1e-9));
    }

    @Test
    void monthsAndEstimatesAndUnitsInTheHeaderAreRead() {
        UseReading reading = table("month\tusage (kWh)\testimated", "2025-01\t100\tno", "2025-02\t90 kWh\tyes");
        UseChannel channel = reading.channels().get(0);
        assertThat(channel.kwh()).isEqualTo(190);
        assertThat(channel.estimated()).isEqualTo(1);
        assertThat(channel.end()).isEqualTo(Instant.parse("2025-03-01T05:00:00Z"));
        assertThat(reading.findings())
                .extracting(UseFinding::sentence)
                .containsExactly("Barn: the utility estimated 1 of 2 readings. They were taken as they are.");
    }

    @Test
    void theHourThatComesTwiceInAutumnIsReadInOrder() {
        UseReading reading = table(
                "start,kwh", "2025-11-02 00:00,1", "2025-11-02 01:00,2", "2025-11-02 01:00,3", "2025-11-02 02:00,4");
        UseChannel channel = reading.channels().get(0);
        assertThat(channel.intervals()).hasSize(4).allMatch(interval -> interval.hours() == 1);
        assertThat(channel.kwh()).isEqualTo(10);
        assertThat(reading.findings()).isEmpty();
    }

    @Test
    void aGapIsSaidWithItsTimes() {
        UseReading reading = table("start,end,kwh", "2025-01-01,2025-02-01,100", "2025-02-05,2025-03-01,90");
        assertThat(reading.findings())
                .extracting(UseFinding::sentence)
                .containsExactly("Barn: nothing is known from 1 Feb 2025 00:00 to 5 Feb 2025 00:00 (96.0 h). "
                        + "The rest of the month stands in for it.");
    }

    @Test
    void whatCannotBeReadIsNamedWithItsLine() {
        assertThat(refusal("")).startsWith("The table is empty.");
        assertThat(refusal("a,b", "1,2")).startsWith("Line 1: there is no column \"start\".");
        assertThat(refusal("start,b", "1,2")).startsWith("Line 1: there is no column \"kwh\".");
        assertThat(refusal("start,kwh", "2025-01-01,100", "31.12.2025,100"))
                .startsWith("Line 3: \"31.12.2025\" is no date that is read here. Write 2026-03-31");
        assertThat(refusal("start,kwh", "2025-01-01,much"))
                .isEqualTo("Line 2: \"much\" is no use in kWh. Write a number such as 1,250.");
        assertThat(refusal("start,end,kwh", "2025-02-01,2025-01-01,5")).startsWith("Line 2: the span does not end");
        assertThat(refusal("start,kwh", "2025-02-01,5")).startsWith("One row without an end");
        assertThat(refusal("start,kwh")).startsWith("Barn: there is no reading.");
        assertThatThrownBy(() -> TypedMonths.of("x", EASTERN, YearMonth.of(2025, 1), List.of(Double.NaN)))
                .isInstanceOf(Range.OutOfRange.class);
    }

    @Test
    void hoursStandInStandardTimeBesideProduction() {
        List<UseInterval> hours = new ArrayList<>();
        Instant start = Instant.parse("2025-01-01T05:00:00Z");
        for (int hour = 0; hour < 8760; hour++) {
            Instant from = start.plusSeconds(3600L * hour);
            hours.add(new UseInterval(from, from.plusSeconds(3600), hour % 24 == 12 ? 5 : 1, false));
        }
        UseHours use = UseHours.of(List.of(new UseChannel("Barn", Flow.DELIVERED, EASTERN, hours)))
                .orElseThrow();
        assertThat(use.knownShare()).isEqualTo(1);
        assertThat(use.kwh()[HourOfYear.of(7, 4, 13)]).isEqualTo(5);
        assertThat(use.kwh()[HourOfYear.of(7, 4, 12)]).isEqualTo(1);
        hours.removeIf(interval -> interval.start().equals(start.plusSeconds(3600L * 12)));
        UseHours gap = UseHours.of(List.of(new UseChannel("Barn", Flow.DELIVERED, EASTERN, hours)))
                .orElseThrow();
        assertThat(gap.kwh()[12]).isCloseTo(5, within(1e-9));
        assertThat(gap.knownShare()).isLessThan(1);
    }

    @Test
    void monthlyReadingsHaveNoHours() {
        assertThat(UseHours.of(List.of(
                        TypedMonths.of("House", EASTERN, YearMonth.of(2025, 1), Collections.nCopies(12, 100.0)))))
                .isEmpty();
    }
}
