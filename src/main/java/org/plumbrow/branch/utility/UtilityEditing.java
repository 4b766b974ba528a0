package org.plumbrow.branch.utility;

import java.sql.Types;
import java.time.LocalTime;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.branch.ChangeLog;
import org.plumbrow.branch.EndOfUse;
import org.plumbrow.branch.UtilityFacts;
import org.plumbrow.branch.UtilityFacts.Slot;
import org.plumbrow.database.Ids;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.core.simple.JdbcClient.StatementSpec;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Adds, changes and ends utilities, and the hours in which they switch. */
@Service
@Transactional
public class UtilityEditing {

    private static final String ADD = """
            insert into utility (id, version, branch_id, name, notice_working_days, appointment_weekdays, working_weekdays,
                                 federal_holidays, disconnect_most_ft, must_be_present, phone, email)
            values (:id, 0, :branch, :name, :notice, :appointments, :working, :federal, :disconnect, :present, :phone, :email)
            """;
    private static final String CHANGE = """
            update utility
               set version = version + 1, name = :name, notice_working_days = :notice, appointment_weekdays = :appointments,
                   working_weekdays = :working, federal_holidays = :federal, disconnect_most_ft = :disconnect,
                   must_be_present = :present, phone = :phone, email = :email
             where id = :id and version = :version
            """;
    private static final String ADD_SLOT = """
            insert into utility_slot (id, branch_id, utility_id, off_from, off_to, back_by)
            values (:id, :branch, :utility, :from, :to, :backBy)
            """;

    private final JdbcClient jdbc;
    private final BranchSettings settings;
    private final Access access;
    private final ChangeLog log;
    private final EndOfUse ending;

    UtilityEditing(JdbcClient jdbc, BranchSettings settings, Access access, ChangeLog log, EndOfUse ending) {
        this.jdbc = jdbc;
        this.settings = settings;
        this.access = access;
        this.log = log;
        this.ending = ending;
    }

    /** @throws org.springframework.dao.DataIntegrityViolationException constraint {@code utility_name_taken} */
    public void add(UUID newId, UUID branchId, UtilityTerms terms) {
        access.require(branchId, May.CHANGE_SETTINGS);
        with(terms, jdbc.sql(ADD)).param("id", newId).param("branch", branchId).update();
        log.added(branchId, access.actor(), thing(terms.name()), terms.written());
    }

    /** @throws EditedMeanwhile if somebody else changed it since that version */
    public void change(UUID branchId, UUID utilityId, long version, UtilityTerms terms) {
        UtilityFacts before = of(branchId, utilityId);
        int changed = with(terms, jdbc.sql(CHANGE))
                .param("id", utilityId)
                .param("version", version)
                .update();
        if (changed == 0) {
            throw new EditedMeanwhile(version, before.version());
        }
        log.changed(
                branchId,
                access.actor(),
                thing(before.name()),
                UtilityTerms.of(before).written(),
                terms.written());
    }

    private static StatementSpec with(UtilityTerms terms, StatementSpec statement) {
        return statement
                .param("name", terms.name())
                .param("notice", terms.noticeWorkingDays())
                .param("appointments", terms.appointmentWeekdays().letters())
                .param("working", terms.workingWeekdays().letters())
                .param("federal", terms.federalHolidays())
                .param("disconnect", terms.disconnectMostFt())
                .param("present", terms.mustBePresent())
                .param("phone", terms.phone())
                .param("email", terms.email());
    }

    /** @throws org.springframework.dao.DataIntegrityViolationException constraint {@code utility_slot_twice} */
    public void addSlot(UUID branchId, UUID utilityId, LocalTime from, LocalTime to, @Nullable LocalTime backBy) {
        UtilityFacts utility = of(branchId, utilityId);
        Slot slot = new Slot(Ids.next(), from, to, Optional.ofNullable(backBy));
        jdbc.sql(ADD_SLOT)
                .param("id", slot.id())
                .param("branch", branchId)
                .param("utility", utilityId)
                .param("from", from)
                .param("to", to)
                .param("backBy", backBy, Types.TIME)
                .update();
        log.happened(branchId, access.actor(), thing(utility.name()), "Switching hours", "", slot.words());
    }

    /** @return the hours that no longer hold */
    public Slot removeSlot(UUID branchId, UUID utilityId, UUID slotId) {
        UtilityFacts utility = of(branchId, utilityId);
        Slot slot = utility.slots().stream()
                .filter(found -> found.id().equals(slotId))
                .findFirst()
                .orElseThrow(NotFound::new);
        jdbc.sql("delete from utility_slot where id = :id").param("id", slotId).update();
        log.happened(branchId, access.actor(), thing(utility.name()), "Switching hours", slot.words(), "");
        return slot;
    }

    /** The branch no longer works with it: kept for what was, not offered for what comes. */
    public void end(UUID branchId, UUID utilityId) {
        ending.end(thing(of(branchId, utilityId)));
    }

    public void takeUpAgain(UUID branchId, UUID utilityId) {
        ending.takeUpAgain(thing(of(branchId, utilityId)));
    }

    private static EndOfUse.Thing thing(UtilityFacts utility) {
        return new EndOfUse.Thing(
                "utility", utility.id(), utility.branchId(), thing(utility.name()), utility.endedOn());
    }

    private UtilityFacts of(UUID branchId, UUID utilityId) {
        access.require(branchId, May.CHANGE_SETTINGS);
        return settings.utility(branchId, utilityId).orElseThrow(NotFound::new);
    }

    static String thing(String name) {
        return "utility " + name;
    }
}
