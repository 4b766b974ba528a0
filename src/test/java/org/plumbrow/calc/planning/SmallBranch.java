package org.plumbrow.calc.planning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.plumbrow.calc.calendar.ClosedDay;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.calendar.WorkingCalendar;

/** A branch written by hand, so that a test states only what it is about. Today is the morning of Mon, Mar 1, 2027. */
public final class SmallBranch {

    public static final LocalDate MONDAY = LocalDate.of(2027, 3, 1);

    private final List<Project> projects = new ArrayList<>();
    private final List<Activity> activities = new ArrayList<>();
    private final List<Crew> crews = new ArrayList<>();
    private final List<Equipment> equipment = new ArrayList<>();
    private final List<Promise> promises = new ArrayList<>();
    private WorkingCalendar calendar = WorkingCalendar.MONDAY_TO_FRIDAY;
    private WeatherAllowance weather = WeatherAllowance.NONE;
    private HalfDay today = HalfDay.morning(MONDAY);

    /** A farm and a barn, and one crew of roofers for both. */
    public static SmallBranch ofRoofers() {
        return new SmallBranch()
                .project("farm", "Farm")
                .project("barn", "Barn")
                .crew("roofers", "Roofers", Set.of("ROOF"));
    }

    public static HalfDay morning(int dayOfMarch) {
        return HalfDay.morning(LocalDate.of(2027, 3, dayOfMarch));
    }

    public static HalfDay afternoon(int dayOfMarch) {
        return HalfDay.afternoon(LocalDate.of(2027, 3, dayOfMarch));
    }

    public SmallBranch project(String id, String name) {
        return project(new Project(id, name));
    }

    public SmallBranch project(Project project) {
        projects.add(project);
        return this;
    }

    public SmallBranch crew(String id, String name, Set<String> skills, Absence... absences) {
        crews.add(new Crew(id, name, skills, List.of(absences)));
        return this;
    }

    public SmallBranch equipment(String id, int count, Equipment.Away... away) {
        equipment.add(new Equipment(id, id, count, List.of(away)));
        return this;
    }

    public SmallBranch closed(int dayOfMarch, String reason) {
        calendar = calendar.closedAlsoOn(List.of(new ClosedDay(LocalDate.of(2027, 3, dayOfMarch), reason)));
        return this;
    }

    public SmallBranch weather(WeatherAllowance allowance) {
        weather = allowance;
        return this;
    }

    public SmallBranch today(HalfDay now) {
        today = now;
        return this;
    }

    public SmallBranch promise(String project, String activity, int dayOfMarch) {
        promises.add(new Promise(project, "system on", List.of(activity), LocalDate.of(2027, 3, dayOfMarch), 1));
        return this;
    }

    public SmallBranch activity(Activity activity) {
        activities.add(activity);
        return this;
    }

    /** Work that takes every crew the same time. */
    public Activity work(String id, String project, String words, String skill, int halfDays) {
        Map<String, Integer> all = new HashMap<>();
        crews.forEach(crew -> all.put(crew.id(), halfDays));
        return Activity.of(id, project, words, new Work.ByCrew(Set.of(skill), all));
    }

    public static Activity waiting(String id, String project, String words, int days) {
        return Activity.of(id, project, words, new Work.Waiting(days, WorkingCalendar.MONDAY_TO_FRIDAY, false));
    }

    public PlanningProblem problem() {
        return new PlanningProblem(
                calendar, today, MONDAY.plusYears(1), projects, activities, crews, equipment, promises, weather);
    }
}
