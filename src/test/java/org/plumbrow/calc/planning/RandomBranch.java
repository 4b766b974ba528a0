package org.plumbrow.calc.planning;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.plumbrow.calc.calendar.ClosedDay;
import org.plumbrow.calc.calendar.FederalHolidays;
import org.plumbrow.calc.calendar.Half;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.calendar.WorkingCalendar;

/** A small branch drawn from a seed: everything that a problem may hold, odd things more often than in life. */
public final class RandomBranch {

    static final LocalDate MONDAY = LocalDate.of(2027, 3, 1);
    private static final List<String> SKILLS = List.of("array", "electric", "posts", "bore");
    private static final WorkingCalendar OFFICE = WorkingCalendar.of(
            EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY), FederalHolidays.closedDays(2027, 2028));
    private static final List<WorkingCalendar> COUNTING =
            List.of(OFFICE, WorkingCalendar.EVERY_DAY, WorkingCalendar.MONDAY_TO_FRIDAY);

    private final Random random;
    private final boolean settled;
    private final HalfDay today;
    private final List<Crew> crews = new ArrayList<>();
    private final List<Equipment> equipment = new ArrayList<>();
    private final List<Project> projects = new ArrayList<>();
    private final List<Activity> activities = new ArrayList<>();
    private final List<Promise> promises = new ArrayList<>();

    /** @param settled whether some activities are done, begun, expected or pinned */
    private RandomBranch(long seed, boolean settled) {
        random = new Random(seed);
        this.settled = settled;
        today = someDay(6);
    }

    public static PlanningProblem of(long seed, boolean settled) {
        return new RandomBranch(seed, settled).draw();
    }

    private PlanningProblem draw() {
        int crewCount = 1 + random.nextInt(4);
        for (int crew = 0; crew < crewCount; crew++) {
            crews.add(new Crew("c" + crew, "Crew " + crew, someSkills(3), absences()));
        }
        for (String kind : List.of("driver", "rig")) {
            equipment.add(new Equipment(kind, "post " + kind, random.nextInt(3), away()));
        }
        int projectCount = 1 + random.nextInt(5);
        for (int project = 0; project < projectCount; project++) {
            project(project);
        }
        return new PlanningProblem(
                calendar(),
                today,
                MONDAY.plusDays(chance(0.05) ? 20 : 400),
                projects,
                activities,
                crews,
                equipment,
                promises,
                weather());
    }

    private WorkingCalendar calendar() {
        Set<DayOfWeek> days = chance(0.8)
                ? EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY)
                : EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.SATURDAY);
        return WorkingCalendar.of(days, List.of(new ClosedDay(MONDAY.plusDays(random.nextInt(12)), "Town fair")));
    }

    private WeatherAllowance weather() {
        Map<Month, Double> lost = new EnumMap<>(Month.class);
        for (Month month : chance(0.5) ? Month.values() : new Month[0]) {
            lost.put(month, random.nextInt(5) / 10.0);
        }
        return new WeatherAllowance(lost);
    }

    private void project(int number) {
        String id = "p" + number;
        projects.add(new Project(id, "Job " + number));
        int first = activities.size();
        int count = 2 + random.nextInt(9);
        for (int at = 0; at < count; at++) {
            activities.add(activity(id, id + "-a" + at, first));
        }
        if (chance(0.8)) {
            String last = activities.get(activities.size() - 1).id();
            promises.add(new Promise(
                    id, "system on", List.of(last), MONDAY.plusDays(random.nextInt(80)), 1 + random.nextInt(5)));
        }
    }

    private Activity activity(String project, String id, int first) {
        Work work = work();
        boolean crewWork = work instanceof Work.ByCrew;
        List<EquipmentNeed> needs = new ArrayList<>();
        if (crewWork && chance(0.3)) {
            needs.add(new EquipmentNeed(equipment.get(random.nextInt(2)).id(), 1 + random.nextInt(2)));
        }
        return new Activity(
                id,
                project,
                "work " + id,
                work,
                chance(0.15) ? Optional.of(someDay(30)) : Optional.empty(),
                predecessors(first),
                needs,
                crewWork && chance(0.3) ? Optional.of("group") : Optional.empty(),
                chance(0.5),
                settled && chance(0.3) ? fix(work) : Fix.FREE);
    }

    private Work work() {
        double draw = random.nextDouble();
        if (draw < 0.25) {
            return new Work.Waiting(random.nextInt(15), COUNTING.get(random.nextInt(3)), chance(0.4));
        }
        if (draw < 0.35) {
            return new Work.AtDesk(1 + random.nextInt(5));
        }
        Map<String, Integer> halfDays = new HashMap<>();
        for (Crew crew : crews) {
            if (chance(0.9)) {
                halfDays.put(crew.id(), 1 + random.nextInt(9));
            }
        }
        return new Work.ByCrew(someSkills(1), halfDays);
    }

    private List<Predecessor> predecessors(int first) {
        Map<String, Predecessor> links = new HashMap<>();
        for (int draw = 0; draw < 2 && activities.size() > first; draw++) {
            String id = activities
                    .get(first + random.nextInt(activities.size() - first))
                    .id();
            int lag = chance(0.2) ? random.nextInt(6) : 0;
            links.put(id, new Predecessor(id, lag, chance(0.1) ? random.nextInt(9) : 0));
        }
        return List.copyOf(links.values());
    }

    private Fix fix(Work work) {
        HalfDay start = new HalfDay(today.date().minusDays(1 + random.nextInt(20)), Half.MORNING);
        HalfDay later = new HalfDay(start.date().plusDays(random.nextInt(40)), Half.AFTERNOON);
        return switch (random.nextInt(work instanceof Work.Waiting ? 4 : 3)) {
            case 0 -> new Fix.Done(start, start.next());
            case 1 -> new Fix.Begun(start, chance(0.5) ? someCrew() : Optional.empty(), 1 + random.nextInt(5));
            case 2 -> new Fix.Pinned(someDay(50), chance(0.4) ? someCrew() : Optional.empty());
            default -> new Fix.Expected(start, later);
        };
    }

    private Optional<String> someCrew() {
        return Optional.of(crews.get(random.nextInt(crews.size())).id());
    }

    private Set<String> someSkills(int most) {
        Set<String> some = new HashSet<>();
        for (int draw = 0; draw < most; draw++) {
            some.add(SKILLS.get(random.nextInt(chance(0.05) ? 4 : 3)));
        }
        return some;
    }

    private List<Absence> absences() {
        List<Absence> some = new ArrayList<>();
        for (int draw = random.nextInt(3); draw > 0; draw--) {
            HalfDay first = someDay(40);
            some.add(new Absence(first, new HalfDay(first.date().plusDays(random.nextInt(9)), Half.AFTERNOON), "away"));
        }
        return some;
    }

    private List<Equipment.Away> away() {
        return chance(0.7)
                ? List.of()
                : List.of(new Equipment.Away(
                        1,
                        new Absence(someDay(10), HalfDay.afternoon(MONDAY.plusDays(10 + random.nextInt(10))), "lent")));
    }

    private HalfDay someDay(int within) {
        return new HalfDay(MONDAY.plusDays(random.nextInt(within)), chance(0.5) ? Half.MORNING : Half.AFTERNOON);
    }

    private boolean chance(double share) {
        return random.nextDouble() < share;
    }
}
