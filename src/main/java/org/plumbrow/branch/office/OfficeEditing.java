package org.plumbrow.branch.office;

import java.sql.Types;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.branch.ChangeLog;
import org.plumbrow.branch.Days;
import org.plumbrow.branch.EndOfUse;
import org.plumbrow.branch.PermitOfficeFacts;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.core.simple.JdbcClient.StatementSpec;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Adds, changes and ends permit offices. */
@Service
@Transactional
public class OfficeEditing {

    private static final String ADD = """
            insert into permit_office (id, version, branch_id, name, code_edition, permit_least_days, permit_usual_days,
                                       permit_most_days, inspection_least_days, inspection_usual_days,
                                       inspection_most_days, phone)
            values (:id, 0, :branch, :name, :edition, :permitLeast, :permitUsual, :permitMost, :inspectionLeast,
                    :inspectionUsual, :inspectionMost, :phone)
            """;
    private static final String CHANGE = """
            update permit_office
               set version = version + 1, name = :name, code_edition = :edition, permit_least_days = :permitLeast,
                   permit_usual_days = :permitUsual, permit_most_days = :permitMost,
                   inspection_least_days = :inspectionLeast, inspection_usual_days = :inspectionUsual,
                   inspection_most_days = :inspectionMost, phone = :phone
             where id = :id and version = :version
            """;

    private final JdbcClient jdbc;
    private final BranchSettings settings;
    private final Access access;
    private final ChangeLog log;
    private final EndOfUse ending;

    OfficeEditing(JdbcClient jdbc, BranchSettings settings, Access access, ChangeLog log, EndOfUse ending) {
        this.jdbc = jdbc;
        this.settings = settings;
        this.access = access;
        this.log = log;
        this.ending = ending;
    }

    /** @throws org.springframework.dao.DataIntegrityViolationException constraint {@code permit_office_name_taken} */
    public void add(UUID newId, UUID branchId, OfficeTerms terms) {
        access.require(branchId, May.CHANGE_SETTINGS);
        with(terms, jdbc.sql(ADD)).param("id", newId).param("branch", branchId).update();
        log.added(branchId, access.actor(), thing(terms.name()), terms.written());
    }

    /** @throws EditedMeanwhile if somebody else changed it since that version */
    public void change(UUID branchId, UUID officeId, long version, OfficeTerms terms) {
        PermitOfficeFacts before = of(branchId, officeId);
        int changed = with(terms, jdbc.sql(CHANGE))
                .param("id", officeId)
                .param("version", version)
                .update();
        if (changed == 0) {
            throw new EditedMeanwhile(version, before.version());
        }
        log.changed(
                branchId,
                access.actor(),
                thing(before.name()),
                OfficeTerms.of(before).written(),
                terms.written());
    }

    private static StatementSpec with(OfficeTerms terms, StatementSpec statement) {
        StatementSpec named = statement
                .param("name", terms.name())
                .param("edition", terms.codeEdition().name())
                .param("phone", terms.phone());
        return withDays("inspection", terms.inspection(), withDays("permit", terms.permit(), named));
    }

    private static StatementSpec withDays(String wait, Optional<Days> days, StatementSpec statement) {
        return statement
                .param(wait + "Least", days.map(Days::least).orElse(null), Types.INTEGER)
                .param(wait + "Usual", days.map(Days::usual).orElse(null), Types.INTEGER)
                .param(wait + "Most", days.map(Days::most).orElse(null), Types.INTEGER);
    }

    /** Kept for what was, not offered for what comes. */
    public void end(UUID branchId, UUID officeId) {
        ending.end(thing(of(branchId, officeId)));
    }

    public void takeUpAgain(UUID branchId, UUID officeId) {
        ending.takeUpAgain(thing(of(branchId, officeId)));
    }

    private static EndOfUse.Thing thing(PermitOfficeFacts office) {
        return new EndOfUse.Thing(
                "permit_office", office.id(), office.branchId(), thing(office.name()), office.endedOn());
    }

    private PermitOfficeFacts of(UUID branchId, UUID officeId) {
        access.require(branchId, May.CHANGE_SETTINGS);
        return settings.permitOffice(branchId, officeId).orElseThrow(NotFound::new);
    }

    private static String thing(String name) {
        return "permit office " + name;
    }
}
