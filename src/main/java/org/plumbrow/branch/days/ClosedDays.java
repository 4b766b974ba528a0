package org.plumbrow.branch.days;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.BranchFacts.OwnClosedDay;
import org.plumbrow.branch.ChangeLog;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.database.Ids;
import org.plumbrow.web.Access;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Refusal;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Days off that the rules do not know: of the branch itself, or of one of its utilities. */
@Service
@Transactional
public class ClosedDays {

    /** Longer pauses are entered in parts. */
    private static final int MOST_AT_ONCE = 31;

    private final JdbcClient jdbc;
    private final Access access;
    private final ChangeLog log;

    ClosedDays(JdbcClient jdbc, Access access, ChangeLog log) {
        this.jdbc = jdbc;
        this.access = access;
        this.log = log;
    }

    /**
     * Whose days they are.
     *
     * @param utilityId none for the branch itself
     * @param thing as the change log calls it: "working days", "utility Valley Electric"
     */
    public record Whose(UUID branchId, @Nullable UUID utilityId, String thing) {

        public static Whose ofBranch(UUID branchId) {
            return new Whose(branchId, null, "working days");
        }
    }

    /** @return what is wrong; empty when each day from the first to the last is now closed */
    public Optional<Refusal> close(Whose whose, LocalDate first, LocalDate last, String reason) {
        access.require(whose.branchId, May.CHANGE_SETTINGS);
        long days = ChronoUnit.DAYS.between(first, last) + 1;
        if (days < 1) {
            return Optional.of(new Refusal("lastDay", "The last day lies before the first. Choose a later one."));
        }
        if (days > MOST_AT_ONCE) {
            return Optional.of(new Refusal(
                    "lastDay",
                    "These are " + days + " days; close at most " + MOST_AT_ONCE
                            + " at once. Choose an earlier last day."));
        }
        first.datesUntil(last.plusDays(1)).forEach(day -> insert(whose, day, reason));
        log.happened(whose.branchId, access.actor(), whose.thing, "Closed", "", words(first, last) + ", " + reason);
        return Optional.empty();
    }

    private void insert(Whose whose, LocalDate day, String reason) {
        jdbc.sql("insert into closed_day (id, branch_id, utility_id, day, reason)"
                        + " values (:id, :branch, :utility, :day, :reason)")
                .param("id", Ids.next())
                .param("branch", whose.branchId)
                .param("utility", whose.utilityId, java.sql.Types.OTHER)
                .param("day", day)
                .param("reason", reason)
                .update();
    }

    private static String words(LocalDate first, LocalDate last) {
        return first.equals(last)
                ? DayWords.withYear(first)
                : DayWords.withYear(first) + " to " + DayWords.withYear(last);
    }

    /** The branch whose own closed day this is. @throws NotFound if there is none, or it is another branch's */
    public UUID branchOf(UUID closedDayId) {
        return jdbc.sql("select branch_id from closed_day where id = :id and utility_id is null")
                .param("id", closedDayId)
                .query(UUID.class)
                .optional()
                .orElseThrow(NotFound::new);
    }

    /** @return the day that is open again */
    public OwnClosedDay reopen(Whose whose, UUID closedDayId) {
        access.require(whose.branchId, May.CHANGE_SETTINGS);
        List<OwnClosedDay> gone = jdbc.sql("delete from closed_day where id = :id and branch_id = :branch"
                        + " and utility_id is not distinct from :utility::uuid returning id, day, reason")
                .param("id", closedDayId)
                .param("branch", whose.branchId)
                .param("utility", whose.utilityId, java.sql.Types.OTHER)
                .query((row, number) -> new OwnClosedDay(
                        row.getObject("id", UUID.class),
                        row.getObject("day", LocalDate.class),
                        row.getString("reason")))
                .list();
        OwnClosedDay day = gone.stream().findFirst().orElseThrow(NotFound::new);
        log.happened(
                whose.branchId,
                access.actor(),
                whose.thing,
                "Closed",
                words(day.date(), day.date()) + ", " + day.reason(),
                "");
        return day;
    }
}
