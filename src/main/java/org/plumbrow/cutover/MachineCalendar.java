package org.plumbrow.cutover;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.duration.EquipmentKind;
import org.plumbrow.calc.outage.CrewOffer;
import org.plumbrow.calc.outage.CrewOffer.Busy;
import org.plumbrow.calc.outage.ranking.Hands;
import org.plumbrow.crew.Crews;
import org.plumbrow.crew.EquipmentFacts;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.schedule.MachineAt;
import org.plumbrow.schedule.PublishedPlan;
import org.springframework.stereotype.Component;

/** The shared machines that a cutover needs, and when each is elsewhere: away, booked in the published plan, no longer there. */
@Component
class MachineCalendar {

    private final Crews crews;
    private final PublishedPlan plan;
    private final Projects projects;

    MachineCalendar(Crews crews, PublishedPlan plan, Projects projects) {
        this.crews = crews;
        this.plan = plan;
        this.projects = projects;
    }

    /** Each kind with all the branch has of it. What is booked for this very project does not count as elsewhere. */
    List<Hands.Machine> needed(ProjectFacts project, Set<EquipmentKind> kinds, LocalDate from, LocalDate to) {
        if (kinds.isEmpty()) {
            return List.of();
        }
        List<EquipmentFacts> all = crews.equipment(project.branchId(), from);
        List<MachineAt> booked =
                plan.machinesBooked(project.branchId(), HalfDay.morning(from), HalfDay.afternoon(to)).stream()
                        .filter(one -> !one.projectId().equals(project.id()))
                        .toList();
        Map<UUID, String> names = names(booked);
        return kinds.stream()
                .sorted()
                .map(kind -> new Hands.Machine(
                        kind.words(),
                        all.stream()
                                .filter(machine -> machine.kind() == kind)
                                .map(machine -> new CrewOffer(
                                        machine.id().toString(),
                                        machine.name(),
                                        busy(machine, booked, names, from, to)))
                                .toList()))
                .toList();
    }

    /** Kinds that crews of the branch have to share; what each has of its own nobody asks for. */
    Set<EquipmentKind> shared(UUID branchId, LocalDate today) {
        return crews.equipment(branchId, today).stream()
                .filter(machine -> !machine.hasGoneBy(today))
                .map(EquipmentFacts::kind)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private Map<UUID, String> names(Collection<MachineAt> booked) {
        return projects.factsUnchecked(booked.stream().map(MachineAt::projectId).collect(Collectors.toSet())).stream()
                .collect(Collectors.toMap(ProjectFacts::id, ProjectFacts::name));
    }

    private static List<Busy> busy(
            EquipmentFacts machine, List<MachineAt> booked, Map<UUID, String> names, LocalDate from, LocalDate to) {
        List<Busy> busy = new ArrayList<>();
        machine.away().forEach(away -> busy.add(new Busy(away.first(), away.last(), away.words())));
        if (machine.from().isAfter(from)) {
            busy.add(new Busy(
                    HalfDay.morning(from), HalfDay.afternoon(machine.from().minusDays(1)), "not there yet"));
        }
        machine.until()
                .filter(last -> last.isBefore(to))
                .ifPresent(last -> busy.add(
                        new Busy(HalfDay.morning(last.plusDays(1)), HalfDay.afternoon(to), "no longer there")));
        booked.stream()
                .filter(one -> one.equipmentId().equals(machine.id()))
                .forEach(one -> busy.add(
                        new Busy(one.first(), one.last(), names.getOrDefault(one.projectId(), "another job"))));
        return busy;
    }
}
