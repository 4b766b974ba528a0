package org.plumbrow.crew;

import java.util.Optional;
import java.util.UUID;
import org.plumbrow.branch.ChangeLog;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Adds and changes shared machines and when they are away; each change stands in the branch's log. */
@Service
@Transactional
public class EquipmentEditing {

    private final MachineRows machines;
    private final MachineAbsences absences;
    private final Access access;
    private final ChangeLog log;

    EquipmentEditing(MachineRows machines, MachineAbsences absences, Access access, ChangeLog log) {
        this.machines = machines;
        this.absences = absences;
        this.access = access;
        this.log = log;
    }

    /** @return what is wrong; empty when the machine is now there */
    public Optional<Refusal> add(UUID newId, UUID branchId, EquipmentTerms terms) {
        access.require(branchId, May.CHANGE_SETTINGS);
        Optional<Refusal> wrong = check(terms);
        if (wrong.isEmpty()) {
            machines.saveAndFlush(new Machine(newId, branchId, terms));
            log.added(branchId, access.actor(), thing(terms.name()), terms.written());
        }
        return wrong;
    }

    /** @return what is wrong; empty when the machine is now changed */
    public Optional<Refusal> change(UUID equipmentId, long version, EquipmentTerms terms) {
        Machine machine = of(equipmentId);
        EditedMeanwhile.check(version, machine.version());
        Optional<Refusal> wrong = check(terms);
        if (wrong.isEmpty()) {
            EquipmentTerms before = machine.terms();
            machine.become(terms);
            machines.saveAndFlush(machine);
            log.changed(machine.branchId(), access.actor(), thing(before.name()), before.written(), terms.written());
        }
        return wrong;
    }

    /** @return what is wrong; empty when the machine is now away then */
    public Optional<Refusal> away(UUID newId, UUID equipmentId, AwayTime time) {
        Machine machine = of(equipmentId);
        if (!time.isInOrder()) {
            return Optional.of(AwayTime.outOfOrder());
        }
        absences.saveAndFlush(new MachineAbsence(newId, machine, time));
        log.happened(machine.branchId(), access.actor(), thing(machine.name()), "Away", "", time.words());
        return Optional.empty();
    }

    /** @return when the machine would have been away */
    public AwayTime notAway(UUID equipmentId, UUID absenceId) {
        Machine machine = of(equipmentId);
        MachineAbsence absence = absences.findById(absenceId)
                .filter(found -> found.equipmentId().equals(equipmentId))
                .orElseThrow(NotFound::new);
        absences.delete(absence);
        log.happened(
                machine.branchId(),
                access.actor(),
                thing(machine.name()),
                "Away",
                absence.time().words(),
                "");
        return absence.time();
    }

    private Machine of(UUID equipmentId) {
        Machine machine = machines.findById(equipmentId).orElseThrow(NotFound::new);
        access.require(machine.branchId(), May.CHANGE_SETTINGS);
        return machine;
    }

    private static Optional<Refusal> check(EquipmentTerms terms) {
        return terms.until() != null && terms.until().isBefore(terms.from())
                ? Optional.of(new Refusal("until", "The last day lies before the first. Choose a later one."))
                : Optional.empty();
    }

    private static String thing(String name) {
        return "equipment " + name;
    }
}
