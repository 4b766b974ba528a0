package org.plumbrow.schedule.projectdates;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.schedule.plan.MovedProject;
import org.plumbrow.schedule.plan.PlanChanges;
import org.plumbrow.schedule.plan.PlanFinding;
import org.plumbrow.schedule.plan.PlannedPromise;
import org.plumbrow.schedule.plan.PromiseWords;
import org.plumbrow.schedule.plan.WhatIf;
import org.plumbrow.schedule.projectdates.StartEffect.PromiseThen;

/** Says what a settled start would do: to every promise, to the dates of other projects. */
final class StartEffects {

    private final WhatIf.Outcome outcome;
    private final Map<UUID, ProjectFacts> facts;

    StartEffects(WhatIf.Outcome outcome, Map<UUID, ProjectFacts> facts) {
        this.outcome = outcome;
        this.facts = facts;
    }

    /** @param what the work, as people call it @param crew name of the one that would do it */
    StartEffect of(String what, Optional<String> crew, List<MovedProject> moved) {
        Map<UUID, PlannedPromise> before =
                outcome.before().stream().collect(Collectors.toMap(PlannedPromise::projectId, Function.identity()));
        List<PromiseThen> changed = new ArrayList<>();
        List<PromiseThen> same = new ArrayList<>();
        outcome.after().stream()
                .sorted(Comparator.comparingInt((PlannedPromise then) -> better(before.get(then.projectId()), then)))
                .forEach(then -> {
                    PlannedPromise was = before.getOrDefault(then.projectId(), then);
                    (isSame(was, then) ? same : changed).add(row(was, then));
                });
        return new StartEffect(
                heading(what, crew),
                inShort(),
                changed,
                same,
                moved,
                outcome.findings().stream().map(PlanFinding::sentence).toList());
    }

    private static boolean isSame(PlannedPromise was, PlannedPromise then) {
        return was.finish().equals(then.finish()) && was.outlook() == then.outlook();
    }

    /** Half-days that the promise gains; negative for what it loses. */
    private static int better(PlannedPromise was, PlannedPromise then) {
        return was == null
                ? 0
                : (then.halfDaysSpare() - then.halfDaysLate()) - (was.halfDaysSpare() - was.halfDaysLate());
    }

    private PromiseThen row(PlannedPromise was, PlannedPromise then) {
        return new PromiseThen(
                Optional.ofNullable(facts.get(then.projectId()))
                        .map(ProjectFacts::name)
                        .orElse("A project"),
                "/projects/" + then.projectId() + "/schedule",
                then.milestone(),
                DayWords.of(then.promisedOn()),
                day(was),
                PromiseWords.shape(was),
                PromiseWords.outlook(was),
                day(then),
                PromiseWords.shape(then),
                PromiseWords.outlook(then));
    }

    private static String day(PlannedPromise promise) {
        return promise.finish().map(finish -> DayWords.of(finish.date())).orElse("–");
    }

    private String heading(String what, Optional<String> crew) {
        String place = outcome.placed()
                .map(row -> ", " + DatesWords.span(row.start(), row.finish())
                        + crew.filter(name -> !name.isEmpty())
                                .map(name -> ", " + name)
                                .orElse(""))
                .orElse(" has no place there");
        return what + place + ": " + promises();
    }

    /** "2 promises break, 1 breaks by more", "no promise breaks by it". */
    private String promises() {
        Set<UUID> broken = outcome.before().stream()
                .filter(promise -> promise.halfDaysLate() > 0)
                .map(PlannedPromise::projectId)
                .collect(Collectors.toSet());
        List<PlannedPromise> breaking = outcome.changes().breaking();
        int more = (int) breaking.stream()
                .filter(promise -> broken.contains(promise.projectId()))
                .count();
        int newly = breaking.size() - more;
        List<String> parts = new ArrayList<>();
        if (newly > 0) {
            parts.add(DatesWords.count(newly, "promise") + (newly == 1 ? " breaks" : " break"));
        }
        if (more > 0) {
            parts.add(DatesWords.count(more, "promise") + (more == 1 ? " breaks by more" : " break by more"));
        }
        int mended = outcome.changes().mended().size();
        if (mended > 0) {
            parts.add(DatesWords.count(mended, "promise") + (mended == 1 ? " holds again" : " hold again"));
        }
        return parts.isEmpty() ? "no promise breaks by it" : String.join(", ", parts);
    }

    private String inShort() {
        PlanChanges changes = outcome.changes();
        return changes.moves().isEmpty()
                ? "No date moves."
                : "%s of %s would move; %s as they are."
                        .formatted(
                                DatesWords.count(changes.moves().size(), "date"),
                                DatesWords.count(changes.projects().size(), "project"),
                                outcome.standing() == 1 ? "1 stays" : outcome.standing() + " stay");
    }
}
