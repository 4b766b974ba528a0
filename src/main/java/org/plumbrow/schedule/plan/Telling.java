package org.plumbrow.schedule.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.schedule.plan.ToTell.Whom;
import org.plumbrow.web.NaturalOrder;

/**
 * Says who must be told of what changes between two plans: crews of their next weeks, customers of the days they live by,
 * utilities of the day on which they switch off. Pure.
 *
 * @param today of the later plan: customers and utilities are told of what is near
 * @param until crews are told of nothing that begins later
 * @param projects by id; what is of no known project is left out
 * @param crews names by id
 * @param utilities names by id
 */
public record Telling(
        HalfDay today,
        HalfDay until,
        Map<UUID, ProjectFacts> projects,
        Map<UUID, String> crews,
        Map<UUID, String> utilities) {

    public List<ToTell> of(PlanChanges changes) {
        List<PlanChanges.Move> moves = inTime(changes.moves());
        List<ToTell> all = new ArrayList<>();
        all.addAll(told(Whom.CREW, crews, byCrew(moves, changes.gone())));
        all.addAll(customers(changes));
        all.addAll(told(Whom.UTILITY, utilities, byUtility(inTime(changes.utilityMoves(today)))));
        return all;
    }

    private List<PlanChanges.Move> inTime(List<PlanChanges.Move> moves) {
        return moves.stream()
                .filter(move -> projects.containsKey(move.projectId()))
                .sorted(Comparator.comparing(
                                (PlanChanges.Move move) -> move.now().start())
                        .thenComparing(move -> move.now().activityId()))
                .toList();
    }

    private static List<ToTell> told(Whom whom, Map<UUID, String> names, Map<UUID, List<String>> lines) {
        return lines.entrySet().stream()
                .filter(one -> names.containsKey(one.getKey()))
                .map(one -> new ToTell(whom, one.getKey(), names.get(one.getKey()), one.getValue()))
                .sorted(Comparator.comparing(ToTell::name, NaturalOrder.OF_NAMES))
                .toList();
    }

    private Map<UUID, List<String>> byCrew(List<PlanChanges.Move> moves, Collection<PlannedRow> gone) {
        Map<UUID, List<String>> lines = new LinkedHashMap<>();
        for (PlanChanges.Move move : moves) {
            Set<UUID> whose = new LinkedHashSet<>();
            Stream.concat(move.was().stream(), Stream.of(move.now()))
                    .filter(row -> !row.start().isAfter(until))
                    .forEach(row -> row.crewId().ifPresent(whose::add));
            whose.forEach(crew -> add(lines, crew, work(move.now()) + ": " + ofCrew(move, crew)));
        }
        gone.stream()
                .filter(row -> !row.start().isAfter(until) && projects.containsKey(row.projectId()))
                .forEach(row -> row.crewId()
                        .ifPresent(
                                crew -> add(lines, crew, work(row) + ": " + span(row) + " → no longer in the plan")));
        return lines;
    }

    private String ofCrew(PlanChanges.Move move, UUID crew) {
        boolean was =
                move.was().flatMap(PlannedRow::crewId).filter(crew::equals).isPresent();
        boolean is = move.now().crewId().filter(crew::equals).isPresent();
        if (was && is) {
            return fromTo(move);
        }
        if (is) {
            return "new for you, " + span(move.now());
        }
        return "no longer yours"
                + move.now()
                        .crewId()
                        .map(crews::get)
                        .map(name -> ", goes to " + name)
                        .orElse("");
    }

    private List<ToTell> customers(PlanChanges changes) {
        Map<UUID, List<String>> lines = new LinkedHashMap<>();
        inTime(changes.customerMoves(today))
                .forEach(move -> add(lines, move.projectId(), move.now().title() + ": " + fromTo(move)));
        return lines.entrySet().stream()
                .map(one -> new ToTell(
                        Whom.CUSTOMER, one.getKey(), projects.get(one.getKey()).name(), one.getValue()))
                .sorted(Comparator.comparing(ToTell::name, NaturalOrder.OF_NAMES))
                .toList();
    }

    private Map<UUID, List<String>> byUtility(List<PlanChanges.Move> moves) {
        Map<UUID, List<String>> lines = new LinkedHashMap<>();
        moves.forEach(move -> Optional.ofNullable(
                        projects.get(move.projectId()).site().utilityId())
                .ifPresent(utility -> add(lines, utility, work(move.now()) + ": " + fromTo(move))));
        return lines;
    }

    private String work(PlannedRow row) {
        return projects.get(row.projectId()).name() + ", " + row.words();
    }

    private static String fromTo(PlanChanges.Move move) {
        return move.was().map(was -> span(was) + " → ").orElse("") + span(move.now());
    }

    private static String span(PlannedRow row) {
        String first =
                DayWords.of(row.start().date()) + " " + row.start().half().words();
        return row.start().date().equals(row.finish().date())
                ? first
                : first + " to " + DayWords.of(row.finish().date()) + " "
                        + row.finish().half().words();
    }

    private static void add(Map<UUID, List<String>> lines, UUID whose, String line) {
        lines.computeIfAbsent(whose, id -> new ArrayList<>()).add(line);
    }
}
