package org.plumbrow.permit;

import com.github.kagkarlsson.scheduler.task.Task;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import com.github.kagkarlsson.scheduler.task.schedule.FixedDelay;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.plumbrow.branch.BranchFacts;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.database.BranchWall;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Reminds whoever looks after a project's permits of waits: shortly before their day, once it has passed, and before a
 * locate ticket ends. From eight o'clock of a working day of the branch on; each day of each wait once.
 */
@Component
class WaitReminders {

    private static final LocalTime FROM = LocalTime.of(8, 0);
    private static final int MINUTES = 15;

    private final ReminderRows rows;
    private final WaitLetters letters;
    private final Projects projects;
    private final BranchSettings settings;
    private final TransactionTemplate transaction;
    private final Clock clock;

    WaitReminders(
            ReminderRows rows,
            WaitLetters letters,
            Projects projects,
            BranchSettings settings,
            TransactionTemplate transaction,
            Clock clock) {
        this.rows = rows;
        this.letters = letters;
        this.projects = projects;
        this.settings = settings;
        this.transaction = transaction;
        this.clock = clock;
    }

    @Configuration(proxyBeanMethods = false)
    static class Work {
        @Bean
        Task<Void> remindOfWaits(WaitReminders reminders) {
            return Tasks.recurring("remind-of-waits", FixedDelay.ofMinutes(MINUTES))
                    .execute((instance, context) -> reminders.remind());
        }
    }

    /** Writes every reminder that is due by now, those of a branch in one transaction. */
    void remind() {
        // in the zone furthest ahead it may be tomorrow already
        LocalDate latest = LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC).plusDays(1);
        List<UUID> branches = BranchWall.everywhere(() -> rows.branchesWithAnything(latest));
        branches.forEach(branchId -> BranchWall.within(
                branchId,
                () -> transaction.execute(status -> {
                    branch(branchId);
                    return branchId;
                })));
    }

    private void branch(UUID branchId) {
        BranchFacts branch = settings.facts(branchId);
        ZonedDateTime now = clock.instant().atZone(branch.zone());
        LocalDate today = now.toLocalDate();
        if (now.toLocalTime().isBefore(FROM) || !branch.calendar().isWorking(today)) {
            return;
        }
        Map<UUID, List<Awaited>> due = rows.near(branchId, today).stream()
                .filter(one -> WaitReminder.of(one, today).isPresent())
                .collect(Collectors.groupingBy(Awaited::projectId));
        due.forEach((projectId, waits) -> project(projects.factsUnchecked(projectId), waits, today));
    }

    private void project(ProjectFacts project, List<Awaited> waits, LocalDate today) {
        String told = letters.told(project);
        if (told.isEmpty()) {
            return;
        }
        List<Awaited> first = waits.stream()
                .filter(one -> rows.isFirst(
                        one, WaitReminder.of(one, today).orElseThrow(), project.branchId(), told, clock.instant()))
                .toList();
        if (!first.isEmpty()) {
            letters.post(project, first, today);
        }
    }
}
