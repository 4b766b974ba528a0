package org.plumbrow.account.firm;

import java.time.ZoneId;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.account.Branches;
import org.plumbrow.account.person.SecurityLog;
import org.plumbrow.database.BranchWall;
import org.plumbrow.web.Access;
import org.plumbrow.web.ConstraintSentences;
import org.plumbrow.web.May;
import org.plumbrow.web.Refusal;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/** The branches of the firm, for its owner. */
@Service
class FirmBranches {

    private final Branches branches;
    private final Access access;
    private final ConstraintSentences sentences;
    private final SecurityLog log;
    private final JdbcClient jdbc;
    private final TransactionTemplate transaction;

    FirmBranches(
            Branches branches,
            Access access,
            ConstraintSentences sentences,
            SecurityLog log,
            JdbcClient jdbc,
            TransactionTemplate transaction) {
        this.branches = branches;
        this.access = access;
        this.sentences = sentences;
        this.log = log;
        this.jdbc = jdbc;
        this.transaction = transaction;
    }

    /** A branch with the number of its people. */
    record Line(UUID id, String code, String name, String zone, long people) {

        /** "Eastern Time". */
        public String zoneWords() {
            return ZoneId.of(zone).getDisplayName(TextStyle.FULL, Locale.US);
        }
    }

    List<Line> all() {
        access.require(May.RUN_FIRM);
        return BranchWall.everywhere(() ->
                transaction.execute(status -> jdbc.sql("""
                        select b.id, b.code, b.name, b.zone,
                               (select count(distinct m.person_id) from membership m where m.branch_id = b.id) as people
                          from branch b order by b.name, b.id
                        """).query(Line.class).list()));
    }

    /** @return what is wrong; empty when the branch is open */
    Optional<Refusal> open(BranchForm form) {
        access.require(May.RUN_FIRM);
        Optional<ZoneId> zone = Zones.of(form.zone());
        if (zone.isEmpty()) {
            return Optional.of(new Refusal("zone", "Choose the time zone of the branch."));
        }
        String code = String.valueOf(form.branchCode()).strip().toUpperCase(Locale.ROOT);
        String name = String.valueOf(form.branchName()).strip();
        try {
            BranchWall.everywhere(() -> transaction.executeWithoutResult(status -> {
                branches.open(code, name, zone.get(), access.actor());
                log.write("branch-opened", access.actor(), "Opened the branch " + name + " (" + code + ").");
            }));
            return Optional.empty();
        } catch (DataIntegrityViolationException refused) {
            return Optional.of(sentences.refusal(refused, "branchCode", code));
        }
    }
}
