package org.plumbrow.cutover;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.plumbrow.calc.calendar.ClockWords;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.outage.ranking.AnimalDays.FlockEvent;
import org.plumbrow.calc.outage.ranking.Factor;
import org.plumbrow.calc.outage.ranking.FactorKind;
import org.plumbrow.calc.outage.ranking.Verdict;
import org.plumbrow.cutover.ReadyRows.Said;
import org.plumbrow.cutover.ReadyRows.State;
import org.plumbrow.project.gate.AnswerKind;
import org.plumbrow.project.gate.Finding;

/** What the gate to the cutover finds in the day before. Pure: planning aids, people decide. */
final class DayBeforeFindings {

    private static final Finding NO_WINDOW =
            new Finding.CannotTell("No outage is announced.", "Choose and book a window on the outage page.");
    private static final Set<FactorKind> RUN_AND_FUEL = EnumSet.of(FactorKind.GENERATOR_RUN, FactorKind.GENERATOR_FUEL);
    private static final Set<FactorKind> MILK =
            EnumSet.of(FactorKind.AFTER_MILKING, FactorKind.BEFORE_MILKING, FactorKind.TANK);

    private DayBeforeFindings() {}

    /** cutover.5: the loads hold out twice the planned minutes, or a generator that was tried covers them. */
    static Finding loads(DayBefore day) {
        if (!day.announced()) {
            return NO_WINDOW;
        }
        Optional<Factor> stands = day.of(FactorKind.RIDE_THROUGH);
        if (!day.suffers() || stands.isEmpty()) {
            return new Finding.CannotTell(
                    "Nobody has written down what suffers without power.",
                    "Write it on the page of what stands without power.");
        }
        Factor stand = stands.get();
        return stand.verdict() == Verdict.MET ? new Finding.Satisfied(stand.sentence()) : covered(day, stand);
    }

    private static Finding covered(DayBefore day, Factor stand) {
        List<Factor> generator = day.of(ReadyKnown.GENERATOR);
        if (generator.isEmpty()) {
            return stand.verdict() == Verdict.OPEN
                    ? new Finding.CannotTell(
                            stand.sentence(), "Ask for the weather of the site, or write down a generator.")
                    : new Finding.Broken(stand.sentence(), stand.cure());
        }
        Optional<Finding> against = againstGenerator(day, ReadyKnown.GENERATOR, stand.sentence() + " ");
        return against.orElseGet(
                () -> new Finding.Satisfied(stand.sentence() + " The generator covers it: " + sentences(generator)));
    }

    private static Optional<Finding> againstGenerator(DayBefore day, Set<FactorKind> kinds, String before) {
        Optional<Said> wrong = day.said(ReadyItem.FUEL, State.WRONG);
        if (wrong.isPresent()) {
            return Optional.of(new Finding.Broken(
                    before + "The generator is not ready: " + wrong.get().note() + ".",
                    "Put it right, then say so on the readiness page."));
        }
        List<Factor> beyond = day.beyond(kinds);
        if (!beyond.isEmpty()) {
            return Optional.of(new Finding.Broken(before + sentences(beyond), cures(beyond)));
        }
        return day.runAhead()
                ? Optional.of(new Finding.CannotTell(
                        before + "The generator’s run under the farm’s load is planned and has not been yet.",
                        "Write down the day on which it ran."))
                : Optional.empty();
    }

    /** cutover.6: run under the farm's load in the last 7 days, fuel for three outages. */
    static Finding generatorRan(DayBefore day) {
        List<Factor> these = day.of(RUN_AND_FUEL);
        if (!day.announced() || these.isEmpty()) {
            return new Finding.CannotTell(
                    "The generator and what it carries are not written down.",
                    "Write them on the page of what stands without power, or give the days by hand.");
        }
        return againstGenerator(day, RUN_AND_FUEL, "")
                .orElseGet(() -> new Finding.Recorded(sentences(these), Set.of(AnswerKind.READING)));
    }

    /** cutover.7: no catch or placement in the 24 h after the planned end. */
    static Finding flock(DayBefore day) {
        List<Factor> beyond = day.beyond(Set.of(FactorKind.FLOCK));
        if (!beyond.isEmpty()) {
            return new Finding.Broken(sentences(beyond), cures(beyond));
        }
        FlockEvent next = day.nextFlock();
        if (!day.announced() || next == null) {
            return new Finding.CannotTell(
                    "No catch or placement after the outage is written down.",
                    "Ask the grower, and confirm it or write the next one down.");
        }
        return new Finding.Recorded(
                "No catch or placement in the 24 h after it. Next: " + next.words() + ", "
                        + DayWords.of(next.at().toLocalDate()) + ", "
                        + ClockWords.of(next.at().toLocalTime()) + ".",
                Set.of(AnswerKind.CONFIRMATION));
    }

    /** cutover.8: not within 2 h of milking on either side, and the tank cold. */
    static Finding milk(DayBefore day) {
        List<Factor> these = day.of(MILK);
        if (!day.announced()) {
            return NO_WINDOW;
        }
        if (these.isEmpty()) {
            return new Finding.CannotTell(
                    "Milkings and the milk in the tank are not written down.",
                    "Write them on the page of what stands without power.");
        }
        List<Factor> beyond = day.beyond(MILK);
        return beyond.isEmpty()
                ? new Finding.Satisfied(sentences(these))
                : new Finding.Broken(sentences(beyond), cures(beyond));
    }

    /** cutover.10: the window and two hours more. What a typical year does not know, a person reads off a forecast. */
    static Finding weather(DayBefore day) {
        if (!day.announced()) {
            return NO_WINDOW;
        }
        Optional<Said> wrong = day.said(ReadyItem.FORECAST, State.WRONG);
        if (wrong.isPresent()) {
            return new Finding.Broken(
                    "The forecast speaks against it: " + wrong.get().note() + ".",
                    "Take the rain date or move the window.");
        }
        List<Factor> broken =
                day.of(ReadyKnown.WEATHER).stream().filter(Factor::isBroken).toList();
        if (!broken.isEmpty()) {
            return new Finding.Broken(sentences(broken), cures(broken));
        }
        Optional<Said> looked = day.said(ReadyItem.FORECAST, State.READY);
        if (looked.isPresent()) {
            return new Finding.Satisfied(
                    "Forecast looked at, says " + looked.get().by() + ". " + known(day));
        }
        return day.isOpen(ReadyKnown.WEATHER)
                ? new Finding.CannotTell(
                        "A typical year does not know the rain and lightning of a day.",
                        "Paste a forecast, or say on the readiness page that it was looked at.")
                : new Finding.Satisfied(known(day));
    }

    /** cutover.11: a free crew with two qualified people, its equipment free; tools and parts a person counts. */
    static Finding crew(DayBefore day) {
        if (!day.announced()) {
            return NO_WINDOW;
        }
        List<Factor> beyond = day.beyond(ReadyKnown.CREW);
        if (!beyond.isEmpty()) {
            return new Finding.Broken(sentences(beyond), cures(beyond));
        }
        Optional<Said> wrong = day.said(ReadyItem.PARTS, State.WRONG);
        if (wrong.isPresent()) {
            return new Finding.Broken(
                    "Parts or tools are not right: " + wrong.get().note() + ".",
                    "Put it right, then say so on the readiness page.");
        }
        String known = sentences(day.of(ReadyKnown.CREW));
        if (day.isOpen(ReadyKnown.CREW)) {
            return new Finding.CannotTell(known, "Write on the crew’s page how many of it are qualified.");
        }
        return day.said(ReadyItem.PARTS, State.READY)
                .<Finding>map(said ->
                        new Finding.Satisfied(known + " Parts and calibrated tools counted, says " + said.by() + "."))
                .orElseGet(() -> new Finding.CannotTell(
                        known + " Nobody has counted parts and calibrated tools.",
                        "Say it on the readiness page once they are on the truck."));
    }

    private static String known(DayBefore day) {
        return sentences(day.of(ReadyKnown.WEATHER).stream()
                .filter(factor -> factor.verdict() != Verdict.OPEN)
                .toList());
    }

    private static String sentences(List<Factor> factors) {
        return joined(factors.stream().map(Factor::sentence));
    }

    private static String cures(List<Factor> factors) {
        return joined(factors.stream().map(Factor::cure));
    }

    private static String joined(Stream<String> sentences) {
        return sentences.collect(Collectors.joining(" ")).strip();
    }
}
