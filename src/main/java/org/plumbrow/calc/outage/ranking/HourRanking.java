package org.plumbrow.calc.outage.ranking;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.plumbrow.calc.outage.ranking.Deadlines.Deadline;
import org.plumbrow.calc.outage.ranking.LoadHours.Stands;
import org.plumbrow.calc.ridethrough.GeneratorCover;

/**
 * The hours in which the power can be off, best first: nothing to look at before something to look at, then the chance
 * that the power is back in time in steps of 5 of 100 (less is noise), then the earlier day, the larger margin, the earlier
 * start.
 *
 * @param windows those without a broken factor
 * @param hoursLookedAt how many starts were judged
 * @param relaxations only where there is no window: single ones first, the smallest first, then pairs; empty where every
 *     hour has three or more against it
 */
public record HourRanking(List<HourWindow> windows, int hoursLookedAt, List<Relaxation> relaxations) {

    /** When a generator is imagined to stop. */
    public static final int GENERATOR_STOPS_MINUTE = 30;

    private static final double CHANCE_STEP = 0.05;
    private static final double CHANCE_NOISE = 0.001;

    private static final Comparator<HourWindow> BEST_FIRST = Comparator.comparing(HourWindow::verdict)
            .thenComparing(window -> -Math.floor((window.chanceBack().orElse(0) + CHANCE_NOISE) / CHANCE_STEP))
            .thenComparing(window -> window.start().toLocalDate())
            .thenComparing(HourWindow::margin, Comparator.reverseOrder())
            .thenComparing(HourWindow::start);

    public HourRanking {
        windows = List.copyOf(windows);
        relaxations = List.copyOf(relaxations);
    }

    public static HourRanking of(HourQuestion question) {
        RuleBook book = new RuleBook(question);
        Maker maker = new Maker(question, book);
        Relaxations relaxations = new Relaxations(book.clock);
        List<HourWindow> windows = new ArrayList<>();
        int last = book.clock.at(question.through());
        int looked = 0;
        for (int start = book.clock.at(question.from()); start <= last; start += question.everyMinutes()) {
            looked++;
            List<Factor> factors = book.judge(start);
            if (factors.stream().noneMatch(Factor::isBroken)) {
                windows.add(maker.window(start, factors));
            } else if (windows.isEmpty()) {
                relaxations.offer(
                        start, factors.stream().filter(Factor::isBroken).toList());
            }
        }
        windows.sort(BEST_FIRST);
        return new HourRanking(windows, looked, windows.isEmpty() ? relaxations.smallest() : List.of());
    }

    /** One start opened in full, whether it is a window or not; it lies within what the question looks at. */
    public static HourWindow opened(HourQuestion question, LocalDateTime start) {
        if (start.isBefore(question.from()) || start.isAfter(question.through())) {
            throw new IllegalArgumentException(start + " is not looked at");
        }
        RuleBook book = new RuleBook(question);
        int minute = book.clock.at(start);
        return new Maker(question, book).window(minute, book.judge(minute));
    }

    private record Maker(HourQuestion question, RuleBook book, Chance chance) {

        Maker(HourQuestion question, RuleBook book) {
            this(question, book, new Chance(question.work()));
        }

        HourWindow window(int start, List<Factor> factors) {
            int end = start + question.work().planned();
            Verdict worst = factors.stream()
                    .map(Factor::verdict)
                    .max(Comparator.naturalOrder())
                    .orElse(Verdict.MET);
            Deadline by = book.deadlines.of(start);
            boolean binds = by.minute() != SiteClock.NEVER;
            var crew = book.crews.freeAt(start);
            return new HourWindow(
                    book.clock.time(start),
                    book.clock.time(end),
                    crew.map(unit -> unit.offer().id()).orElse(""),
                    crew.map(unit -> unit.offer().name()).orElse(""),
                    worst,
                    chanceBack(start, end),
                    binds ? Optional.of(book.clock.time(by.minute())) : Optional.empty(),
                    binds ? by.words() : "",
                    binds ? OptionalInt.of(by.minute() - end) : OptionalInt.empty(),
                    book.clock.time(worst == Verdict.BROKEN ? start : book.latestStart(start)),
                    binds
                            ? Optional.of(book.clock.time(
                                    by.minute() - question.wayBack().minutes()))
                            : Optional.empty(),
                    factors,
                    generatorStops(start, end));
        }

        private OptionalDouble chanceBack(int start, int end) {
            boolean loadsCount = question.generator().isEmpty() && !book.loads.isEmpty();
            if (question.customer().medicalEquipment() || loadsCount && !book.loads.isKnown(start, end)) {
                return OptionalDouble.empty();
            }
            int need = book.deadlines.suffering(start).minute();
            return OptionalDouble.of(chance.of(
                    loadsCount ? book.loads.worst(start, end) : Stands.ENDLESS,
                    need == SiteClock.NEVER ? Double.POSITIVE_INFINITY : need - start));
        }

        private Optional<GeneratorCover.Stopped> generatorStops(int start, int end) {
            return question.generator()
                    .filter(generator -> book.loads.isKnown(start, end))
                    .map(generator -> GeneratorCover.ifItStops(
                            GENERATOR_STOPS_MINUTE,
                            question.work().planned(),
                            book.loads.worst(start, end).shortEnd() / 2));
        }
    }
}
