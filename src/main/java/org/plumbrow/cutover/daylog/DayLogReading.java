package org.plumbrow.cutover.daylog;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.cutover.CutoverWay;
import org.plumbrow.cutover.OutageFacts;
import org.plumbrow.cutover.OutageMinutesOfProject;
import org.plumbrow.cutover.Outages;
import org.plumbrow.cutover.StepsOfDay;
import org.plumbrow.cutover.daylog.DayLogSheet.About;
import org.plumbrow.cutover.daylog.DayLogSheet.Stand;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads a day log for its page. */
@Service
@Transactional(readOnly = true)
class DayLogReading {

    private final LogDoor door;
    private final Outages outages;
    private final OutageMinutesOfProject minutes;
    private final LogRows rows;
    private final LogPen pen;
    private final Clock clock;
    private final StepsOfDay steps;

    DayLogReading(
            LogDoor door,
            Outages outages,
            OutageMinutesOfProject minutes,
            LogRows rows,
            LogPen pen,
            Clock clock,
            StepsOfDay steps) {
        this.steps = steps;
        this.door = door;
        this.outages = outages;
        this.minutes = minutes;
        this.rows = rows;
        this.pen = pen;
        this.clock = clock;
    }

    /**
     * What was typed and refused, so that it still stands there; nothing on a fresh page.
     *
     * @param stays why a reading outside its limits stays, by quantity
     */
    record Typed(Map<String, String> values, Map<String, String> stays, List<Refusal> refusals) {
        static final Typed NOTHING = new Typed(Map.of(), Map.of(), List.of());

        String wrong(String field) {
            return refusals.stream()
                    .filter(refusal -> refusal.field().equals(field))
                    .map(Refusal::sentence)
                    .findFirst()
                    .orElse("");
        }
    }

    /** The log of the day that is to come or under way, else the newest. */
    DayLogSheet sheet(UUID projectId, Typed typed) {
        ProjectFacts project = door.require(projectId);
        Optional<OutageFacts> live =
                outages.live(projectId).filter(window -> window.state().isAnnounced());
        Optional<DayLog> log = live.isPresent() ? rows.ofWindow(live.get().id()) : rows.latest(projectId);
        if (log.isEmpty()) {
            About about = about(project, live.orElse(null), null);
            Stand stand = before(project, live);
            return new DayLogSheet(
                    about,
                    stand,
                    null,
                    null,
                    null,
                    List.of(),
                    null,
                    null,
                    "",
                    List.of(),
                    List.of(),
                    null,
                    stand == Stand.TO_OPEN ? toOpen(project) : List.of(),
                    PeopleOnSite.NOBODY);
        }
        OutageFacts window = live.isPresent()
                ? live.get()
                : outages.find(log.get().windowId()).orElseThrow();
        return assembled(project, window, log.get(), typed, true);
    }

    private List<DayLogSheet.ToOpenView> toOpen(ProjectFacts project) {
        CutoverWay way = steps.inForce(project.id()).orElse(null);
        boolean generator = Procedure.hasGenerator(project, way);
        LogState fresh = new LogState(
                Procedure.of(way, generator, minutes.of(project, project.site().threePhase())), List.of());
        return Arrays.stream(org.plumbrow.calc.electrical.Service.values())
                .map(service -> toOpen(fresh, service, LogPen.readings(service, generator, project)))
                .toList();
    }

    private static DayLogSheet.ToOpenView toOpen(
            LogState fresh, org.plumbrow.calc.electrical.Service service, Readings readings) {
        return new DayLogSheet.ToOpenView(
                service.name(),
                new StepsToCome(fresh, readings).after(Optional.empty()),
                DayLogSheet.BackView.blank(fresh, readings));
    }

    /** The log of one day, to be looked at; empty if that day has none here. */
    Optional<DayLogSheet> past(UUID projectId, UUID windowId) {
        ProjectFacts project = door.require(projectId);
        return rows.ofWindow(windowId)
                .filter(log -> log.projectId().equals(projectId))
                .map(log -> assembled(project, outages.find(windowId).orElseThrow(), log, Typed.NOTHING, false));
    }

    private Stand before(ProjectFacts project, Optional<OutageFacts> live) {
        LocalDate today = LocalDate.ofInstant(clock.instant(), pen.zone(project.branchId()));
        return live.map(window -> today.isBefore(window.day()) ? Stand.NOT_YET : Stand.TO_OPEN)
                .orElse(Stand.NO_WINDOW);
    }

    private DayLogSheet assembled(
            ProjectFacts project, OutageFacts window, DayLog log, Typed typed, boolean changeable) {
        LogMoment moment = moment(project, window);
        LogState state = new LogState(rows.steps(log.id()), rows.entries(log.id()));
        return new SheetAssembly(about(project, window, log), state, moment, typed, changeable).sheet();
    }

    private LogMoment moment(ProjectFacts project, OutageFacts window) {
        return new LogMoment(clock.instant(), window.day().atTime(window.start()), pen.zone(project.branchId()));
    }

    private About about(ProjectFacts project, @Nullable OutageFacts window, @Nullable DayLog log) {
        return new About(
                project,
                window,
                log,
                window != null && moment(project, window).isLater(),
                door.reaches(project) ? "/projects/" + project.id() + "/outage" : "/cutovers",
                rows.ofProject(project.id()).stream()
                        .filter(other -> log == null || !other.windowId().equals(log.windowId()))
                        .toList(),
                steps.inForce(project.id()).orElse(null));
    }
}
