package org.plumbrow.permit;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.plumbrow.calc.duration.ActivityCode;
import org.plumbrow.web.Actor;

/**
 * What a project's waits say by now of one activity of its plan. Published in the change's transaction.
 *
 * @param sent first asked for @param expected the latest promised day of what is open @param received the last came, all good
 */
public record WaitMoved(
        UUID projectId,
        ActivityCode activity,
        LocalDate sent,
        Optional<LocalDate> expected,
        Optional<LocalDate> received,
        Actor by) {

    /** @param all waits of the project @return nothing while nothing was asked for */
    static Optional<WaitMoved> of(UUID projectId, ActivityCode activity, List<Awaited> all, Actor by) {
        List<Awaited> of = all.stream()
                .filter(one -> one.kind().activity().filter(activity::equals).isPresent())
                .toList();
        boolean done = of.stream().noneMatch(Awaited::isOpen) && of.stream().anyMatch(Awaited::isGood);
        Optional<LocalDate> received =
                latest(of.stream().filter(Awaited::isGood).map(Awaited::receivedOn));
        return of.stream()
                .map(Awaited::sentOn)
                .filter(Objects::nonNull)
                .min(LocalDate::compareTo)
                .map(sent -> new WaitMoved(
                        projectId,
                        activity,
                        sent,
                        done
                                ? Optional.empty()
                                : latest(of.stream().filter(Awaited::isOpen).map(Awaited::promisedOn)),
                        done ? received : Optional.empty(),
                        by));
    }

    private static Optional<LocalDate> latest(Stream<LocalDate> days) {
        return days.filter(Objects::nonNull).max(LocalDate::compareTo);
    }
}
