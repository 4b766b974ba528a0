package org.plumbrow.cutover;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.outage.ranking.HourQuestion.StopsCounting;
import org.plumbrow.permit.Awaited;
import org.plumbrow.permit.AwaitedKind;

/** What is written of permits and inspections that stops a connection on some day. Pure; what nobody wrote down stops nothing. */
final class PermitsOfOutage {

    private static final Set<AwaitedKind> PERMITS =
            Set.of(AwaitedKind.PERMIT, AwaitedKind.BUILDING_PERMIT, AwaitedKind.AGREEMENT);

    private PermitsOfOutage() {}

    /** @param today from which a correction that nobody has had looked at again stops every day */
    static List<StopsCounting> of(List<Awaited> waits, LocalDate today) {
        Stream<StopsCounting> ending = waits.stream()
                .filter(one -> PERMITS.contains(one.kind()) && one.isGood() && !isRenewed(one, waits))
                .flatMap(one -> Stream.ofNullable(one.expiresOn())
                        .map(last ->
                                new StopsCounting(last, one.what() + " counts only until " + DayWords.withYear(last))));
        Stream<StopsCounting> corrections = waits.stream()
                .filter(one -> one.kind() == AwaitedKind.SERVICE_INSPECTION && !one.isOpen() && !one.isGood())
                .filter(one -> waits.stream().noneMatch(one::isAskedAgainBy))
                .map(one -> new StopsCounting(
                        today.minusDays(1), one.what() + " asks for a correction and has not been asked for again"));
        return Stream.concat(ending, corrections).toList();
    }

    private static boolean isRenewed(Awaited one, List<Awaited> waits) {
        return waits.stream().anyMatch(other -> one.isAskedAgainBy(other) && other.isGood());
    }
}
