package org.plumbrow.schedule.why;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.planning.PlanWords;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.relax.Moved;
import org.plumbrow.calc.planning.relax.Relaxation;

/** The sentences of what would move a date. */
final class RelaxationWords {

    private final PlanWords words;
    private final Map<String, String> projects = new HashMap<>();

    RelaxationWords(PlanningProblem problem) {
        words = new PlanWords(problem);
        problem.projects().forEach(project -> projects.put(project.id(), project.name()));
    }

    /** A line each; jobs before which it may be served with the same effect are one line. */
    List<WhyView.Try> said(List<Moved> moved) {
        Map<Object, List<Moved>> same = moved.stream()
                .collect(Collectors.groupingBy(RelaxationWords::effect, LinkedHashMap::new, Collectors.toList()));
        return same.values().stream().map(this::line).toList();
    }

    private static Object effect(Moved moved) {
        return moved.relaxation() instanceof Relaxation.ServedBefore swap
                ? List.of(
                        swap.projectId(),
                        moved.finish(),
                        moved.promisesSaved(),
                        moved.promisesBroken(),
                        moved.latenessChange())
                : moved;
    }

    private WhyView.Try line(List<Moved> same) {
        Moved first = same.get(0);
        String others = same.stream()
                .skip(1)
                .map(more -> project(((Relaxation.ServedBefore) more.relaxation()).otherProjectId()))
                .collect(Collectors.joining(" or "));
        return new WhyView.Try(
                what(first.relaxation()) + (others.isEmpty() ? "" : " or " + others),
                DayWords.of(first.finish().date()),
                gain(first.daysGained()),
                others(first));
    }

    private String what(Relaxation relaxation) {
        if (relaxation instanceof Relaxation.CrewLike more) {
            return "A second crew like %s for %s from %s"
                    .formatted(words.crew(more.crewId()), days(more.workingDays()), DayWords.of(more.from()));
        }
        if (relaxation instanceof Relaxation.CrewStays stays) {
            return "%s is there from %s to %s after all (%s)"
                    .formatted(
                            words.crew(stays.crewId()),
                            DayWords.of(stays.absence().first().date()),
                            DayWords.of(stays.absence().last().date()),
                            stays.absence().reason());
        }
        if (relaxation instanceof Relaxation.OneMore more) {
            return "One " + words.equipment(more.equipmentId()) + " more";
        }
        if (relaxation instanceof Relaxation.Saturdays saturdays) {
            return "Work on every Saturday until " + DayWords.of(saturdays.until());
        }
        return ofProjects(relaxation);
    }

    private String ofProjects(Relaxation relaxation) {
        if (relaxation instanceof Relaxation.AnsweredSooner sooner) {
            return "%s: answered %s sooner".formatted(words.activity(sooner.activityId()), count(sooner.days(), "day"));
        }
        if (relaxation instanceof Relaxation.ServedBefore swap) {
            return "%s is served before %s".formatted(project(swap.projectId()), project(swap.otherProjectId()));
        }
        Relaxation.NotSettled settled = (Relaxation.NotSettled) relaxation;
        return "%s: the start settled on %s may move"
                .formatted(
                        words.activity(settled.activityId()),
                        DayWords.of(settled.start().date()));
    }

    private String project(String id) {
        return projects.getOrDefault(id, "");
    }

    private static String gain(int days) {
        return days == 0 ? "no day" : days(Math.abs(days)) + (days > 0 ? " sooner" : " later");
    }

    private static String others(Moved moved) {
        List<String> parts = new ArrayList<>();
        if (moved.promisesBroken() > 0) {
            parts.add(moved.promisesBroken() + (moved.promisesBroken() == 1 ? " breaks" : " break"));
        }
        if (moved.promisesSaved() > 0) {
            parts.add(moved.promisesSaved() + (moved.promisesSaved() == 1 ? " holds again" : " hold again"));
        }
        if (moved.latenessChange() != 0) {
            parts.add("%s %s late"
                    .formatted(
                            count(Math.abs(moved.latenessChange()), "weighted half-day"),
                            moved.latenessChange() > 0 ? "more" : "less"));
        }
        return parts.isEmpty() ? "none changes" : String.join("; ", parts);
    }

    private static String days(int days) {
        return count(days, "working day");
    }

    private static String count(long count, String noun) {
        return count + " " + noun + (count == 1 ? "" : "s");
    }
}
