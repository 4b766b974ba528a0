package org.plumbrow.schedule.lookahead;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.planning.Clash;
import org.plumbrow.calc.planning.Finding;
import org.plumbrow.calc.planning.IdleGap;
import org.plumbrow.schedule.lookahead.Decision.Link;
import org.plumbrow.schedule.plan.BindingChain;
import org.plumbrow.schedule.plan.PlanFinding;
import org.plumbrow.schedule.plan.PlannedPromise;
import org.plumbrow.schedule.plan.PlannedPromise.Outlook;
import org.plumbrow.schedule.plan.PlannedRow;

/** What needs a manager's decision, the worst first: broken promises, double bookings, what cannot hold, risks, idle crews. */
final class Decisions {

    private static final int IDLE_FROM_HALF_DAYS = 10;

    private final Sheet sheet;
    private final Map<UUID, PlannedRow> rows;

    Decisions(Sheet sheet) {
        this.sheet = sheet;
        rows = sheet.plan().byActivity();
    }

    List<Decision> of(Sheet.Looked looked) {
        List<Decision> decisions = new ArrayList<>();
        sheet.plan().promises().stream()
                .filter(promise -> promise.outlook() == Outlook.BREAKS)
                .sorted(Comparator.comparingInt(PlannedPromise::halfDaysLate).reversed())
                .forEach(promise -> decisions.add(breaks(promise)));
        looked.clashes().forEach(clash -> decisions.add(twice(clash)));
        sheet.plan().findings().stream()
                .filter(finding -> !isSaid(finding, looked.clashes()))
                .forEach(finding -> decisions.add(finding(finding)));
        sheet.plan().promises().stream()
                .filter(promise -> promise.outlook() == Outlook.AT_RISK)
                .forEach(promise -> decisions.add(atRisk(promise)));
        looked.idle().stream()
                .filter(gap -> gap.halfDays() >= IDLE_FROM_HALF_DAYS)
                .sorted(Comparator.comparing(IdleGap::first))
                .forEach(gap -> decisions.add(idle(gap)));
        return decisions;
    }

    /** A double booking that is drawn in the weeks shown is said there, with both its works. */
    private static boolean isSaid(PlanFinding finding, List<Clash> clashes) {
        return finding.kind().equals(Finding.Kind.BOOKED_TWICE.name())
                && finding.activityId().map(UUID::toString).stream()
                        .anyMatch(id -> clashes.stream()
                                .anyMatch(clash -> clash.activityId().equals(id)
                                        || clash.otherActivityId().equals(id)));
    }

    private Decision breaks(PlannedPromise promise) {
        return new Decision(
                "trouble",
                "%s breaks its promise by %s"
                        .formatted(
                                sheet.projectName(promise.projectId()),
                                LookAheadWords.workingDays(2 * promise.daysLate())),
                (promised(promise) + " "
                                + BoundWords.ofBroken(promise, sheet.plan().head()))
                        .strip(),
                List.of(why(promise)));
    }

    private Decision atRisk(PlannedPromise promise) {
        String spare =
                promise.daysSpare() == 0 ? "no working day" : LookAheadWords.workingDays(2 * promise.daysSpare());
        return new Decision(
                "risk",
                "%s has %s to spare".formatted(sheet.projectName(promise.projectId()), spare),
                promised(promise),
                List.of(why(promise)));
    }

    private String promised(PlannedPromise promise) {
        String cause = promise.bindingActivityId()
                .map(binding -> BindingChain.of(rows, binding).cause())
                .orElse("");
        return "Promised %s for %s; planned %s. %s"
                .formatted(
                        promise.milestone(),
                        DayWords.of(promise.promisedOn()),
                        promise.finish()
                                .map(finish -> DayWords.of(finish.date()))
                                .orElse("no date"),
                        cause)
                .strip();
    }

    /** To the work that decides the promise: why it ends then, and whether the promise can be kept. */
    private Link why(PlannedPromise promise) {
        String dates = "/projects/" + promise.projectId() + "/schedule";
        return promise.bindingActivityId()
                .map(rows::get)
                .map(row -> new Link("Why, and what would keep it", dates + "/" + row.key() + "/why"))
                .orElse(new Link("Its dates", dates));
    }

    private Decision twice(Clash clash) {
        List<Link> links = new ArrayList<>();
        List<String> names = new ArrayList<>();
        for (String id : List.of(clash.activityId(), clash.otherActivityId())) {
            PlannedRow row = rows.get(UUID.fromString(id));
            names.add(sheet.projectName(row.projectId()) + ", " + row.words());
            links.add(new Link(
                    "Move " + row.words() + " at " + sheet.projectName(row.projectId()),
                    "/projects/" + row.projectId() + "/schedule/" + row.key()));
        }
        return new Decision(
                "trouble",
                "%s is booked twice, %s"
                        .formatted(sheet.crewName(clash.crewId()), CrewBars.span(clash.first(), clash.last())),
                "%s and %s. A draft cannot be published until one moves.".formatted(names.get(0), names.get(1)),
                links);
    }

    private Decision finding(PlanFinding finding) {
        List<Link> links = finding.activityId()
                .map(rows::get)
                .map(row -> "/projects/" + row.projectId() + "/schedule/" + row.key())
                .map(href -> List.of(new Link("Open it", href), new Link("What clashes there", href + "/why")))
                .orElse(List.of());
        return new Decision(finding.stopsPublishing() ? "trouble" : "risk", finding.sentence(), "", links);
    }

    private Decision idle(IdleGap gap) {
        return new Decision(
                "risk",
                "%s is idle for %s from %s"
                        .formatted(
                                sheet.crewName(gap.crewId()),
                                LookAheadWords.workingDays(gap.halfDays()),
                                DayWords.of(gap.first().date())),
                "The plan found no work for it that could start then.",
                List.of());
    }
}
