package org.plumbrow.branch;

import java.sql.Types;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.web.Access;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * A utility or permit office that the branch no longer works with: kept for what was, not offered for what comes. The
 * caller has asked for access.
 */
@Component
@Transactional(propagation = Propagation.MANDATORY)
public class EndOfUse {

    private final JdbcClient jdbc;
    private final BranchSettings settings;
    private final Access access;
    private final ChangeLog log;
    private final Clock clock;

    EndOfUse(JdbcClient jdbc, BranchSettings settings, Access access, ChangeLog log, Clock clock) {
        this.jdbc = jdbc;
        this.settings = settings;
        this.access = access;
        this.log = log;
        this.clock = clock;
    }

    /** @param words as the change log calls it: "utility Valley Electric" */
    public record Thing(String table, UUID id, UUID branchId, String words, Optional<LocalDate> endedOn) {}

    /** From today on, as the branch counts its days. */
    public void end(Thing thing) {
        endOn(
                thing,
                LocalDate.ofInstant(
                        clock.instant(), settings.facts(thing.branchId).zone()));
    }

    public void takeUpAgain(Thing thing) {
        endOn(thing, null);
    }

    private void endOn(Thing thing, @Nullable LocalDate day) {
        jdbc.sql("update " + thing.table + " set version = version + 1, ended_on = :day where id = :id")
                .param("day", day, Types.DATE)
                .param("id", thing.id)
                .update();
        log.happened(
                thing.branchId,
                access.actor(),
                thing.words,
                "Ended on",
                thing.endedOn.map(DayWords::withYear).orElse(""),
                day == null ? "" : DayWords.withYear(day));
    }
}
