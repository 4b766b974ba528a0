package org.plumbrow.status.told;

import com.github.kagkarlsson.scheduler.task.Task;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import com.github.kagkarlsson.scheduler.task.schedule.FixedDelay;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.cutover.OutageFacts;
import org.plumbrow.cutover.Outages;
import org.plumbrow.database.BranchWall;
import org.plumbrow.notice.Outbox;
import org.plumbrow.project.Journal;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.web.Actor;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Reminds customers of their outage two days and one day before, from eight o'clock of the branch on. Each reminder is a
 * row written in the letter's own transaction: it is sent once, whichever node comes first. Whoever was told today needs
 * no reminder today.
 */
@Component
class OutageReminders {

    static final int DAYS_BEFORE = 2;
    private static final LocalTime FROM = LocalTime.of(8, 0);
    private static final int MINUTES = 15;

    private final Outages outages;
    private final BranchSettings settings;
    private final ReminderLetters letters;
    private final Outbox outbox;
    private final Journal journal;
    private final JdbcClient jdbc;
    private final TransactionTemplate transaction;
    private final Clock clock;

    OutageReminders(
            Outages outages,
            BranchSettings settings,
            ReminderLetters letters,
            Outbox outbox,
            Journal journal,
            JdbcClient jdbc,
            TransactionTemplate transaction,
            Clock clock) {
        this.outages = outages;
        this.settings = settings;
        this.letters = letters;
        this.outbox = outbox;
        this.journal = journal;
        this.jdbc = jdbc;
        this.transaction = transaction;
        this.clock = clock;
    }

    @Configuration(proxyBeanMethods = false)
    static class Work {
        @Bean
        Task<Void> remindOfOutages(OutageReminders reminders) {
            return Tasks.recurring("remind-of-outages", FixedDelay.ofMinutes(MINUTES))
                    .execute((instance, context) -> reminders.remind());
        }
    }

    /** Writes every reminder that is due by now, each in a transaction of its own. */
    void remind() {
        // in the zone furthest ahead and the one furthest behind it may be another day than here
        LocalDate here = LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC);
        List<OutageFacts> near =
                BranchWall.everywhere(() -> outages.announced(here.minusDays(1), here.plusDays(DAYS_BEFORE + 1L)));
        near.forEach(window -> BranchWall.within(
                window.branchId(),
                () -> transaction.execute(status -> {
                    ifDue(window);
                    return window;
                })));
    }

    private void ifDue(OutageFacts window) {
        ZoneId zone = settings.facts(window.branchId()).zone();
        ZonedDateTime now = clock.instant().atZone(zone);
        int days = (int) ChronoUnit.DAYS.between(now.toLocalDate(), window.day());
        boolean day = days >= 1 && days <= DAYS_BEFORE && !now.toLocalTime().isBefore(FROM);
        boolean ours = day && isToldBefore(window, now.toLocalDate(), zone) && window.powerOffAt() == null;
        if (ours && !isWritten(window, days)) {
            letters.of(window.projectId())
                    .filter(letter -> isFirst(window, days))
                    .ifPresent(letter -> {
                        outbox.withdraw(ReminderLetters.about(window.projectId()));
                        outbox.post(letter);
                        write(window, days);
                    });
        }
    }

    private boolean isWritten(OutageFacts window, int days) {
        return jdbc.sql("select exists (select from outage_reminder where window_id = ? and days_before = ?)")
                .params(window.id(), days)
                .query(Boolean.class)
                .single();
    }

    private static boolean isToldBefore(OutageFacts window, LocalDate today, ZoneId zone) {
        return window.customerTold() != null
                && LocalDate.ofInstant(window.customerTold().at(), zone).isBefore(today);
    }

    /** Whoever writes the row first reminds; it goes with the letter or not at all. */
    private boolean isFirst(OutageFacts window, int days) {
        return jdbc.sql("""
                insert into outage_reminder (window_id, days_before, branch_id, at) values (?, ?, ?, ?)
                on conflict do nothing
                """)
                        .params(
                                window.id(),
                                days,
                                window.branchId(),
                                OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC))
                        .update()
                == 1;
    }

    private void write(OutageFacts window, int days) {
        journal.append(
                JournalEvent.of(
                        window.projectId(),
                        "status.reminded",
                        "Reminder of the outage to the customer, " + (days == 1 ? "1 day" : days + " days")
                                + " before."),
                Actor.PLUMBROW,
                clock.instant());
    }
}
