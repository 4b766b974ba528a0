package org.plumbrow.calc.planning.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.planning.Activity;
import org.plumbrow.calc.planning.Crew;
import org.plumbrow.calc.planning.Fix;
import org.plumbrow.calc.planning.Placement;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.Predecessor;
import org.plumbrow.calc.planning.Published;
import org.plumbrow.calc.planning.Work;

/** Turns free activities into tasks. */
final class TaskMaking {

    private final PlanningProblem problem;
    private final Plan first;
    private final Slots slots;
    private final Map<String, Integer> numbers;
    private final Map<String, Integer> projectNumbers;
    private final Optional<Published> published;
    private final Map<String, Activity> activities = new HashMap<>();
    private final Map<String, Integer> crewNumbers = new HashMap<>();
    private final Map<String, Integer> poolNumbers = new HashMap<>();
    private final Map<String, List<Activity>> members = new HashMap<>();
    private final Map<String, Integer> groupNumbers = new HashMap<>();
    /** Of each group: the crew it is settled with, and who may do all of it. */
    private final Map<String, Optional<String>> settledCrews = new HashMap<>();

    private final Map<String, int[]> crewsOfGroup = new HashMap<>();
    private final List<List<Integer>> groups = new ArrayList<>();
    private final Map<Object, int[]> tables = new HashMap<>();

    private record LinkKey(@Nullable Work waited, int lagHalfDays, int lagCalendarDays) {}

    TaskMaking(
            PlanningProblem problem,
            Plan first,
            Slots slots,
            Map<String, Integer> numbers,
            Map<String, Integer> projectNumbers,
            Optional<Published> published) {
        this.problem = problem;
        this.first = first;
        this.slots = slots;
        this.numbers = numbers;
        this.projectNumbers = projectNumbers;
        this.published = published;
        for (Activity activity : problem.activities()) {
            activities.put(activity.id(), activity);
            if (activity.work() instanceof Work.ByCrew && !(activity.fix() instanceof Fix.Done)) {
                group(activity)
                        .ifPresent(key -> members.computeIfAbsent(key, none -> new ArrayList<>())
                                .add(activity));
            }
        }
        problem.crews().forEach(crew -> crewNumbers.put(crew.id(), crewNumbers.size()));
        problem.equipment().forEach(kind -> poolNumbers.put(kind.id(), poolNumbers.size()));
    }

    private static Optional<String> group(Activity activity) {
        return activity.continuityGroup().map(name -> activity.projectId() + '\n' + name);
    }

    int[][] groups() {
        return BranchModel.ints(groups);
    }

    Task task(Activity activity) {
        List<Predecessor> open = activity.predecessors().stream()
                .filter(link -> numbers.containsKey(link.activityId()))
                .toList();
        int[] crews = activity.work() instanceof Work.ByCrew ? crews(activity) : new int[0];
        Optional<Placement> known = published.flatMap(plan -> plan.known(activity.id()));
        return new Task(new Task.Making(
                activity,
                kind(activity.work()),
                projectNumbers.get(activity.projectId()),
                release(activity),
                open.stream().mapToInt(link -> numbers.get(link.activityId())).toArray(),
                open.stream().map(this::table).toArray(int[][]::new),
                crews,
                halfDays(activity.work(), crews),
                activity.outdoor() && !slots.fairWeather,
                groupNumber(activity),
                activity.equipment().stream()
                        .mapToInt(need -> poolNumbers.get(need.equipmentId()))
                        .toArray(),
                activity.equipment().stream().mapToInt(need -> need.count()).toArray(),
                known.map(placement -> slots.axis.atOrAfter(placement.start())).orElse(-1),
                known.flatMap(Placement::crewId)
                        .map(id -> crewNumbers.getOrDefault(id, -1))
                        .orElse(-1),
                activity.work() instanceof Work.Waiting wait ? slots.wait(wait) : null));
    }

    private static Task.Kind kind(Work work) {
        if (work instanceof Work.ByCrew) {
            return Task.Kind.CREW;
        }
        return work instanceof Work.AtDesk ? Task.Kind.DESK : Task.Kind.WAIT;
    }

    private int release(Activity activity) {
        int release = slots.today;
        if (activity.release().isPresent()) {
            HalfDay from = activity.release().get();
            release = Math.max(release, slots.axis.atOrAfter(from));
        }
        for (Predecessor link : activity.predecessors()) {
            if (!numbers.containsKey(link.activityId())) {
                HalfDay finish = first.of(link.activityId()).orElseThrow().finish();
                release = Math.max(release, slots.readyAfter(finish, link));
            }
        }
        return release;
    }

    private int[] table(Predecessor link) {
        Activity before = activities.get(link.activityId());
        @Nullable Work wait = before.work() instanceof Work.Waiting ? before.work() : null;
        return tables.computeIfAbsent(
                new LinkKey(wait, link.lagHalfDays(), link.lagCalendarDays()),
                key -> wait instanceof Work.Waiting waiting
                        ? slots.readyAfterWait(waiting, link)
                        : slots.readyAfterWork(link));
    }

    /** As the planner chooses: the group's settled crew alone, else those that may do all of the group. */
    private int[] crews(Activity activity) {
        Optional<String> key = group(activity);
        if (key.isEmpty()) {
            return crewsForAll(List.of(activity));
        }
        Optional<String> settled =
                settledCrews.computeIfAbsent(key.get(), name -> settledCrew(members.getOrDefault(name, List.of())));
        if (settled.isEmpty()) {
            return crewsOfGroup.computeIfAbsent(key.get(), name -> crewsForAll(members.get(name)));
        }
        int only = crewNumbers.get(settled.get());
        return may(problem.crews().get(only), activity) ? new int[] {only} : new int[0];
    }

    private int[] crewsForAll(List<Activity> together) {
        return problem.crews().stream()
                .filter(crew -> together.stream().allMatch(member -> may(crew, member)))
                .mapToInt(crew -> crewNumbers.get(crew.id()))
                .toArray();
    }

    /** The crew of the member that was settled first: those under way before those pinned, each kind by start. */
    private Optional<String> settledCrew(List<Activity> together) {
        Optional<Activity> earliest = Optional.empty();
        for (Activity member : together) {
            boolean counts =
                    !(member.fix() instanceof Fix.Free) && first.of(member.id()).isPresent();
            if (counts && (earliest.isEmpty() || isSettledBefore(member, earliest.get()))) {
                earliest = Optional.of(member);
            }
        }
        return earliest.flatMap(member -> first.of(member.id())).flatMap(Placement::crewId);
    }

    private static boolean isSettledBefore(Activity one, Activity other) {
        if (one.fix() instanceof Fix.Begun first) {
            return !(other.fix() instanceof Fix.Begun second) || first.start().isBefore(second.start());
        }
        return one.fix() instanceof Fix.Pinned first
                && other.fix() instanceof Fix.Pinned second
                && first.start().isBefore(second.start());
    }

    private static boolean may(Crew crew, Activity activity) {
        return activity.work() instanceof Work.ByCrew work
                && work.halfDaysByCrew().containsKey(crew.id())
                && crew.skills().containsAll(work.skills());
    }

    private int[] halfDays(Work work, int[] crews) {
        if (work instanceof Work.ByCrew byCrew) {
            return Arrays.stream(crews)
                    .map(crew -> byCrew.halfDaysByCrew()
                            .get(problem.crews().get(crew).id()))
                    .toArray();
        }
        return work instanceof Work.AtDesk desk ? new int[] {desk.halfDays()} : new int[0];
    }

    private int groupNumber(Activity activity) {
        Optional<String> key = activity.work() instanceof Work.ByCrew ? group(activity) : Optional.empty();
        if (key.isEmpty()) {
            return -1;
        }
        int number = groupNumbers.computeIfAbsent(key.get(), none -> {
            groups.add(new ArrayList<>());
            return groups.size() - 1;
        });
        groups.get(number).add(numbers.get(activity.id()));
        return number;
    }
}
