package org.plumbrow.schedule.projectdates;

import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.schedule.activity.ActivityRow;
import org.plumbrow.schedule.activity.Moves;
import org.plumbrow.schedule.activity.Pin;
import org.plumbrow.schedule.activity.PlanMove;
import org.plumbrow.schedule.plan.MovedProject;
import org.plumbrow.schedule.plan.PlannedPromise;
import org.plumbrow.schedule.plan.PlannedRow;
import org.plumbrow.schedule.plan.WhatIf;
import org.plumbrow.web.Option;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What the page shows on which a start is moved: where the activity stands, and what another start would do. */
@Service
@Transactional(readOnly = true)
class StartPage {

    private final ActivityPage page;
    private final Moves moves;
    private final Projects projects;
    private final WhatIf whatIf;

    StartPage(ActivityPage page, Moves moves, Projects projects, WhatIf whatIf) {
        this.page = page;
        this.moves = moves;
        this.projects = projects;
        this.whatIf = whatIf;
    }

    /**
     * @param stands in the draft if there is one, else in the published plan; empty if it has no place
     * @param with the crew's name there; empty for none
     * @param lastMove number of the branch's last move, 0 before the first
     * @param latest what was moved last and not taken back
     */
    record Shown(
            ActivityPage.Shown page,
            Optional<PlannedRow> stands,
            String with,
            long lastMove,
            Optional<PlanMove> latest) {

        public ActivityRow row() {
            return page.activity().row();
        }

        /** "Racking, Sedge Hollow Dairy". */
        public String what() {
            return page.activity().title() + ", " + page.project().name();
        }

        /** "Mon, Mar 8 to Fri, Mar 12, Crew 1"; empty if it has no place. */
        public String place() {
            return stands.map(row -> DatesWords.span(row.start(), row.finish()) + (with.isEmpty() ? "" : ", " + with))
                    .orElse("");
        }
    }

    /** @throws org.plumbrow.web.NotFound if the project has no such activity */
    Shown show(UUID projectId, String activityKey) {
        ActivityPage.Shown shown = page.show(projectId, activityKey);
        UUID branchId = shown.project().branchId();
        Optional<PlannedRow> stands =
                shown.activity().draft().or(() -> shown.activity().planned());
        return new Shown(
                shown,
                stands,
                crewName(shown, stands.flatMap(PlannedRow::crewId)),
                moves.lastNumber(branchId),
                moves.last(branchId));
    }

    private static String crewName(ActivityPage.Shown shown, Optional<UUID> crewId) {
        return shown.crews().stream()
                .filter(option -> crewId.map(UUID::toString)
                        .filter(option.value()::equals)
                        .isPresent())
                .map(Option::words)
                .findFirst()
                .orElse("");
    }

    StartEffect effect(Shown shown, Pin pin) {
        WhatIf.Outcome outcome =
                whatIf.fixing(shown.page.project().branchId(), shown.row().id(), pin);
        Map<UUID, ProjectFacts> facts = projects
                .factsUnchecked(Stream.of(outcome.changes().projects(), of(outcome.before()), of(outcome.after()))
                        .flatMap(Collection::stream)
                        .collect(Collectors.toSet()))
                .stream()
                .collect(Collectors.toMap(ProjectFacts::id, Function.identity()));
        return new StartEffects(outcome, facts)
                .of(
                        shown.what(),
                        outcome.placed().flatMap(PlannedRow::crewId).map(id -> crewName(shown.page, Optional.of(id))),
                        MovedProject.in(outcome.changes(), facts));
    }

    private static Collection<UUID> of(Collection<PlannedPromise> promises) {
        return promises.stream().map(PlannedPromise::projectId).toList();
    }
}
