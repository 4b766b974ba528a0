package org.plumbrow.calc.planning;

import java.util.HashMap;
import java.util.Map;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.calendar.Half;
import org.plumbrow.calc.calendar.HalfDay;

/** The sentences of a plan: every name that a person needs, none that only a program knows. */
public final class PlanWords {

    private final Map<String, String> activities = new HashMap<>();
    private final Map<String, String> crews = new HashMap<>();
    private final Map<String, String> equipment = new HashMap<>();

    public PlanWords(PlanningProblem problem) {
        Map<String, String> projects = new HashMap<>();
        problem.projects().forEach(project -> projects.put(project.id(), project.name()));
        problem.activities()
                .forEach(activity ->
                        activities.put(activity.id(), projects.get(activity.projectId()) + ", " + activity.words()));
        problem.crews().forEach(crew -> crews.put(crew.id(), crew.name()));
        problem.equipment().forEach(kind -> equipment.put(kind.id(), kind.name()));
    }

    /** As in "Sedge Hollow Dairy, racking". */
    public String activity(String activityId) {
        return activities.getOrDefault(activityId, activityId);
    }

    public String crew(String crewId) {
        return crews.getOrDefault(crewId, crewId);
    }

    public String equipment(String equipmentId) {
        return equipment.getOrDefault(equipmentId, equipmentId);
    }

    /** As in "Fri, Mar 12" at the end of the day, "noon on Fri, Mar 12" in its middle. */
    static String end(HalfDay last) {
        String day = DayWords.of(last.date());
        return last.half() == Half.AFTERNOON ? day : "noon on " + day;
    }

    /** As in "on Fri, Mar 12" or "at noon on Fri, Mar 12". */
    static String when(HalfDay last) {
        return (last.half() == Half.AFTERNOON ? "on " : "at ") + end(last);
    }

    /** Why an activity does not start earlier, as one sentence. */
    public String bound(Bound bound) {
        if (bound instanceof Bound.After after) {
            return "Follows %s, done %s.".formatted(activity(after.activityId()), when(after.finished()));
        }
        if (bound instanceof Bound.CrewBusy busy) {
            return "%s works on %s until %s."
                    .formatted(crew(busy.crewId()), activity(busy.activityId()), end(busy.until()));
        }
        if (bound instanceof Bound.CrewAway away) {
            return "%s is away until %s (%s).".formatted(crew(away.crewId()), end(away.until()), away.reason());
        }
        if (bound instanceof Bound.EquipmentBusy busy) {
            return "The %s is at %s until %s."
                    .formatted(equipment(busy.equipmentId()), activity(busy.activityId()), end(busy.until()));
        }
        if (bound instanceof Bound.EquipmentAway away) {
            return "The %s is away until %s (%s)."
                    .formatted(equipment(away.equipmentId()), end(away.until()), away.reason());
        }
        return settled(bound);
    }

    private String settled(Bound bound) {
        if (bound instanceof Bound.Released released) {
            return "It may not start before %s."
                    .formatted(DayWords.of(released.from().date()));
        }
        if (bound instanceof Bound.DayOff off) {
            return DayWords.nobodyWorks(off.wanted().date(), off.reason());
        }
        if (bound instanceof Bound.Pin pin) {
            return "The start is fixed on %s.".formatted(pin.start().words());
        }
        if (bound instanceof Bound.Kept kept) {
            return "It stays on %s, the date that people know."
                    .formatted(DayWords.of(kept.start().date()));
        }
        if (bound instanceof Bound.Underway underway) {
            return "It began on %s.".formatted(DayWords.of(underway.start().date()));
        }
        if (bound instanceof Bound.Finished finished) {
            return "It was finished on %s."
                    .formatted(DayWords.of(finished.finish().date()));
        }
        if (bound instanceof Bound.JustInTime needed) {
            return "It is begun in time for %s on %s."
                    .formatted(
                            activity(needed.activityId()),
                            DayWords.of(needed.neededBy().date()));
        }
        return "It can start at once.";
    }
}
