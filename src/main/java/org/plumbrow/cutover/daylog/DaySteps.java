package org.plumbrow.cutover.daylog;

import java.time.Clock;
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
import org.plumbrow.cutover.StepsOfDay.Made;
import org.plumbrow.project.Journal;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectTitle;
import org.plumbrow.project.ProjectTitles;
import org.plumbrow.web.Access;
import org.plumbrow.web.May;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The steps of the day before the day: made from the design revision in force, looked at, made anew when it changes. */
@Service
@Transactional
class DaySteps {

    private final LogDoor door;
    private final Access access;
    private final Outages outages;
    private final StepsOfDay steps;
    private final OutageMinutesOfProject minutes;
    private final LogRows rows;
    private final ProjectTitles titles;
    private final Journal journal;
    private final Clock clock;

    DaySteps(
            LogDoor door,
            Access access,
            Outages outages,
            StepsOfDay steps,
            OutageMinutesOfProject minutes,
            LogRows rows,
            ProjectTitles titles,
            Journal journal,
            Clock clock) {
        this.door = door;
        this.access = access;
        this.outages = outages;
        this.steps = steps;
        this.minutes = minutes;
        this.rows = rows;
        this.titles = titles;
        this.journal = journal;
        this.clock = clock;
    }

    /**
     * @param window null while none is announced
     * @param way by the revision in force; null while none is frozen
     * @param made null before they were made
     * @param open the day log is open: its steps stay as they were
     */
    record Sheet(
            ProjectTitle title,
            ProjectFacts project,
            @Nullable OutageFacts window,
            @Nullable CutoverWay way,
            @Nullable Made made,
            boolean open,
            boolean mayRun,
            List<LogStep> steps) {

        public boolean isCurrent() {
            return way != null && made != null && made.revision().equals(way.revision());
        }

        /** Made from a revision that is no longer in force. */
        public boolean isOld() {
            return way != null && made != null && !made.revision().equals(way.revision());
        }
    }

    @Transactional(readOnly = true)
    public Sheet sheet(UUID projectId) {
        ProjectFacts project = door.require(projectId);
        OutageFacts window = announced(projectId).orElse(null);
        CutoverWay way = steps.inForce(projectId).orElse(null);
        Optional<DayLog> log = window == null ? Optional.empty() : rows.ofWindow(window.id());
        return new Sheet(
                titles.of(project),
                project,
                window,
                way,
                window == null ? null : steps.made(window.id()).orElse(null),
                log.isPresent(),
                access.may(project.branchId(), May.RUN_CUTOVER),
                log.map(one -> rows.steps(one.id())).orElseGet(() -> asOf(project, way)));
    }

    private List<LogStep> asOf(ProjectFacts project, @Nullable CutoverWay way) {
        boolean threePhase = way == null
                ? project.site().threePhase()
                : way.drawnService()
                        .map(service -> service.isThreePhase())
                        .orElse(project.site().threePhase());
        boolean generator =
                project.site().generator() || way != null && !way.transfer().isEmpty();
        return Procedure.of(way, generator, minutes.of(project, threePhase));
    }

    private Optional<OutageFacts> announced(UUID projectId) {
        return outages.live(projectId).filter(window -> window.state().isAnnounced());
    }

    /** @param seen letter of the revision whose steps the person looked at */
    public Optional<Refusal> make(UUID projectId, String seen) {
        door.require(projectId);
        Optional<OutageFacts> window = announced(projectId);
        Optional<CutoverWay> way = steps.inForce(projectId);
        if (window.isEmpty()) {
            return Optional.of(Refusal.ofForm("No outage is announced. Book its window first."));
        }
        if (way.isEmpty()) {
            return Optional.of(
                    Refusal.ofForm("No revision of the design is frozen: there is nothing to make them from."));
        }
        if (rows.ofWindow(window.get().id()).isPresent()) {
            return Optional.of(Refusal.ofForm("The day log is open: its steps stay as they were when it was opened."));
        }
        if (!way.get().revision().equals(seen)) {
            return Optional.of(Refusal.ofForm("Revision " + way.get().revision()
                    + " was frozen meanwhile. These are its steps: look at them, then make them."));
        }
        steps.make(window.get(), way.get(), access.actor().name(), clock.instant());
        journal.append(
                JournalEvent.of(
                        projectId,
                        "outage.steps",
                        "Steps of the day were made from design revision " + seen + ". "
                                + way.get().sentence(),
                        Map.of("revision", seen)),
                access.actor(),
                clock.instant());
        return Optional.empty();
    }
}
