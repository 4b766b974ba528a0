package org.plumbrow.status.page;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.plumbrow.cutover.OutageFacts;
import org.plumbrow.notice.CalendarFile;
import org.plumbrow.status.page.CustomerView.Named;
import org.springframework.stereotype.Component;

/**
 * The hours without power as an entry for the customer's own calendar: with what to do before, or as one that no longer
 * holds. It keeps its name when the day moves, so that a calendar moves it along.
 */
@Component
class PowerOffCalendar {

    private final CustomerWords words;
    private final Preparing preparing;
    private final CustomerPage page;

    PowerOffCalendar(CustomerWords words, Preparing preparing, CustomerPage page) {
        this.words = words;
        this.preparing = preparing;
        this.page = page;
    }

    /** Empty when there is no appointment to tell of. */
    Optional<byte[]> of(CustomerFacts facts) {
        Situation now = facts.situation();
        if (!now.hasAppointment()) {
            return Optional.empty();
        }
        OutageFacts window = now.outage();
        boolean letGo = now.is(Situation.Kind.LET_GO);
        CalendarFile.Entry entry = new CalendarFile.Entry(
                UUID.nameUUIDFromBytes(("power-off/" + facts.project().id()).getBytes(StandardCharsets.UTF_8)),
                sequence(facts.windows()),
                facts.now(),
                at(facts, window, window.start()),
                at(facts, window, window.start()).plusSeconds(60L * window.planForMinutes()),
                words.say(letGo ? "status.calendar.letgo" : "status.calendar.title"),
                facts.project().site().address(),
                letGo ? "" : notes(facts, now),
                letGo);
        return Optional.of(CalendarFile.of(words.say("status.firm", facts.branchName()), List.of(entry)));
    }

    private static Instant at(CustomerFacts facts, OutageFacts window, LocalTime time) {
        return window.day().atTime(time).atZone(facts.zone()).toInstant();
    }

    /** Grows with each window and with each change of one. */
    private static long sequence(List<OutageFacts> windows) {
        return windows.stream().mapToLong(window -> window.version() + 1).sum();
    }

    private String notes(CustomerFacts facts, Situation now) {
        String before = preparing.of(now, facts.project()).stream()
                .map(PowerOffCalendar::line)
                .collect(Collectors.joining("\n"));
        String call = page.of(facts).callers().stream()
                .filter(caller -> !caller.phone().isEmpty())
                .map(caller -> caller.name() + ", " + caller.phone())
                .collect(Collectors.joining("\n"));
        return call.isEmpty() ? before : before + "\n\n" + words.say("status.calendar.call") + "\n" + call;
    }

    private static String line(Named named) {
        return "- " + named.name() + " " + named.words();
    }
}
