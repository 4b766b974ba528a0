package org.plumbrow.calc.planning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/** Which crews may do a work: by skill, by name, and by the rule that one crew does all of a group. */
final class CrewChoice {

    private final Board board;
    private final Map<String, Integer> crewOfGroup = new HashMap<>();
    private final Map<String, List<Integer>> members = new HashMap<>();
    /** Who may do all of a group, found once a group. */
    private final Map<String, List<Integer>> crewsOfGroup = new HashMap<>();

    CrewChoice(Board board) {
        this.board = board;
        for (int number = 0; number < board.placed.length; number++) {
            Activity activity = board.activity(number);
            if (activity.work() instanceof Work.ByCrew && !(activity.fix() instanceof Fix.Done)) {
                int member = number;
                group(activity)
                        .ifPresent(key -> members.computeIfAbsent(key, none -> new ArrayList<>())
                                .add(member));
            }
        }
    }

    private static Optional<String> group(Activity activity) {
        return activity.continuityGroup().map(name -> activity.projectId() + '\n' + name);
    }

    /** The crews that may do it now, in the problem's order: the group's crew alone once there is one. */
    List<Integer> of(int number) {
        Optional<String> group = group(board.activity(number));
        if (group.isEmpty()) {
            return ableTo(number);
        }
        Integer settled = crewOfGroup.get(group.get());
        if (settled == null) {
            return crewsOfGroup.computeIfAbsent(group.get(), this::ableToDoAll);
        }
        return may(settled).test(number) ? List.of(settled) : List.of();
    }

    private List<Integer> ableToDoAll(String group) {
        return IntStream.range(0, board.crews.length)
                .filter(crew -> members.get(group).stream().allMatch(may(crew)))
                .boxed()
                .toList();
    }

    /** The crews that could do it by skill and name alone. */
    List<Integer> ableTo(int number) {
        List<Integer> able = new ArrayList<>();
        for (int crew = 0; crew < board.crews.length; crew++) {
            if (may(crew).test(number)) {
                able.add(crew);
            }
        }
        return able;
    }

    private Predicate<Integer> may(int crewNumber) {
        Crew crew = board.crews[crewNumber].crew;
        return number -> board.activity(number).work() instanceof Work.ByCrew work
                && work.halfDaysByCrew().containsKey(crew.id())
                && crew.skills().containsAll(work.skills());
    }

    int halfDays(int number, int crewNumber) {
        Work.ByCrew work = (Work.ByCrew) board.activity(number).work();
        return work.halfDaysByCrew().getOrDefault(board.crews[crewNumber].crew.id(), 1);
    }

    /** From now on this crew does all of the activity's group; the first one settled stays, and is the answer. */
    int settle(int number, int crewNumber) {
        Integer earlier = group(board.activity(number))
                .map(key -> crewOfGroup.putIfAbsent(key, crewNumber))
                .orElse(null);
        return earlier == null ? crewNumber : earlier;
    }

    /** Why no crew may do it. */
    String whyNobody(int number) {
        Work.ByCrew work = (Work.ByCrew) board.activity(number).work();
        Optional<String> group = group(board.activity(number));
        Integer settled = group.map(crewOfGroup::get).orElse(null);
        if (settled != null) {
            return "%s: %s does the other work of this group but may not do this. Give the crew the skills (%s) or split the work."
                    .formatted(board.name(number), board.crews[settled].crew.name(), skills(work));
        }
        if (!ableTo(number).isEmpty()) {
            return "%s: no one crew may do all of the work that one crew has to do here (%s). Give one crew all the skills."
                    .formatted(
                            board.name(number), together(group.map(members::get).orElse(List.of(number))));
        }
        boolean skilled =
                board.problem.crews().stream().anyMatch(crew -> crew.skills().containsAll(work.skills()));
        return skilled
                ? "%s: no crew is large enough.".formatted(board.name(number))
                : "%s: no crew has %s.".formatted(board.name(number), skills(work));
    }

    private String together(List<Integer> numbers) {
        return String.join(
                ", ",
                numbers.stream().map(member -> board.activity(member).words()).toList());
    }

    private static String skills(Work.ByCrew work) {
        return work.skills().isEmpty()
                ? "none"
                : String.join(" and ", work.skills().stream().sorted().toList());
    }
}
