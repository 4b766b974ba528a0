package org.plumbrow.cutover.daylog;

import java.time.LocalTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.plumbrow.calc.electrical.Service;
import org.plumbrow.database.Ids;
import org.plumbrow.project.Projects;
import org.plumbrow.web.Refusal;
import org.springframework.transaction.annotation.Transactional;

/**
 * A day log written from notes, line by line, as the person who asks would on the pages: the same rules refuse the same
 * things. Readings that the notes do not hold are the usual ones of the service.
 */
@org.springframework.stereotype.Service
@Transactional
public class LogDictation {

    private final DayLogBook book;
    private final LogSteps steps;
    private final LogHolds holds;
    private final LogReversal reversal;
    private final Projects projects;

    LogDictation(DayLogBook book, LogSteps steps, LogHolds holds, LogReversal reversal, Projects projects) {
        this.book = book;
        this.steps = steps;
        this.holds = holds;
        this.reversal = reversal;
        this.projects = projects;
    }

    /**
     * Opens the log on the day of its window.
     *
     * @param decideBy latest minute to decide to reverse, with its reason
     */
    public void open(UUID projectId, String personInCharge, LocalTime decideBy, String reason) {
        refused(book.open(projectId, service(projectId), personInCharge));
        must(reversal.latest(projectId, new LogReversal.Setting(Ids.next(), decideBy, 20, 15, 10, reason)));
    }

    /** @param line {@code 7} or {@code H2} @param names of those who sign, in their order @param trades likewise */
    public void line(UUID projectId, String line, List<String> names, List<String> trades) {
        if (!line.startsWith("H")) {
            must(steps.done(projectId, new LogSteps.Work(Ids.next(), line, usual(projectId, line), Set.of(), null)));
            return;
        }
        Hold hold = Hold.valueOf(line);
        for (int i = 0; i < hold.parts().size(); i++) {
            must(holds.sign(
                    projectId,
                    new LogHolds.Signing(Ids.next(), hold, hold.parts().get(i), names.get(i), trades.get(i), null)));
        }
    }

    public void close(UUID projectId) {
        refused(book.close(projectId));
    }

    private Service service(UUID projectId) {
        return projects.factsUnchecked(projectId).site().threePhase()
                ? Service.WYE_208_120
                : Service.SINGLE_PHASE_120_240;
    }

    private Map<String, String> usual(UUID projectId, String step) {
        var project = projects.factsUnchecked(projectId);
        var site = project.site();
        Readings readings =
                new Readings(service(projectId), site.generator(), site.has(org.plumbrow.project.SiteLoad.DAIRY));
        Map<String, String> typed = new HashMap<>();
        readings.of(step).stream()
                .filter(Asked::required)
                .forEach(asked -> typed.put(asked.quantity(), usual(readings, asked)));
        return typed;
    }

    private static String usual(Readings readings, Asked asked) {
        if (asked.isChoice()) {
            return asked.choices().get(0).value();
        }
        if (asked.quantity().startsWith("dead-")) {
            return "0";
        }
        return readings.service()
                .pair(asked.quantity())
                .map(pair -> "%.1f"
                        .formatted((pair.limits().aLeastV() + pair.limits().aMostV()) / 2))
                .orElseGet(() -> usualWithoutLimits(asked));
    }

    private static String usualWithoutLimits(Asked asked) {
        return switch (asked.quantity()) {
            case Readings.INSULATION -> "550";
            case Readings.LIVE_BEFORE, Readings.LIVE_AFTER -> "121";
            default -> asked.isNumber() ? "6" : "275 in·lb";
        };
    }

    private static void refused(Optional<Refusal> no) {
        no.ifPresent(refusal -> {
            throw new IllegalArgumentException(refusal.sentence());
        });
    }

    private static void must(LogPen.Said said) {
        if (!said.isStored()) {
            throw new IllegalArgumentException(said.refusals().get(0).sentence());
        }
    }
}
