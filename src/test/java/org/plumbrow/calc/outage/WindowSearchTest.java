package org.plumbrow.calc.outage;

import static java.time.DayOfWeek.FRIDAY;
import static java.time.DayOfWeek.MONDAY;
import static java.time.DayOfWeek.TUESDAY;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.plumbrow.calc.calendar.ClosedDay;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.calendar.Notice;
import org.plumbrow.calc.calendar.WorkingCalendar;
import org.plumbrow.calc.outage.WindowQuestion.Earliest;
import org.plumbrow.calc.outage.WindowQuestion.Promise;
import org.plumbrow.calc.outage.WindowSearch.Candidate;
import org.plumbrow.calc.outage.WindowSearch.RainDate;
import org.plumbrow.calc.outage.WindowSearch.Verdict;
import org.plumbrow.calc.outage.WindowSearch.Windows;

/** March 2027: Monday the 1st is today unless a test says otherwise. */
class WindowSearchTest {

    private static final Set<DayOfWeek> WEEK = EnumSet.range(MONDAY, FRIDAY);
    private static final LocalDate FRIDAY_26 = LocalDate.parse("2027-03-26");

    private LocalDate today = LocalDate.parse("2027-03-01");
    private LocalDate through = LocalDate.parse("2027-04-02");
    private Earliest earliest = new Earliest(today, "");
    private int minutes = 90;
    private int noticeDays = 10;
    private WorkingCalendar utilityCalendar = WorkingCalendar.MONDAY_TO_FRIDAY;
    private WorkingCalendar branch = WorkingCalendar.MONDAY_TO_FRIDAY;
    private List<Slot> slots = List.of(slot(WEEK, "09:00", "16:00"));
    private List<CrewOffer> crews = List.of(new CrewOffer("4", "Crew 4", List.of()));
    private List<Blackout> blackouts = List.of();
    private Optional<Promise> promise = Optional.empty();

    private static Slot slot(Set<DayOfWeek> weekdays, String from, String to) {
        return new Slot(weekdays, LocalTime.parse(from), LocalTime.parse(to), Optional.empty());
    }

    private UtilityTerms utility() {
        return new UtilityTerms("The utility", new Notice(noticeDays, utilityCalendar), slots);
    }

    private Windows answer() {
        return WindowSearch.answer(
                new WindowQuestion(today, through, earliest, minutes, utility(), branch, crews, blackouts, promise));
    }

    private Optional<Candidate> on(LocalDate day) {
        return answer().best().stream().filter(one -> one.day().equals(day)).findFirst();
    }

    @Test
    void tenFullWorkingDaysForMarch26MeanThatTheNoticeLeavesByMarch11() {
        assertThat(utility().noticeSentence(FRIDAY_26))
                .isEqualTo(
                        "The utility needs 10 full working days. For Fri, Mar 26 the notice must leave by Thu, Mar 11.");
        today = LocalDate.parse("2027-03-11");
        assertThat(on(FRIDAY_26)).isPresent();
        today = LocalDate.parse("2027-03-12");
        assertThat(on(FRIDAY_26)).isEmpty();
        assertThat(answer().ruledOut().get(0).sentence())
                .isEqualTo("Fri, Mar 12 to Fri, Mar 26: The utility needs 10 full working days.");
    }

    @Test
    void theUtilitysHolidayCountsForItsNoticeAndForItsSlots() {
        utilityCalendar =
                WorkingCalendar.of(WEEK, List.of(new ClosedDay(LocalDate.parse("2027-03-15"), "Founders' day")));
        assertThat(on(LocalDate.parse("2027-03-16"))).isEmpty();
        today = LocalDate.parse("2027-03-11");
        assertThat(on(FRIDAY_26)).isEmpty();
        noticeDays = 1;
        assertThat(answer().ruledOut())
                .extracting(WindowSearch.RuledOut::sentence)
                .contains("Mon, Mar 15: Founders' day, the utility does not work.");
    }

    @Test
    void theBranchsHolidayIsOutAndItsWeekendIsNotEvenListed() {
        noticeDays = 0;
        branch = WorkingCalendar.of(WEEK, List.of(new ClosedDay(LocalDate.parse("2027-03-05"), "Branch picnic")));
        Windows windows = answer();
        assertThat(windows.ruledOut())
                .extracting(WindowSearch.RuledOut::sentence)
                .containsExactly(
                        "Mon, Mar 1: The utility needs to hear of it the day before.",
                        "Fri, Mar 5: Branch picnic, the branch does not work.");
    }

    @Test
    void daysBeforeTheWorkIsDoneAreOutInOneLine() {
        earliest = new Earliest(FRIDAY_26, "AC gear not landed.");
        Windows windows = answer();
        assertThat(windows.best().get(0).day()).isEqualTo(FRIDAY_26);
        assertThat(windows.ruledOut())
                .extracting(WindowSearch.RuledOut::sentence)
                .containsExactly("Mon, Mar 1 to Thu, Mar 25: AC gear not landed.");
        assertThat(windows.daysRuledOut()).isEqualTo(19);
    }

    @Test
    void onlyTheUtilitysWeekdaysHaveASlot() {
        slots = List.of(slot(EnumSet.of(TUESDAY), "09:00", "16:00"));
        assertThat(answer().best()).extracting(Candidate::day).allMatch(day -> day.getDayOfWeek() == TUESDAY);
        assertThat(answer().ruledOut())
                .extracting(WindowSearch.RuledOut::why)
                .contains("The utility has no slot that day.");
    }

    @Test
    void theWholeOutageLiesInsideTheSlot() {
        slots = List.of(slot(WEEK, "09:00", "10:30"));
        assertThat(on(FRIDAY_26).orElseThrow().verdict()).isEqualTo(Verdict.NO_MARGIN);
        assertThat(on(FRIDAY_26).orElseThrow().reasons().get(0))
                .isEqualTo("It ends 0 min before the utility's slot does; a late truck ends it.");
        slots = List.of(slot(WEEK, "09:00", "10:29"));
        assertThat(answer().best()).isEmpty();
        assertThat(answer().ruledOut())
                .extracting(WindowSearch.RuledOut::why)
                .contains("The outage of 90 min is longer than the utility's slot.");
    }

    @Test
    void halfAnHourOfMarginIsEnough() {
        slots = List.of(slot(WEEK, "09:00", "11:00"));
        assertThat(on(FRIDAY_26).orElseThrow().verdict()).isEqualTo(Verdict.FITS);
        slots = List.of(slot(WEEK, "09:00", "10:59"));
        assertThat(on(FRIDAY_26).orElseThrow().verdict()).isEqualTo(Verdict.NO_MARGIN);
    }

    @Test
    void aSlotWithBackByAsksOnlyTheStartToLieInside() {
        Slot offEightToTen = new Slot(
                WEEK, LocalTime.parse("08:00"), LocalTime.parse("10:00"), Optional.of(LocalTime.parse("15:30")));
        assertThat(offEightToTen.holds(LocalTime.parse("10:00"), 330)).isTrue();
        assertThat(offEightToTen.holds(LocalTime.parse("10:00"), 331)).isFalse();
        assertThat(offEightToTen.holds(LocalTime.parse("10:01"), 15)).isFalse();
        slots = List.of(offEightToTen);
        minutes = 180;
        assertThat(on(FRIDAY_26).orElseThrow().start()).isEqualTo("08:00");
    }

    @Test
    void aBlackoutDayIsOutWithTheCustomersReason() {
        blackouts = List.of(Blackout.allDay(FRIDAY_26, FRIDAY_26, "milk inspector"));
        assertThat(answer().ruledOut())
                .extracting(WindowSearch.RuledOut::sentence)
                .contains("Fri, Mar 26: The customer needs the power: milk inspector.");
    }

    @Test
    void theStartMovesPastTheHoursInWhichTheCustomerNeedsPower() {
        blackouts = List.of(Blackout.weekly(WEEK, LocalTime.parse("06:00"), LocalTime.parse("10:00"), "milking"));
        assertThat(on(FRIDAY_26).orElseThrow().start()).isEqualTo("10:00");
        blackouts = List.of(
                Blackout.weekly(WEEK, LocalTime.parse("06:00"), LocalTime.parse("10:00"), "milking"),
                Blackout.between(FRIDAY_26, FRIDAY_26, LocalTime.parse("11:29"), LocalTime.parse("16:00"), "vet"));
        assertThat(on(FRIDAY_26)).isEmpty();
    }

    @Test
    void anOutageThatEndsWhenTheBlackoutBeginsFits() {
        slots = List.of(slot(WEEK, "09:00", "11:00"));
        blackouts = List.of(Blackout.weekly(WEEK, LocalTime.parse("10:30"), LocalTime.parse("13:00"), "milking"));
        assertThat(on(FRIDAY_26).orElseThrow().start()).isEqualTo("09:00");
    }

    @Test
    void aCrewIsNeverBookedTwice() {
        crews = List.of(new CrewOffer(
                "2",
                "Crew 2",
                List.of(new CrewOffer.Busy(
                        HalfDay.morning(FRIDAY_26), HalfDay.afternoon(FRIDAY_26), "Quillback School"))));
        assertThat(on(FRIDAY_26)).isEmpty();
        assertThat(answer().ruledOut())
                .extracting(WindowSearch.RuledOut::sentence)
                .contains("Fri, Mar 26: Crew 2 is elsewhere: Quillback School.");
    }

    @Test
    void aCrewThatIsFreeInTheAfternoonStartsThen() {
        crews = List.of(new CrewOffer(
                "2",
                "Crew 2",
                List.of(new CrewOffer.Busy(HalfDay.morning(FRIDAY_26), HalfDay.morning(FRIDAY_26), "a home"))));
        // The crew is on site 35 min before the power goes off, so 12:30 does not touch the morning, 12:00 would
        assertThat(on(FRIDAY_26).orElseThrow().start()).isEqualTo("13:00");
    }

    @Test
    void theNextCrewStepsIn() {
        crews = List.of(
                new CrewOffer(
                        "2",
                        "Crew 2",
                        List.of(new CrewOffer.Busy(
                                HalfDay.morning(FRIDAY_26), HalfDay.afternoon(FRIDAY_26), "Quillback School"))),
                new CrewOffer("4", "Crew 4", List.of()));
        assertThat(on(FRIDAY_26).orElseThrow().crewName()).isEqualTo("Crew 4");
    }

    @Test
    void withoutAnElectricianThereIsNoWindow() {
        crews = List.of();
        assertThat(answer().best()).isEmpty();
        assertThat(answer().ruledOut())
                .extracting(WindowSearch.RuledOut::why)
                .contains("No crew of the branch has a licensed electrician.");
    }

    @Test
    void aDayThatBreaksThePromiseComesLastAndSaysByHowMuch() {
        promise = Optional.of(new Promise(FRIDAY_26, "System on, promised for Fri, Apr 16,"));
        Windows windows = answer();
        assertThat(on(FRIDAY_26).orElseThrow().verdict()).isEqualTo(Verdict.FITS);
        Candidate tuesday = on(LocalDate.parse("2027-03-30")).orElseThrow();
        assertThat(tuesday.verdict()).isEqualTo(Verdict.PROMISE_SLIPS);
        assertThat(tuesday.reasons().get(0)).isEqualTo("System on, promised for Fri, Apr 16, slips by 2 working days.");
        assertThat(windows.best()).extracting(Candidate::verdict).isSorted();
    }

    @Test
    void theRainDateIsTheNextDayThatFitsTwoOrMoreDaysLater() {
        earliest = new Earliest(FRIDAY_26, "AC gear not landed.");
        slots = List.of(slot(EnumSet.of(MONDAY, TUESDAY, FRIDAY), "09:00", "16:00"));
        assertThat(on(FRIDAY_26).orElseThrow().rainDate())
                .contains(new RainDate(LocalDate.parse("2027-03-29"), LocalTime.parse("09:00")));
        assertThat(on(LocalDate.parse("2027-03-29")).orElseThrow().rainDate())
                .contains(new RainDate(LocalDate.parse("2027-04-02"), LocalTime.parse("09:00")));
        assertThat(on(LocalDate.parse("2027-04-02")).orElseThrow().rainDate()).isEmpty();
    }

    private List<String> against(LocalDate day, String start, String crew) {
        return WindowSearch.against(
                        new WindowQuestion(
                                today, through, earliest, minutes, utility(), branch, crews, blackouts, promise),
                        day,
                        LocalTime.parse(start),
                        crew)
                .stream()
                .map(WindowSearch.Objection::sentence)
                .toList();
    }

    @Test
    void aWindowThatSomebodyNamesIsHeldToTheSameRules() {
        assertThat(against(FRIDAY_26, "09:00", "4")).isEmpty();
        assertThat(against(FRIDAY_26, "14:30", "4")).isEmpty();
        assertThat(against(FRIDAY_26, "14:31", "4"))
                .containsExactly(
                        "The utility's slot on Fri, Mar 26 leaves starts from 9:00 am to 2:30 pm for 90 min. Choose one of these.");
        assertThat(against(LocalDate.parse("2027-03-15"), "09:00", "4"))
                .containsExactly(
                        "The utility needs 10 full working days. For Mon, Mar 15 the notice must leave by Fri, Feb 26.");
        assertThat(against(LocalDate.parse("2027-02-26"), "09:00", "4"))
                .containsExactly("Fri, Feb 26 has passed. Choose a day to come.");
        assertThat(against(LocalDate.parse("2027-03-27"), "09:00", "4"))
                .containsExactly("Sat, Mar 27: Saturday, the branch does not work. Choose another day.");
        assertThat(against(FRIDAY_26, "09:00", "9")).containsExactly("Choose a crew with a licensed electrician.");
    }

    @Test
    void aNamedWindowMeetsBlackoutAndCrewAtOnce() {
        blackouts = List.of(Blackout.weekly(WEEK, LocalTime.parse("10:00"), LocalTime.parse("12:00"), "milking"));
        crews = List.of(new CrewOffer(
                "2",
                "Crew 2",
                List.of(new CrewOffer.Busy(
                        HalfDay.morning(FRIDAY_26), HalfDay.afternoon(FRIDAY_26), "Quillback School"))));
        assertThat(against(FRIDAY_26, "09:00", "2"))
                .containsExactly(
                        "The customer needs the power: milking. Choose another start.",
                        "Crew 2 is elsewhere on Fri, Mar 26: Quillback School. Choose another crew, or another day.");
    }

    @Test
    void theSameQuestionHasTheSameAnswer() {
        assertThat(answer()).isEqualTo(answer());
    }

    /** On random branches: no candidate breaks any of the rules, and each working day is either offered or explained. */
    @Test
    void noCandidateEverBreaksARule() {
        for (int seed = 0; seed < 500; seed++) {
            Random random = new Random(seed);
            noticeDays = random.nextInt(12);
            minutes = 15 + random.nextInt(300);
            earliest = new Earliest(today.plusDays(random.nextInt(20)), "Work not done.");
            crews = new ArrayList<>(Collections.nCopies(1 + random.nextInt(3), null));
            crews.replaceAll(none -> new CrewOffer("c", "Crew", busy(random)));
            blackouts = List.of(Blackout.between(
                    today.plusDays(random.nextInt(30)),
                    today.plusDays(30 + random.nextInt(5)),
                    LocalTime.of(6 + random.nextInt(4), 0),
                    LocalTime.of(10 + random.nextInt(4), 30),
                    "milking"));
            Windows windows = answer();
            windows.best().forEach(this::holdsEveryRule);
            long days = today.datesUntil(through.plusDays(1))
                    .filter(day -> WEEK.contains(day.getDayOfWeek()))
                    .count();
            assertThat(windows.best().size() + windows.daysRuledOut()).isEqualTo((int) days);
        }
    }

    private List<CrewOffer.Busy> busy(Random random) {
        LocalDate from = today.plusDays(random.nextInt(25));
        return List.of(new CrewOffer.Busy(
                HalfDay.morning(from), HalfDay.afternoon(from.plusDays(random.nextInt(5))), "elsewhere"));
    }

    private void holdsEveryRule(Candidate one) {
        assertThat(one.day()).isAfterOrEqualTo(earliest.day());
        assertThat(utilityCalendar.fullWorkingDaysBetween(today, one.day())).isGreaterThanOrEqualTo(noticeDays);
        assertThat(one.start()).isAfterOrEqualTo(LocalTime.of(9, 0));
        assertThat(one.end()).isBeforeOrEqualTo(LocalTime.of(16, 0));
        assertThat(blackouts).noneMatch(blackout -> blackout.meets(one.day(), one.start(), one.end()));
        assertThat(crews)
                .anyMatch(crew -> crew.busy().stream()
                        .noneMatch(busy -> !one.day().isBefore(busy.from().date())
                                && !one.day().isAfter(busy.to().date())));
    }
}
