package org.plumbrow.schedule.plan;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.duration.ActivityCode;
import org.plumbrow.calc.duration.Milestone;
import org.plumbrow.crew.CrewFacts;
import org.plumbrow.crew.Crews;
import org.plumbrow.project.Journal;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.project.ProjectOutlook;
import org.plumbrow.project.ProjectOutlook.BookedCrew;
import org.plumbrow.schedule.PlanPublished;
import org.plumbrow.web.Actor;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Tells the list of projects, the journals and the other rooms what a newly published plan means. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class PlanNews {

    private final ProjectOutlook outlook;
    private final Journal journal;
    private final Crews crews;
    private final ApplicationEventPublisher events;

    PlanNews(ProjectOutlook outlook, Journal journal, Crews crews, ApplicationEventPublisher events) {
        this.outlook = outlook;
        this.journal = journal;
        this.crews = crews;
        this.events = events;
    }

    void tell(PlanHead plan, PlanChanges.Snapshot before, PlanChanges.Snapshot after, Actor by, Instant now) {
        Map<UUID, Dates> was = dates(before);
        Map<UUID, Dates> will = dates(after);
        Map<UUID, String> names = crews.crews(plan.branchId(), plan.first().date()).stream()
                .collect(Collectors.toMap(CrewFacts::id, CrewFacts::name));
        Set<UUID> projects = new LinkedHashSet<>(was.keySet());
        projects.addAll(will.keySet());
        for (UUID project : projects) {
            Dates then = was.getOrDefault(project, Dates.NONE);
            Dates from = will.getOrDefault(project, Dates.NONE);
            outlook.planned(project, from.promised.orElse(null));
            outlook.crews(project, booked(after.rows(), project, plan, names));
            if (will.containsKey(project) && !then.equals(from)) {
                journal.append(event(plan, project, then, from), by, now);
            }
        }
        events.publishEvent(new PlanPublished(
                plan.branchId(),
                plan.number(),
                PlanChanges.between(before, after, plan.first()).projects()));
    }

    /** The two days that a project is followed by. @param promised of the promised milestone, else system on */
    private record Dates(String milestone, Optional<LocalDate> promised, Optional<LocalDate> cutover) {
        static final Dates NONE = new Dates("", Optional.empty(), Optional.empty());
    }

    private static Map<UUID, Dates> dates(PlanChanges.Snapshot plan) {
        Map<UUID, PlannedPromise> promises =
                plan.promises().stream().collect(Collectors.toMap(PlannedPromise::projectId, Function.identity()));
        Map<UUID, List<PlannedRow>> byProject = plan.rows().stream()
                .collect(Collectors.groupingBy(PlannedRow::projectId, LinkedHashMap::new, Collectors.toList()));
        Map<UUID, Dates> dates = new LinkedHashMap<>();
        byProject.forEach((project, rows) -> {
            Optional<PlannedPromise> promise = Optional.ofNullable(promises.get(project));
            dates.put(
                    project,
                    new Dates(
                            promise.map(PlannedPromise::milestone).orElse(Milestone.SYSTEM_ON.words()),
                            promise.isPresent()
                                    ? promise.get().finish().map(finish -> finish.date())
                                    : day(rows, ActivityCode.COMMISSIONING),
                            day(rows, ActivityCode.CUTOVER)));
        });
        return dates;
    }

    private static Optional<LocalDate> day(List<PlannedRow> rows, ActivityCode code) {
        return rows.stream()
                .filter(row -> row.code() == code)
                .map(row -> row.finish().date())
                .max(LocalDate::compareTo);
    }

    private static List<BookedCrew> booked(
            List<PlannedRow> rows, UUID project, PlanHead plan, Map<UUID, String> names) {
        Map<String, BookedCrew> booked = new TreeMap<>();
        for (PlannedRow row : rows) {
            if (row.projectId().equals(project) && !row.finish().isBefore(plan.first())) {
                row.crewId()
                        .filter(names::containsKey)
                        .ifPresent(crew -> booked.put(names.get(crew), new BookedCrew(crew, names.get(crew))));
            }
        }
        return List.copyOf(booked.values());
    }

    private static JournalEvent event(PlanHead plan, UUID project, Dates was, Dates now) {
        List<String> parts = new ArrayList<>();
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put("plan", Integer.toString(plan.number()));
        part("cutover", was.cutover, now.cutover, parts, facts);
        part(now.milestone, was.promised, now.promised, parts, facts);
        return JournalEvent.of(
                project,
                "plan.published",
                "Plan %d published: %s.".formatted(plan.number(), String.join("; ", parts)),
                facts);
    }

    private static void part(
            String what,
            Optional<LocalDate> was,
            Optional<LocalDate> now,
            List<String> parts,
            Map<String, String> facts) {
        was.ifPresent(day -> facts.put(what + ".from", day.toString()));
        now.ifPresent(day -> facts.put(what + ".to", day.toString()));
        String later = now.map(DayWords::withYear).orElse("no date");
        parts.add(
                was.isPresent() && !was.equals(now)
                        ? "%s %s → %s".formatted(what, DayWords.of(was.get()), later)
                        : what + " " + later);
    }
}
