package org.plumbrow.calc.outage;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.calendar.HalfDay;

/**
 * The days on which the power may be off, best first, and why the others are out. Each day is asked in this order: does
 * the branch work, is the work before it done, is the utility's notice met, has the utility a slot, does the customer
 * need the power, is a crew free. Of each day the earliest start with the best verdict is offered.
 * <p>Order: fits, then no margin, then promise slips; then by day. Same question, same answer.
 */
public final class WindowSearch {

    /** A window that ends closer to the end of the utility's slot has no margin for a late truck. */
    public static final int LEAST_MARGIN_MINUTES = 30;
    /** Briefing, readings and loads before the outage; generator, array and labels after it: the crew stays so long. */
    public static final int VISIT_BEFORE_MINUTES = 35;

    public static final int VISIT_AFTER_MINUTES = 40;
    /** A rain date lies at least so many days later. */
    public static final int RAIN_DATE_DAYS = 2;

    private static final int START_EVERY_MINUTES = 30;
    private static final int NOON_MINUTE = 12 * 60;

    private final WindowQuestion question;

    private WindowSearch(WindowQuestion question) {
        this.question = question;
    }

    public static Windows answer(WindowQuestion question) {
        return new WindowSearch(question).answer();
    }

    /** What speaks against one window that somebody names, with one of the question's crews; empty when it may be. */
    public static List<Objection> against(WindowQuestion question, LocalDate day, LocalTime start, String crewId) {
        Day one = new WindowSearch(question).new Day(day);
        return one.against(start, crewId);
    }

    /** @param about which part of the window it concerns */
    public record Objection(About about, String sentence) {}

    /** A part of a window. */
    public enum About {
        DAY,
        START,
        CREW
    }

    private Windows answer() {
        List<Candidate> found = new ArrayList<>();
        List<RuledOut> out = new ArrayList<>();
        for (LocalDate day = question.today(); !day.isAfter(question.through()); day = day.plusDays(1)) {
            if (question.branch().workingWeekdays().contains(day.getDayOfWeek())) {
                Day one = new Day(day);
                one.best().ifPresentOrElse(found::add, () -> addRuledOut(out, one.day, one.why));
            }
        }
        found.sort(Comparator.comparing(Candidate::verdict)
                .thenComparing(Candidate::day)
                .thenComparing(Candidate::start));
        return new Windows(withRainDates(found), out);
    }

    /** Neighbouring days with the same reason become one line. */
    private static void addRuledOut(List<RuledOut> out, LocalDate day, String why) {
        if (!out.isEmpty() && out.get(out.size() - 1).why().equals(why)) {
            RuledOut earlier = out.remove(out.size() - 1);
            out.add(new RuledOut(earlier.first(), day, earlier.days() + 1, why));
        } else {
            out.add(new RuledOut(day, day, 1, why));
        }
    }

    private static List<Candidate> withRainDates(List<Candidate> found) {
        return found.stream()
                .map(candidate -> candidate.withRainDate(found.stream()
                        .filter(later -> later.verdict() == Verdict.FITS)
                        .filter(later -> !later.day().isBefore(candidate.day().plusDays(RAIN_DATE_DAYS)))
                        .min(Comparator.comparing(Candidate::day))))
                .toList();
    }

    /** One day, asked everything in turn; {@code why} is what rules it out. */
    private final class Day {
        private final LocalDate day;
        private String why = "";

        Day(LocalDate day) {
            this.day = day;
        }

        Optional<Candidate> best() {
            return whyNotAtAll()
                    .map(reason -> {
                        why = reason;
                        return Optional.<Candidate>empty();
                    })
                    .orElseGet(this::bestStart);
        }

        private Optional<String> whyNotAtAll() {
            UtilityTerms utility = question.utility();
            return question.branch()
                    .whyClosed(day)
                    .map(closed -> closed + ", the branch does not work.")
                    .or(() -> day.isBefore(question.earliest().day())
                            ? Optional.of(question.earliest().why())
                            : Optional.empty())
                    .or(() -> utility.notice().isMet(question.today(), day)
                            ? Optional.empty()
                            : Optional.of(utility.noticeRule()))
                    .or(() -> utility.notice()
                            .calendar()
                            .whyClosed(day)
                            .map(closed -> closed + ", the utility does not work."))
                    .or(() -> utility.slotsOn(day).isEmpty()
                            ? Optional.of("The utility has no slot that day.")
                            : Optional.empty())
                    .or(() -> question.blackouts().stream()
                            .filter(blackout -> blackout.isAllDay() && blackout.concerns(day))
                            .map(WindowSearch::blackoutSentence)
                            .findFirst());
        }

        List<Objection> against(LocalTime start, String crewId) {
            List<Objection> against = new ArrayList<>();
            if (day.isBefore(question.today())) {
                return List.of(new Objection(About.DAY, DayWords.of(day) + " has passed. Choose a day to come."));
            }
            Optional<String> dayIsOut = whyNotAtAll();
            if (dayIsOut.isPresent()) {
                boolean tooLate = dayIsOut.get().equals(question.utility().noticeRule());
                String sentence = tooLate
                        ? question.utility().noticeSentence(day)
                        : DayWords.of(day) + ": " + dayIsOut.get() + " Choose another day.";
                return List.of(new Objection(About.DAY, sentence));
            }
            LocalTime end = start.plusMinutes(question.outageMinutes());
            if (question.utility().slotsOn(day).stream()
                    .noneMatch(slot -> slot.holds(start, question.outageMinutes()))) {
                against.add(new Objection(About.START, question.utility().slotSentence(day, question.outageMinutes())));
            }
            question.blackouts().stream()
                    .filter(blackout -> blackout.meets(day, start, end))
                    .findFirst()
                    .ifPresent(blackout -> against.add(
                            new Objection(About.START, blackoutSentence(blackout) + " Choose another start.")));
            crewObjection(start, end, crewId).ifPresent(against::add);
            return against;
        }

        private Optional<Objection> crewObjection(LocalTime start, LocalTime end, String crewId) {
            Optional<CrewOffer> crew = question.crews().stream()
                    .filter(one -> one.id().equals(crewId))
                    .findFirst();
            if (crew.isEmpty()) {
                return Optional.of(new Objection(About.CREW, "Choose a crew with a licensed electrician."));
            }
            return crew.get()
                    .busyBetween(firstHalf(start), lastHalf(end))
                    .map(busy -> new Objection(
                            About.CREW,
                            crew.get().name() + " is elsewhere on " + DayWords.of(day) + ": " + busy.what()
                                    + ". Choose another crew, or another day."));
        }

        private Optional<Candidate> bestStart() {
            why = "The outage of " + question.outageMinutes() + " min is longer than the utility's slot.";
            return question.utility().slotsOn(day).stream()
                    .flatMap(slot -> startsIn(slot).flatMap(start -> candidate(slot, start).stream()))
                    .min(Comparator.comparing(Candidate::verdict).thenComparing(Candidate::start));
        }

        private Stream<LocalTime> startsIn(Slot slot) {
            return Stream.iterate(
                            minuteOf(slot.from()),
                            minute -> minute <= minuteOf(slot.to()),
                            minute -> minute + START_EVERY_MINUTES)
                    .map(minute -> LocalTime.ofSecondOfDay(minute * 60L))
                    .filter(start -> slot.holds(start, question.outageMinutes()));
        }

        private Optional<Candidate> candidate(Slot slot, LocalTime start) {
            LocalTime end = start.plusMinutes(question.outageMinutes());
            Optional<Blackout> blackout = question.blackouts().stream()
                    .filter(one -> one.meets(day, start, end))
                    .findFirst();
            if (blackout.isPresent()) {
                why = blackoutSentence(blackout.get());
                return Optional.empty();
            }
            Optional<CrewOffer> crew = freeCrew(start, end);
            if (crew.isEmpty()) {
                why = noCrewSentence(start, end);
                return Optional.empty();
            }
            return Optional.of(rated(slot, start, end, crew.get()));
        }

        private Optional<CrewOffer> freeCrew(LocalTime start, LocalTime end) {
            return question.crews().stream()
                    .filter(crew ->
                            crew.busyBetween(firstHalf(start), lastHalf(end)).isEmpty())
                    .findFirst();
        }

        private HalfDay firstHalf(LocalTime start) {
            return minuteOf(start) - VISIT_BEFORE_MINUTES < NOON_MINUTE ? HalfDay.morning(day) : HalfDay.afternoon(day);
        }

        private HalfDay lastHalf(LocalTime end) {
            return minuteOf(end) + VISIT_AFTER_MINUTES > NOON_MINUTE ? HalfDay.afternoon(day) : HalfDay.morning(day);
        }

        private String noCrewSentence(LocalTime start, LocalTime end) {
            if (question.crews().isEmpty()) {
                return "No crew of the branch has a licensed electrician.";
            }
            CrewOffer first = question.crews().get(0);
            String what = first.busyBetween(firstHalf(start), lastHalf(end))
                    .map(CrewOffer.Busy::what)
                    .orElse("");
            return question.crews().size() == 1
                    ? first.name() + " is elsewhere: " + what + "."
                    : "No crew with an electrician is free; " + first.name() + " is elsewhere: " + what + ".";
        }

        private Candidate rated(Slot slot, LocalTime start, LocalTime end, CrewOffer crew) {
            List<String> reasons = new ArrayList<>();
            Verdict verdict = Verdict.FITS;
            int margin = slot.marginMinutes(start, question.outageMinutes());
            if (margin < LEAST_MARGIN_MINUTES) {
                verdict = Verdict.NO_MARGIN;
                reasons.add("It ends " + margin + " min before the utility's slot does; a late truck ends it.");
            }
            if (question.promise().isPresent()
                    && day.isAfter(question.promise().get().latestCutover())) {
                WindowQuestion.Promise promise = question.promise().get();
                int late =
                        question.branch().workingDaysIn(promise.latestCutover().plusDays(1), day);
                verdict = Verdict.PROMISE_SLIPS;
                reasons.add(promise.words() + " slips by " + late + (late == 1 ? " working day." : " working days."));
            }
            int given = question.utility().notice().calendar().fullWorkingDaysBetween(question.today(), day);
            LocalDate sendBy = question.utility().notice().lastDayToSendFor(day);
            reasons.add("The utility has the slot. " + given
                    + (given == 1 ? " full working day" : " full working days") + " of notice if sent today, "
                    + question.utility().notice().fullWorkingDays() + " needed.");
            reasons.add(crew.name() + " is free.");
            return new Candidate(day, start, end, crew.id(), crew.name(), verdict, reasons, sendBy, Optional.empty());
        }
    }

    private static String blackoutSentence(Blackout blackout) {
        return "The customer needs the power: " + blackout.reason() + ".";
    }

    private static int minuteOf(LocalTime time) {
        return time.toSecondOfDay() / 60;
    }

    /** How a day's window fares; the order is the ranking. */
    public enum Verdict {
        FITS("Fits"),
        NO_MARGIN("No margin"),
        PROMISE_SLIPS("Promise slips");

        private final String words;

        Verdict(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** The best window of one day. {@code sendNoticeBy}: last day on which the utility's notice may leave. */
    public record Candidate(
            LocalDate day,
            LocalTime start,
            LocalTime end,
            String crewId,
            String crewName,
            Verdict verdict,
            List<String> reasons,
            LocalDate sendNoticeBy,
            Optional<RainDate> rainDate) {

        Candidate withRainDate(Optional<Candidate> later) {
            return new Candidate(
                    day,
                    start,
                    end,
                    crewId,
                    crewName,
                    verdict,
                    reasons,
                    sendNoticeBy,
                    later.map(other -> new RainDate(other.day, other.start)));
        }
    }

    /** Where the outage goes when the weather does not allow it. */
    public record RainDate(LocalDate day, LocalTime start) {}

    /** Neighbouring days that are out for one reason; {@code days} counts those on which the branch works. */
    public record RuledOut(LocalDate first, LocalDate last, int days, String why) {
        /** "Mon, Mar 22 to Thu, Mar 25: AC gear not landed." */
        public String sentence() {
            String when = first.equals(last) ? DayWords.of(first) : DayWords.of(first) + " to " + DayWords.of(last);
            return when + ": " + why;
        }
    }

    /** All windows, best first, and the days that are out, in time. */
    public record Windows(List<Candidate> best, List<RuledOut> ruledOut) {
        public Windows {
            best = List.copyOf(best);
            ruledOut = List.copyOf(ruledOut);
        }

        public int daysRuledOut() {
            return ruledOut.stream().mapToInt(RuledOut::days).sum();
        }
    }
}
