package org.plumbrow.calc.outage.ranking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.plumbrow.calc.outage.ranking.Site.DAY;
import static org.plumbrow.calc.outage.ranking.Site.forecast;
import static org.plumbrow.calc.outage.ranking.Site.slot;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.energy.sun.Place;
import org.plumbrow.calc.outage.Blackout;
import org.plumbrow.calc.outage.CrewOffer;
import org.plumbrow.calc.outage.WindowQuestion.Promise;
import org.plumbrow.calc.outage.ranking.HourQuestion.WorkMinutes;
import org.plumbrow.calc.outage.ranking.LoadHours.Stands;
import org.plumbrow.calc.ridethrough.HomeLoads;

class HourRankingTest {

    private final Site site = new Site();

    private HourRanking ranking() {
        return HourRanking.of(site.question());
    }

    @Test
    void onlyHoursWithoutABrokenFactorAreOffered() {
        site.slots = List.of(slot("09:00", "12:00"));
        HourRanking ranking = ranking();
        assertThat(ranking.hoursLookedAt()).isEqualTo(48);
        assertThat(ranking.windows())
                .extracting(window -> window.start().toLocalTime().toString())
                .containsExactly("09:00", "09:30", "10:00", "10:30");
        assertThat(ranking.relaxations()).isEmpty();
        assertThat(ranking.windows()).allMatch(window -> window.verdict() != Verdict.BROKEN);
    }

    @Test
    void sameQuestionSameAnswer() {
        site.load(150, 220, 400);
        assertThat(ranking()).isEqualTo(ranking());
    }

    /** What somebody should look at comes later, whatever the day; then the chance, then the day, then the margin. */
    @Test
    void theOrderIsThatOfTheRule() {
        site.through = DAY.plusDays(2).atTime(23, 59);
        site.promise = Optional.of(new Promise(DAY.plusDays(1), "System on"));
        List<HourWindow> windows = ranking().windows();
        assertThat(windows.get(0).start()).isEqualTo(DAY.atTime(8, 0));
        assertThat(windows.get(windows.size() - 1).start().toLocalDate()).isEqualTo(DAY.plusDays(2));
        assertThat(windows)
                .isSortedAccordingTo(Comparator.comparing(HourWindow::verdict)
                        .thenComparing(window -> window.start().toLocalDate())
                        .thenComparing(window -> -window.marginMinutes().getAsInt()));
    }

    @Test
    void aWindowInWhichTheLoadsStandLongerComesBeforeAnEarlierOne() {
        site.work = new WorkMinutes(60, 90, 150, 90);
        site.through = DAY.plusDays(1).atTime(23, 59);
        site.load(180, 190, 200);
        for (int hour = 24; hour < 48; hour++) {
            site.loadAt(hour, 900);
        }
        HourWindow best = ranking().windows().get(0);
        assertThat(best.start().toLocalDate()).isEqualTo(DAY.plusDays(1));
        assertThat(best.reasons().get(0))
                .isEqualTo("In more than 99 of 100 cases the power is back before anything suffers.");
    }

    /** The minute after which something breaks, found by trying every minute. */
    @Test
    void theLatestStartIsTheOneThatTryingEveryMinuteFinds() {
        Random chance = new Random(11);
        int windows = 0;
        for (int i = 0; i < 60; i++) {
            Site any = drawn(chance);
            HourQuestion question = any.question();
            RuleBook book = new RuleBook(question);
            for (HourWindow window : HourRanking.of(question).windows()) {
                windows++;
                int minute = book.clock.at(window.start());
                int until = minute;
                while (until + 1 < SiteClock.endOfDay(minute)
                        && book.judge(until + 1).stream().noneMatch(Factor::isBroken)) {
                    until++;
                }
                assertThat(window.latestStart()).isEqualTo(book.clock.time(until));
            }
        }
        assertThat(windows).isGreaterThan(100);
    }

    private static Site drawn(Random chance) {
        Site any = new Site();
        any.everyMinutes = 35;
        any.work = new WorkMinutes(40, 60, 90, 45 + chance.nextInt(90));
        any.slots = chance.nextBoolean()
                ? List.of(slot("08:00", "12:00"), slot("11:00", "17:00"))
                : List.of(slot("07:30", "16:00"));
        any.load(200 + chance.nextInt(300), 600, 700);
        any.loadAt(8 + chance.nextInt(9), 60 + chance.nextInt(200));
        any.weatherAt(8 + chance.nextInt(12), forecast(10, 5 + 10 * chance.nextDouble(), 30 * chance.nextInt(3), 0));
        if (chance.nextBoolean()) {
            any.milk = Optional.of(new MilkDay(
                    List.of(
                            new Daily(LocalTime.of(4, 0), LocalTime.of(6, chance.nextInt(60)), "milking"),
                            new Daily(LocalTime.of(15, chance.nextInt(60)), LocalTime.of(18, 0), "milking")),
                    12,
                    3 + chance.nextDouble(),
                    3.5));
        }
        if (chance.nextBoolean()) {
            any.generator(3 + 10 * chance.nextDouble(), DAY.minusDays(chance.nextInt(9)));
        }
        CrewOffer.Busy busy = chance.nextBoolean()
                ? new CrewOffer.Busy(HalfDay.morning(DAY), HalfDay.morning(DAY), "elsewhere")
                : new CrewOffer.Busy(HalfDay.afternoon(DAY), HalfDay.afternoon(DAY), "elsewhere");
        any.hands = new Hands(
                List.of(
                        new Hands.Crew(new CrewOffer("1", "Crew 1", List.of(busy)), 1 + chance.nextInt(3)),
                        new Hands.Crew(new CrewOffer("2", "Crew 2", List.of()), 1 + chance.nextInt(2)),
                        new Hands.Crew(new CrewOffer("3", "Crew 3", List.of(busy)), OptionalInt.empty())),
                List.of());
        int at = 9 + chance.nextInt(7);
        any.customer = new CustomerDays(
                List.of(Blackout.between(DAY, DAY, LocalTime.of(at, 0), LocalTime.of(at + 1, 0), "baking")),
                List.of(),
                List.of(),
                false,
                false);
        return any;
    }

    @Test
    void withoutAWindowTheSmallestSingleRelaxationComesFirst() {
        site.slots = List.of(slot("09:00", "10:20"));
        HourRanking ranking = ranking();
        assertThat(ranking.windows()).isEmpty();
        Relaxation first = ranking.relaxations().get(0);
        assertThat(first.start()).isEqualTo(DAY.atTime(9, 0));
        assertThat(first.sentences()).containsExactly("Ask the utility for 10 min more than its slot.");
        assertThat(first.changesCircumstance()).isFalse();
    }

    @Test
    void whereTwoLimitsStandAgainstEveryHourPairsAreOffered() {
        site.slots = List.of(slot("09:00", "10:20"));
        site.noticeDays = 8;
        Relaxation pair = ranking().relaxations().get(0);
        assertThat(pair.factors()).extracting(Factor::kind).containsExactly(FactorKind.NOTICE, FactorKind.SLOT);
        assertThat(pair.sentences())
                .containsExactly(
                        "Ask the utility to do with 2 working days less of notice.",
                        "Ask the utility for 10 min more than its slot.");
        assertThat(pair.size()).isCloseTo(2 + 10 / 30.0, within(1e-9));
    }

    @Test
    void singlesComeBeforePairsAndEachNamesTheLeast() {
        site.noticeDays = 7;
        site.slots = List.of(slot("09:00", "10:20"), slot("12:00", "14:00"));
        List<Relaxation> all = ranking().relaxations();
        assertThat(all.get(0).factors()).hasSize(1);
        assertThat(all.get(0).start().toLocalTime()).isEqualTo(LocalTime.of(12, 0));
        assertThat(all.get(0).sentences()).containsExactly("Ask the utility to do with 1 working days less of notice.");
        assertThat(all.stream().map(one -> one.factors().size())).isSorted();
    }

    @Test
    void aLimitThatProtectsAnimalsStaysAndTheCircumstanceChanges() {
        site.load(150, 200, 300);
        Relaxation first = ranking().relaxations().get(0);
        assertThat(first.changesCircumstance()).isTrue();
        assertThat(first.sentences().get(0))
                .isEqualTo(
                        "The limit stays: House 1 lacks 30 min; plan fewer minutes or bring a generator that is proven.");
    }

    @Test
    void whereThreeStandAgainstEveryHourThereIsNothingSmallToGive() {
        site.noticeDays = 20;
        site.slots = List.of(slot("09:00", "10:20"));
        site.customer =
                new CustomerDays(List.of(Blackout.allDay(DAY, DAY, "a wedding")), List.of(), List.of(), false, false);
        assertThat(ranking().relaxations()).isEmpty();
    }

    @Test
    void inRelaxedFormTheHourBecomesAWindow() {
        site.slots = List.of(slot("09:00", "10:20"));
        double lacks = ranking().relaxations().get(0).factors().get(0).lacks();
        site.slots = List.of(
                slot("09:00", LocalTime.of(10, 20).plusMinutes((long) lacks).toString()));
        assertThat(ranking().windows()).isNotEmpty();
    }

    /** Work of 60, 75, 90 min and a need 75 min away: half; 90 min away: nine of ten. */
    @Test
    void theChanceIsThatOfTheWorkWhereOneFixedNeedBinds() {
        Chance chance = new Chance(new WorkMinutes(60, 75, 90, 90));
        assertThat(chance.of(Stands.ENDLESS, 75)).isCloseTo(0.5, within(1e-9));
        assertThat(chance.of(Stands.ENDLESS, 90)).isCloseTo(0.9, within(1e-9));
        assertThat(chance.of(Stands.ENDLESS, 60)).isCloseTo(0.1, within(1e-9));
        assertThat(chance.of(Stands.ENDLESS, Double.POSITIVE_INFINITY)).isEqualTo(1);
        assertThat(chance.of(new Stands(0, 0, 0), Double.POSITIVE_INFINITY)).isCloseTo(0, within(1e-9));
    }

    /** Log-normal against log-normal has a closed solution: the normal share of the difference of the logarithms. */
    @Test
    void theChanceAgreesWithTheClosedSolutionOfTwoLogNormals() {
        double ninety = 1.2815515655446004;
        Chance chance = new Chance(new WorkMinutes(60, 90, 135, 90));
        for (double middle : new double[] {60, 90, 120, 200}) {
            Stands stands = new Stands(middle / 1.4, middle, middle * 1.4);
            double spread = Math.hypot(Math.log(1.5), Math.log(1.4)) / ninety;
            double closed = org.plumbrow.calc.Normal.share(Math.log(middle / 90) / spread);
            assertThat(chance.of(stands, Double.POSITIVE_INFINITY)).isCloseTo(closed, within(0.004));
        }
    }

    @Test
    void theLongerTheLoadsStandTheBetterTheChance() {
        Chance chance = new Chance(new WorkMinutes(60, 75, 120, 90));
        double last = -1;
        for (int minutes = 10; minutes < 300; minutes += 10) {
            double now = chance.of(new Stands(minutes, minutes * 1.3, minutes * 2), Double.POSITIVE_INFINITY);
            assertThat(now).isGreaterThanOrEqualTo(last);
            last = now;
        }
        Stands halfKnown = new Stands(30, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
        assertThat(chance.of(halfKnown, Double.POSITIVE_INFINITY)).isBetween(0.89, 0.91);
    }

    /**
     * Published example of the algorithm at Golden, 17 October 2003 of universal time: sunrise 6:12:43, sunset 17:20:19
     * mountain standard time; that sunset belongs to the 16th there, the day being one of universal time.
     */
    @Test
    void daylightIsThatOfThePublishedExample() {
        Place golden = new Place(39.742476, -105.1786, 1830.14, -7);
        ZoneId zone = ZoneId.of("-07:00");
        Daylight light =
                Daylight.on(LocalDate.parse("2003-10-17"), golden, zone).orElseThrow();
        assertThat(light.rises()).isBetween(LocalTime.of(6, 12, 38), LocalTime.of(6, 12, 48));
        Daylight before =
                Daylight.on(LocalDate.parse("2003-10-16"), golden, zone).orElseThrow();
        assertThat(before.sets()).isBetween(LocalTime.of(17, 20, 14), LocalTime.of(17, 20, 24));
        assertThat(Daylight.on(LocalDate.parse("2027-12-21"), new Place(78, 15, 0, 1), ZoneId.of("Europe/Oslo")))
                .isEmpty();
    }

    @Test
    void whatHasNoFigureCannotBeReckonedWith() {
        assertThatThrownBy(() -> LoadHours.always(
                        new HomeLoads(true, true, HomeLoads.Freezer.FULL).rideThrough(), DAY.atStartOfDay(), 24))
                .hasMessage("there is no figure for home");
        assertThat(LoadHours.always(
                                new HomeLoads(false, true, HomeLoads.Freezer.NONE).rideThrough(),
                                DAY.atStartOfDay(),
                                24)
                        .hours())
                .hasSize(24)
                .allMatch(stands -> stands.shortEnd() == 240);
    }

    @Test
    void anHourWithoutFiguresIsOpenAndGivesNoChance() {
        site.loads = List.of(new LoadHours("House 1", DAY.atTime(9, 0), List.of(new Stands(900, 900, 900))));
        HourWindow unknown = site.opened("10:00");
        assertThat(unknown.verdict()).isEqualTo(Verdict.OPEN);
        assertThat(unknown.chanceBack()).isEmpty();
        assertThat(unknown.reasons()).contains("Not known yet: ride-through (no weather for that hour).");
    }

    @Test
    void onlyWhatIsLookedAtCanBeOpened() {
        LocalDateTime before = DAY.minusDays(1).atTime(10, 0);
        assertThatThrownBy(() -> HourRanking.opened(site.question(), before)).hasMessageContaining("is not looked at");
    }

    @Test
    void spansThatOverlapAreOne() {
        Spans spans = Spans.of(
                List.of(new Spans.Span(10, 20, "a"), new Spans.Span(15, 30, "b"), new Spans.Span(40, 50, "c")));
        assertThat(spans.overlap(0, 100)).isEqualTo(30);
        assertThat(spans.overlap(20, 40)).isEqualTo(10);
        assertThat(spans.nextFrom(11)).isEqualTo(40);
        assertThat(spans.nextFrom(51)).isEqualTo(SiteClock.NEVER);
        assertThat(spans.lastTo(35, -1)).isEqualTo(30);
        assertThat(spans.lastTo(5, -1)).isEqualTo(-1);
        assertThat(spans.reason(25, 26)).isEqualTo("a");
        assertThat(spans.reason(30, 40)).isEmpty();
    }
}
