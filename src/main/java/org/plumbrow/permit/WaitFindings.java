package org.plumbrow.permit;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.project.gate.AnswerKind;
import org.plumbrow.project.gate.Finding;

/** How an item of a gate stands whose paper is waited for. Pure. */
final class WaitFindings {

    private WaitFindings() {}

    /** @param asked all waits of the project */
    static Finding ofKind(AwaitedKind kind, List<Awaited> asked) {
        return paper(kind, of(kind, asked));
    }

    /** @param asked all waits of this kind; of those about one thing the one asked for last counts */
    static Finding paper(AwaitedKind kind, List<Awaited> asked) {
        List<Awaited> last = asked.stream()
                .filter(one -> asked.stream().noneMatch(one::isAskedAgainBy))
                .toList();
        Optional<Awaited> refused =
                last.stream().filter(one -> !one.isOpen() && !one.isGood()).findFirst();
        if (refused.isPresent()) {
            return refused(refused.get());
        }
        Optional<Awaited> open = last.stream().filter(Awaited::isOpen).findFirst();
        if (last.isEmpty() || open.isPresent()) {
            return new Finding.CannotTell(
                    open.map(WaitFindings::stands).orElse(kind.words() + ": no wait is written down."),
                    "Write on the page of waits what came, or answer here.");
        }
        return came(last);
    }

    /**
     * cutover.4: the inspection of the service side; at a home one inspection is for the service side and the array.
     *
     * @param homeOnly nothing but a home is on the site
     */
    static Finding serviceSide(boolean homeOnly, List<Awaited> asked) {
        List<Awaited> service = of(AwaitedKind.SERVICE_INSPECTION, asked);
        List<Awaited> both = of(AwaitedKind.INSPECTION, asked);
        return homeOnly && service.isEmpty() && !both.isEmpty()
                ? paper(AwaitedKind.INSPECTION, both)
                : paper(AwaitedKind.SERVICE_INSPECTION, service);
    }

    private static List<Awaited> of(AwaitedKind kind, List<Awaited> asked) {
        return asked.stream().filter(one -> one.kind() == kind).toList();
    }

    private static Finding refused(Awaited one) {
        return new Finding.Broken(
                "%s: %s."
                        .formatted(
                                one.what(),
                                Optional.ofNullable(one.result())
                                        .map(WaitResult::words)
                                        .orElse("refused")),
                "Have it put right and asked for again, as a wait of its own.");
    }

    private static String stands(Awaited one) {
        if (one.sentOn() == null) {
            return one.what() + ": not asked for yet.";
        }
        String promised = one.promisedOn() == null ? "" : ", promised for " + DayWords.withYear(one.promisedOn());
        return "%s: asked for %s%s.".formatted(one.what(), DayWords.withYear(one.sentOn()), promised);
    }

    private static Finding came(List<Awaited> good) {
        Awaited latest = good.stream()
                .filter(one -> one.receivedOn() != null)
                .max(Comparator.comparing(Awaited::receivedOn))
                .orElseThrow();
        boolean papers = good.stream().allMatch(one -> one.paperId() != null);
        Set<AnswerKind> holds = papers ? EnumSet.of(AnswerKind.DATE, AnswerKind.DOCUMENT) : EnumSet.of(AnswerKind.DATE);
        return new Finding.Recorded(
                "%s: came %s%s."
                        .formatted(
                                latest.what(),
                                DayWords.withYear(latest.receivedOn()),
                                papers ? "" : "; the paper itself is not named there"),
                holds);
    }
}
