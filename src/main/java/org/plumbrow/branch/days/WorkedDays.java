package org.plumbrow.branch.days;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.UUID;
import org.plumbrow.branch.BranchFacts;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.branch.ChangeLog;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.web.Access;
import org.plumbrow.web.May;
import org.plumbrow.web.Refusal;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Days on which crews work though the branch otherwise would not: a few Saturdays to catch up. */
@Service
@Transactional
public class WorkedDays {

    private static final String THING = "working days";
    private static final String FIELD = "Also worked";

    private final JdbcClient jdbc;
    private final BranchSettings settings;
    private final Access access;
    private final ChangeLog log;

    WorkedDays(JdbcClient jdbc, BranchSettings settings, Access access, ChangeLog log) {
        this.jdbc = jdbc;
        this.settings = settings;
        this.access = access;
        this.log = log;
    }

    /** A day off that is worked. */
    public record Worked(LocalDate day, String reason) {}

    /** Those that are worked already stay as they are. @return what is wrong; empty when crews work on all of them */
    public Optional<Refusal> work(UUID branchId, Collection<LocalDate> days, String reason) {
        access.require(branchId, May.CHANGE_SETTINGS);
        BranchFacts branch = settings.facts(branchId);
        TreeSet<LocalDate> more = new TreeSet<>(days);
        more.removeIf(branch.workDays()::isWorking);
        for (LocalDate day : more) {
            if (branch.calendar().closedDays().containsKey(day)) {
                return Optional.of(new Refusal(
                        "day",
                        "%s is closed: %s. Choose another day, or reopen it first."
                                .formatted(
                                        DayWords.withYear(day),
                                        branch.calendar().closedDays().get(day))));
            }
        }
        more.forEach(day -> jdbc.sql("insert into worked_day (branch_id, day, reason) values (?, ?, ?)")
                .params(branchId, day, reason)
                .update());
        if (!more.isEmpty()) {
            log.happened(branchId, access.actor(), THING, FIELD, "", words(more) + ", " + reason);
        }
        return Optional.empty();
    }

    private static String words(Collection<LocalDate> days) {
        return String.join(", ", days.stream().map(DayWords::withYear).toList());
    }

    /** @return why it was worked; empty if somebody took it off before */
    public Optional<String> takeOff(UUID branchId, LocalDate day) {
        access.require(branchId, May.CHANGE_SETTINGS);
        Optional<String> reason = jdbc.sql("delete from worked_day where branch_id = ? and day = ? returning reason")
                .params(branchId, day)
                .query(String.class)
                .optional();
        reason.ifPresent(
                why -> log.happened(branchId, access.actor(), THING, FIELD, DayWords.withYear(day) + ", " + why, ""));
        return reason;
    }

    @Transactional(readOnly = true)
    public List<Worked> since(UUID branchId, LocalDate day) {
        access.require(branchId, May.CHANGE_SETTINGS);
        return jdbc.sql("select day, reason from worked_day where branch_id = ? and day >= ? order by day")
                .params(branchId, day)
                .query(Worked.class)
                .list();
    }
}
