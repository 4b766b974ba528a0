package org.plumbrow.cutover.after;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.plumbrow.calc.outage.LearnedOutage;
import org.plumbrow.calc.outage.OutageMinutes;
import org.plumbrow.cutover.FinishedOutages;
import org.plumbrow.cutover.OutageMinutesOfProject;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.web.May;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What finished days with the same utility and kind of connection have taught of the minutes without power. */
@Service
@Transactional(readOnly = true)
class LearnedMinutes {

    private final ProjectAccess projectAccess;
    private final Projects projects;
    private final FinishedOutages finished;
    private final OutageMinutesOfProject minutes;

    LearnedMinutes(
            ProjectAccess projectAccess, Projects projects, FinishedOutages finished, OutageMinutesOfProject minutes) {
        this.projectAccess = projectAccess;
        this.projects = projects;
        this.finished = finished;
        this.minutes = minutes;
    }

    /** A day that it comes from. */
    record Line(FinishedOutages.Day day, String project) {
        public double ratio() {
            return day.finished().ratio();
        }
    }

    record Page(ProjectFacts project, OutageMinutes expected, LearnedOutage learned, List<Line> lines) {
        /** Outages that took exactly what was expected, which knowing nothing is worth. */
        public int weight() {
            return LearnedOutage.WEIGHT;
        }

        /** The mean of the days alone; 1 without any. */
        public double ofTheDays() {
            return lines.stream().mapToDouble(Line::ratio).average().orElse(1);
        }
    }

    Page of(UUID projectId) {
        projectAccess.require(projectId, May.SEE_CUTOVERS);
        ProjectFacts project = projects.facts(projectId);
        List<FinishedOutages.Day> days = finished.days(
                project.branchId(), project.site().utilityId(), project.site().supplySideTap());
        Map<UUID, ProjectFacts> known =
                projects
                        .factsUnchecked(days.stream()
                                .map(FinishedOutages.Day::projectId)
                                .collect(Collectors.toSet()))
                        .stream()
                        .collect(Collectors.toMap(ProjectFacts::id, Function.identity()));
        return new Page(
                project,
                minutes.of(project, project.site().threePhase()),
                LearnedOutage.of(
                        days.stream().map(FinishedOutages.Day::finished).toList()),
                days.stream()
                        .map(day -> new Line(day, known.get(day.projectId()).name()))
                        .toList());
    }
}
