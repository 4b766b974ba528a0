package org.plumbrow.calc.planning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which crews may do a work: by skill, by name, and by the rule that one crew does all of a group. */
final class CrewChoice {

    private final Board board;
    /** Of each activity: the group that one crew does. */
    private final List<Optional<String>> groups = new ArrayList<>();

    private final Map<String, Integer> crewOfGroup = new HashMap<>();
    private final Map<String, List<Integer>> members = new HashMap<>();
    /** Who may do all of a group, found once a group. */
    private final Map<String, List<Integer>> crewsOfGroup = new HashMap<>();

    CrewChoice(Board board) {
        this.board = board;
        for (int number = 0; number < board.placed.length; number++) {
            Activity activity = board.activity(number);
            Optional<String> group = group(activity);
            groups.add(group);
            if (group.isPresent() && activity.work() instanceof Work.ByCrew && !(activity.fix() instanceof Fix.Done)) {
                members.computeIfAbsent(group.get(), none -> new ArrayList<>()).add(number);
            }
        }
    }

    private static Optional<String> group(Activity activity) {
        return activity.continuityGroup().map(name -> activity.projectId() + '\n' + name);
    }

    /** The crews that may do it now, in the problem's order: the group's crew alone once there is one. */
    List<Integer> of(int number) {
        Optional<String> group = groups.get(number);
        if (group.isEmpty()) {
            return ableTo(number);
        }
        Integer settled = crewOfGroup.get(group.get());
        if (settled == null) {
            return crewsOfGroup.computeIfAbsent(group.get(), this::ableToDoAll);
        }
        return may(settled, number) ? List.of(settled) : List.of();
    }

    private List<Integer> ableToDoAll(String group) {
        List<Integer> able = new ArrayList<>(ableTo(members.get(group).get(0)));
        for (int member : members.get(group)) {
            able.removeIf(crew -> !may(crew, member));
        }
        return able;
    }

    /** The crews that could do it by skill and name alone. */
    List<Integer> ableTo(int number) {
        List<Integer> able = new ArrayList<>();
        for (int crew = 0; crew < board.crews.length; crew++) {
            if (may(crew, number)) {
                able.add(crew);
            }
        }
        return able;
    }

    private boolean may(int crewNumber, int number) {
        Crew crew = board.crews[crewNumber].crew;
        return board.activity(number).work() instanceof Work.ByCrew work
                && work.halfDaysByCrew().containsKey(crew.id())
                && crew.skills().containsAll(work.skills());
    }

    int halfDays(int number, int crewNumber) {
        Work.ByCrew work = (Work.ByCrew) board.activity(number).work();
        return work.halfDaysByCrew().getOrDefault(board.crews[crewNumber].crew.id(), 1);
    }

    /** From now on this crew does all of the activity's group; the first one settled stays, and is the answer. */
    int settle(int number, int crewNumber) {
        Integer earlier = groups.get(number)
                .map(key -> crewOfGroup.putIfAbsent(key, crewNumber))
                .orElse(null);
        return earlier == null ? crewNumber : earlier;
    }

    /** Why no crew may do it. */
    String whyNobody(int number) {
        Work.ByCrew work = (Work.ByCrew) board.activity(number).work();
        Optional<String> group = groups.get(number);
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
