package org.plumbrow.calc.planning;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.plumbrow.calc.calendar.HalfDay;

/**
 * One thing to be done or waited for, of one project.
 *
 * @param id unique in the branch
 * @param words what it is, without the project's name: "racking"
 * @param release not before then, if given (a delivery date, a field free of cattle)
 * @param equipment each kind once
 * @param continuityGroup works of a project with the same group are done by one crew
 * @param outdoor loses half-days to weather where the branch plans an allowance
 */
public record Activity(
        String id,
        String projectId,
        String words,
        Work work,
        Optional<HalfDay> release,
        List<Predecessor> predecessors,
        List<EquipmentNeed> equipment,
        Optional<String> continuityGroup,
        boolean outdoor,
        Fix fix) {

    public Activity {
        predecessors = List.copyOf(predecessors);
        equipment = List.copyOf(equipment);
        Set<String> kinds = equipment.stream().map(EquipmentNeed::equipmentId).collect(Collectors.toSet());
        if (kinds.size() < equipment.size()) {
            throw new IllegalArgumentException("activity " + id + " names a kind of equipment twice");
        }
    }

    /** A free activity that nothing precedes; the shortest way to write one, to be completed by the {@code with} verbs. */
    public static Activity of(String id, String projectId, String words, Work work) {
        return new Activity(
                id, projectId, words, work, Optional.empty(), List.of(), List.of(), Optional.empty(), false, Fix.FREE);
    }

    public Activity after(Predecessor... first) {
        return new Activity(
                id, projectId, words, work, release, List.of(first), equipment, continuityGroup, outdoor, fix);
    }

    public Activity notBefore(HalfDay earliest) {
        return new Activity(
                id,
                projectId,
                words,
                work,
                Optional.of(earliest),
                predecessors,
                equipment,
                continuityGroup,
                outdoor,
                fix);
    }

    public Activity with(EquipmentNeed... needs) {
        return new Activity(
                id, projectId, words, work, release, predecessors, List.of(needs), continuityGroup, outdoor, fix);
    }

    public Activity inGroup(String group) {
        return new Activity(
                id, projectId, words, work, release, predecessors, equipment, Optional.of(group), outdoor, fix);
    }

    public Activity outdoors() {
        return new Activity(id, projectId, words, work, release, predecessors, equipment, continuityGroup, true, fix);
    }

    public Activity fixed(Fix settled) {
        return new Activity(
                id, projectId, words, work, release, predecessors, equipment, continuityGroup, outdoor, settled);
    }
}
