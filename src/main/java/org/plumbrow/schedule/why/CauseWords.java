package org.plumbrow.schedule.why;

import java.util.List;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.planning.Absence;
import org.plumbrow.calc.planning.PlanWords;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.causes.Cause;

/** The sentences of what cannot hold together. */
final class CauseWords {

    private final PlanningProblem problem;
    private final PlanWords words;

    CauseWords(PlanningProblem problem) {
        this.problem = problem;
        words = new PlanWords(problem);
    }

    List<String> said(List<Cause> causes) {
        return causes.stream().map(this::said).toList();
    }

    private String said(Cause cause) {
        if (cause instanceof Cause.Settled settled) {
            return "%s is settled on %s."
                    .formatted(
                            words.activity(settled.activityId()),
                            settled.start().words());
        }
        if (cause instanceof Cause.SettledCrew settled) {
            return "%s is settled with %s."
                    .formatted(words.activity(settled.activityId()), words.crew(settled.crewId()));
        }
        if (cause instanceof Cause.AnswerOn answer) {
            return "%s is expected on %s.".formatted(words.activity(answer.activityId()), day(answer.answer()));
        }
        if (cause instanceof Cause.CrewAway away) {
            return "%s is away %s.".formatted(words.crew(away.crewId()), span(away.absence()));
        }
        return ofBranch(cause);
    }

    private String ofBranch(Cause cause) {
        if (cause instanceof Cause.Pieces pieces) {
            String name = words.equipment(pieces.equipmentId());
            return pieces.count() == 0
                    ? "The branch has no %s.".formatted(name)
                    : "The branch has %d of %s and no more.".formatted(pieces.count(), name);
        }
        if (cause instanceof Cause.PiecesAway away) {
            return "%d of %s %s away %s."
                    .formatted(
                            away.count(),
                            words.equipment(away.equipmentId()),
                            away.count() == 1 ? "is" : "are",
                            span(away.absence()));
        }
        if (cause instanceof Cause.DayOff off) {
            return DayWords.nobodyWorks(off.date(), off.reason());
        }
        if (cause instanceof Cause.OneCrew one) {
            return "One crew has to do all works of the same kind at one site (%s).".formatted(project(one));
        }
        Cause.OnlySomeCrews some = (Cause.OnlySomeCrews) cause;
        return "%s needs skills or people that not every crew has.".formatted(words.activity(some.activityId()));
    }

    private String project(Cause.OneCrew one) {
        return problem.projects().stream()
                .filter(project -> project.id().equals(one.projectId()))
                .map(project -> project.name())
                .findFirst()
                .orElse("");
    }

    private static String span(Absence absence) {
        return "from %s to %s (%s)".formatted(day(absence.first()), day(absence.last()), absence.reason());
    }

    private static String day(HalfDay halfDay) {
        return DayWords.of(halfDay.date());
    }
}
