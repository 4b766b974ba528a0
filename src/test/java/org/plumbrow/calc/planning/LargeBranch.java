package org.plumbrow.calc.planning;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.plumbrow.calc.calendar.FederalHolidays;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.calendar.WorkingCalendar;
import org.plumbrow.calc.duration.ActivityCode;
import org.plumbrow.calc.duration.ArrayWork;
import org.plumbrow.calc.duration.DurationTables;
import org.plumbrow.calc.duration.Follows;
import org.plumbrow.calc.duration.Milestone;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.calc.duration.ProjectActivities;
import org.plumbrow.calc.duration.ProjectActivity;
import org.plumbrow.calc.duration.ProjectWork;
import org.plumbrow.calc.duration.ShippedTable;
import org.plumbrow.calc.duration.Skill;
import org.plumbrow.calc.duration.WaitTime;

/**
 * A branch of any size as the product makes it: activities from mounting and quantities with the shipped rates, crews of
 * installers and of electricians, shared drivers and bore rigs, a fifth of the projects far along. Homes are 35 of 100,
 * homes on the ground 20, flat roofs 15, farms 30; about 25 open projects a crew.
 */
public final class LargeBranch {

    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
    private static final DurationTables TABLES = ShippedTable.all();
    private static final WorkingCalendar CALENDAR = WorkingCalendar.of(
            EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY), FederalHolidays.closedDays(2027, 2032));

    private final Random random;
    private final List<Crew> crews = new ArrayList<>();
    private final Map<String, Integer> people = new HashMap<>();
    private final List<Project> projects = new ArrayList<>();
    private final List<Activity> activities = new ArrayList<>();
    private final List<Promise> promises = new ArrayList<>();

    private LargeBranch(long seed) {
        random = new Random(seed);
    }

    public static PlanningProblem of(int projectCount, long seed) {
        return new LargeBranch(seed).draw(projectCount);
    }

    private PlanningProblem draw(int projectCount) {
        int crewCount = Math.max(4, projectCount / 25);
        for (int crew = 0; crew < crewCount; crew++) {
            crew(crew);
        }
        for (int number = 0; number < projectCount; number++) {
            project(number);
        }
        int pieces = 1 + projectCount / 100;
        return new PlanningProblem(
                CALENDAR,
                HalfDay.morning(TODAY),
                TODAY.plusYears(5),
                projects,
                activities,
                crews,
                List.of(
                        new Equipment("POST_DRIVER", "post driver", pieces, List.of()),
                        new Equipment("BORE_RIG", "bore rig", pieces, List.of())),
                promises,
                WeatherAllowance.NONE);
    }

    private void crew(int number) {
        EnumSet<Skill> skills = number % 2 == 0
                ? EnumSet.of(
                        Skill.INSTALLER, Skill.ROOF, Skill.POST_OPERATOR, Skill.EARTH_OPERATOR, Skill.BORE_OPERATOR)
                : EnumSet.of(Skill.ELECTRICIAN, Skill.SERVICE);
        String id = "crew-" + number;
        LocalDate away = TODAY.plusDays(7L * random.nextInt(20));
        crews.add(new Crew(
                id,
                "Crew " + (number + 1),
                skills.stream().map(Skill::name).collect(Collectors.toSet()),
                List.of(new Absence(HalfDay.morning(away), HalfDay.afternoon(away.plusDays(4)), "leave"))));
        people.put(id, 3 + random.nextInt(3));
    }

    private void project(int number) {
        String id = "project-" + number;
        projects.add(new Project(id, "Project " + number));
        List<ProjectActivity> own = ProjectActivities.of(work(random.nextInt(100)), TABLES);
        int done = random.nextInt(5) == 0 ? random.nextInt(own.size() / 2) : 0;
        for (int at = 0; at < own.size(); at++) {
            activities.add(activity(id, own.get(at), at < done));
        }
        List<String> promised = Milestone.SYSTEM_ON.keysIn(own).stream()
                .map(key -> id + "/" + key)
                .toList();
        promises.add(new Promise(
                id, "system on", promised, TODAY.plusDays(90 + random.nextInt(200)), 1 + random.nextInt(2)));
    }

    private ProjectWork work(int draw) {
        if (draw < 35) {
            return ProjectWork.of(true, ArrayWork.of(Mounting.PITCHED_ROOF, 6 + random.nextInt(6)));
        }
        if (draw < 55) {
            return ProjectWork.of(true, ArrayWork.of(Mounting.GROUND, 8 + random.nextInt(8)));
        }
        return draw < 70
                ? ProjectWork.of(false, ArrayWork.of(Mounting.FLAT_ROOF, 30 + random.nextInt(70)))
                : ProjectWork.of(false, ArrayWork.of(Mounting.GROUND, 40 + random.nextInt(110)));
    }

    private Activity activity(String project, ProjectActivity own, boolean done) {
        LocalDate past = TODAY.minusDays(10);
        return new Activity(
                project + "/" + own.key(),
                project,
                own.words(),
                planned(own),
                Optional.empty(),
                own.predecessors().stream().map(first -> link(project, first)).toList(),
                own.equipment().entrySet().stream()
                        .filter(need -> Set.of("POST_DRIVER", "BORE_RIG")
                                .contains(need.getKey().name()))
                        .map(need -> new EquipmentNeed(need.getKey().name(), need.getValue()))
                        .toList(),
                own.continuityGroup(),
                own.outdoor(),
                done ? new Fix.Done(HalfDay.morning(past), HalfDay.afternoon(past)) : Fix.FREE);
    }

    private static Predecessor link(String project, Follows first) {
        return new Predecessor(project + "/" + first.key(), 0, first.lagCalendarDays());
    }

    private Work planned(ProjectActivity own) {
        if (own.kind() == ActivityCode.Kind.WAIT) {
            WorkingCalendar counting =
                    own.dayKind() == WaitTime.DayKind.CALENDAR ? WorkingCalendar.EVERY_DAY : CALENDAR;
            return new Work.Waiting((int) Math.round(own.days().typical()), counting, own.justInTime());
        }
        if (own.kind() == ActivityCode.Kind.DESK) {
            return new Work.AtDesk(own.days().halfDaysTypical());
        }
        Map<String, Integer> halfDays = new HashMap<>();
        crews.stream()
                .filter(crew -> people.get(crew.id()) >= own.leastPeople())
                .forEach(crew -> halfDays.put(
                        crew.id(), own.daysFor(people.get(crew.id())).halfDaysTypical()));
        return new Work.ByCrew(own.skills().stream().map(Skill::name).collect(Collectors.toSet()), halfDays);
    }
}
