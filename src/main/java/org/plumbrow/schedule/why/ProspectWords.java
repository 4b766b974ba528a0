package org.plumbrow.schedule.why;

import java.util.Map;
import java.util.stream.Collectors;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.Project;
import org.plumbrow.calc.planning.replan.Prospect;

/** Says whether a promise can be kept, and keeps apart what is proved and what is only found. */
final class ProspectWords {

    private final Map<String, String> projects;

    ProspectWords(PlanningProblem problem) {
        projects = problem.projects().stream().collect(Collectors.toMap(Project::id, Project::name));
    }

    WhyView.Promised said(Prospect prospect) {
        String promise = "%s, promised for %s"
                .formatted(
                        prospect.promise().milestone(),
                        DayWords.of(prospect.promise().date()));
        return new WhyView.Promised(
                shape(prospect.kind()),
                Character.toUpperCase(promise.charAt(0)) + promise.substring(1) + ": " + answer(prospect),
                prospect.breaking().stream().map(this::breaking).toList(),
                proof(prospect));
    }

    private static String shape(Prospect.Kind kind) {
        return switch (kind) {
            case KEPT -> "done";
            case FREELY, AT_A_PRICE -> "risk";
            case NEVER -> "trouble";
            case NOT_FOUND -> "unknown";
        };
    }

    private static String answer(Prospect prospect) {
        return switch (prospect.kind()) {
            case KEPT -> "kept, with %s to spare.".formatted(spare(prospect.halfDays()));
            case NEVER -> "cannot be kept by any plan.";
            case FREELY ->
                "a plan was found that keeps it and breaks no other; %s otherwise."
                        .formatted(count(prospect.moved(), "date would lie", "dates would lie"));
            case AT_A_PRICE ->
                prospect.provedTogether()
                        ? "can be kept only if another breaks."
                        : "a plan was found that keeps it, but others break by it.";
            case NOT_FOUND -> "no plan was found that keeps it.";
        };
    }

    private static String proof(Prospect prospect) {
        return switch (prospect.kind()) {
            case KEPT ->
                "Its last work may end that much later before the promise breaks, if its crew has nothing after it.";
            case NEVER ->
                ("Proved: with every crew and machine free for it alone, its own work and waits still end %s late. That"
                                + " holds with what has begun, is settled or is away as it is.")
                        .formatted(spare(prospect.halfDays()));
            case FREELY ->
                "Found, not the best possible: it was served before all others, the rest kept where it can stand.";
            case AT_A_PRICE -> atAPrice(prospect);
            case NOT_FOUND -> "That there is none is not proved: it was only served before all others.";
        };
    }

    private static String atAPrice(Prospect prospect) {
        String moved = count(prospect.moved(), "date would lie", "dates would lie") + " otherwise in the plan found. ";
        return moved
                + (prospect.provedTogether()
                        ? "Proved: with every crew free for these projects alone no plan keeps all of them. Which of them"
                                + " break is as found; another plan may choose others."
                        : "Whether another plan keeps all of them is not known.");
    }

    private String breaking(Prospect.Breaking one) {
        String late = spare(one.halfDaysLate()) + " late";
        return "%s: %s"
                .formatted(
                        projects.getOrDefault(one.promise().projectId(), ""),
                        one.was() == 0
                                ? "breaks, " + late
                                : "breaks by more, %s instead of %s".formatted(late, spare(one.was())));
    }

    /** "1 half-day", "3 working days", "2 working days and a half". */
    static String spare(int halfDays) {
        int days = halfDays / 2;
        if (days == 0) {
            return halfDays == 0 ? "no time" : "half a working day";
        }
        String whole = count(days, "working day", "working days");
        return halfDays % 2 == 0 ? whole : whole + " and a half";
    }

    private static String count(int count, String one, String more) {
        return count + " " + (count == 1 ? one : more);
    }
}
