package org.plumbrow.schedule.plan;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.plumbrow.calc.calendar.FederalHolidays;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.calendar.WorkingCalendar;
import org.plumbrow.calc.planning.Absence;
import org.plumbrow.calc.planning.Activity;
import org.plumbrow.calc.planning.Crew;
import org.plumbrow.calc.planning.Equipment;
import org.plumbrow.calc.planning.EquipmentNeed;
import org.plumbrow.calc.planning.Fix;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.Predecessor;
import org.plumbrow.calc.planning.Project;
import org.plumbrow.calc.planning.Promise;
import org.plumbrow.calc.planning.WeatherAllowance;
import org.plumbrow.calc.planning.Work;

/**
 * A branch that nobody has, for {@link PlanWarmUp}: waits (one of them not too early), desks, crews, a machine, absences,
 * some work done; every second branch in the weather. Its sets and lists have several sizes each, as in life: what is compiled for
 * one kind of them alone is thrown away when the first other one comes.
 */
final class MadeUpBranch {

    /** A Monday. */
    private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);

    private static final WorkingCalendar CALENDAR = WorkingCalendar.of(
            EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY), FederalHolidays.closedDays(2027, 2032));
    private static final int STEPS = 20;
    private static final List<Set<String>> SKILLS = List.of(
            Set.of("array", "roof", "posts"),
            Set.of("electric"),
            Set.of("array", "roof", "posts"),
            Set.of("electric", "service"));

    private final List<Crew> crews = new ArrayList<>();
    private final List<Activity> activities = new ArrayList<>();
    private final Random random;

    private MadeUpBranch(int seed) {
        random = new Random(seed);
    }

    static PlanningProblem of(int projectCount, int seed) {
        return new MadeUpBranch(seed).with(projectCount, seed % 2 == 0);
    }

    private PlanningProblem with(int projectCount, boolean fair) {
        for (int number = 0; number < Math.max(4, projectCount / 25); number++) {
            HalfDay away = HalfDay.morning(TODAY.plusWeeks(number));
            crews.add(new Crew(
                    "crew " + number,
                    "Crew " + number,
                    SKILLS.get(number % SKILLS.size()),
                    List.of(new Absence(away, HalfDay.afternoon(away.date().plusDays(4)), "leave"))));
        }
        List<Project> projects = new ArrayList<>();
        List<Promise> promises = new ArrayList<>();
        for (int number = 0; number < projectCount; number++) {
            String id = "job " + number;
            projects.add(new Project(id, id));
            for (int step = 0; step < STEPS; step++) {
                activities.add(activity(id, number, step));
            }
            LocalDate date = TODAY.plusDays(90 + random.nextInt(200));
            promises.add(new Promise(id, "done", promised(id, number % 3), date, 1 + number % 2));
        }
        return new PlanningProblem(
                CALENDAR,
                HalfDay.morning(TODAY),
                TODAY.plusYears(5),
                projects,
                activities,
                crews,
                List.of(new Equipment("driver", "post driver", 1 + projectCount / 300, List.of())),
                promises,
                fair ? WeatherAllowance.NONE : new WeatherAllowance(Map.of(Month.MARCH, 0.1, Month.APRIL, 0.05)));
    }

    private static List<String> promised(String project, int others) {
        List<String> last = new ArrayList<>();
        for (int step = STEPS - 1 - others; step < STEPS; step++) {
            last.add(project + '/' + step);
        }
        return List.copyOf(last);
    }

    private Activity activity(String project, int number, int step) {
        boolean done = number % 5 == 0 && step < 6;
        Work work = work(step);
        return new Activity(
                project + '/' + step,
                project,
                "step " + step,
                work,
                Optional.empty(),
                before(project, step),
                step == 8 && number % 2 == 0 ? List.of(new EquipmentNeed("driver", 1)) : List.of(),
                step > 8 && step < 12 ? Optional.of("array") : Optional.empty(),
                step < 12,
                done
                        ? new Fix.Done(HalfDay.morning(TODAY.minusDays(10)), HalfDay.afternoon(TODAY.minusDays(10)))
                        : Fix.FREE);
    }

    /** Two steps at a time are side by side; one waits for four. */
    private static List<Predecessor> before(String project, int step) {
        List<Predecessor> links = new ArrayList<>();
        for (int first = Math.max(0, step - (step == 12 ? 4 : 2)); first < step - step % 2; first++) {
            links.add(new Predecessor(project + '/' + first, 0, step == 9 ? 3 : 0));
        }
        return links;
    }

    private static Set<String> wanted(int step) {
        return step == 10 ? Set.of("array", "roof") : step == 11 ? SKILLS.get(0) : Set.of("array");
    }

    private Work work(int step) {
        if (step < 5 || step == 9) {
            return new Work.Waiting(
                    step == 9 ? 3 : 5 + random.nextInt(20),
                    step % 2 == 0 ? CALENDAR : WorkingCalendar.EVERY_DAY,
                    step == 9);
        }
        if (step < 8 || step > 17) {
            return new Work.AtDesk(1 + random.nextInt(4));
        }
        Map<String, Integer> halfDays = new HashMap<>();
        int people = 2 + random.nextInt(10);
        for (int crew = 0; crew < crews.size(); crew++) {
            halfDays.put(crews.get(crew).id(), 1 + people / (3 + crew % 3));
        }
        return new Work.ByCrew(step > 11 ? Set.of("electric") : wanted(step), halfDays);
    }
}
