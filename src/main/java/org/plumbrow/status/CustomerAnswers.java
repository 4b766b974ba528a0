package org.plumbrow.status;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.cutover.OutageFacts;
import org.plumbrow.cutover.Outages;
import org.plumbrow.database.Ids;
import org.plumbrow.project.Journal;
import org.plumbrow.project.ProjectContact;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.web.Actor;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * What customers say to the day of their outage, on their own page. Each answer is kept; the newest counts, stands at
 * the window, in the journal and in a letter to the project manager.
 */
@Service
@Transactional
public class CustomerAnswers {

    public static final int REASON_MOST = 200;
    public static final int NAME_MOST = 80;

    private static final int ANSWERS_A_WINDOW = 20;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE, MMM d", Locale.US);
    private static final Actor BY = Actor.named("Customer's page");

    private final JdbcClient jdbc;
    private final Outages outages;
    private final Journal journal;
    private final StaffLetters letters;
    private final Clock clock;

    CustomerAnswers(JdbcClient jdbc, Outages outages, Journal journal, StaffLetters letters, Clock clock) {
        this.jdbc = jdbc;
        this.outages = outages;
        this.journal = journal;
        this.letters = letters;
        this.clock = clock;
    }

    /**
     * An answer.
     *
     * @param day that was answered to
     * @param reason why the day does not work; empty when it does, or when nothing was said
     * @param name of who answered, if they wrote it
     */
    public record Answer(LocalDate day, boolean agrees, String reason, String name, Instant at) {}

    /** What became of an answer. */
    public enum Outcome {
        KEPT,
        /** The day that was answered to is no longer the day. */
        DAY_HAS_CHANGED,
        TOO_MANY
    }

    /** All of a project, newest first; whoever calls has asked who may see it. */
    @Transactional(readOnly = true)
    public List<Answer> of(UUID projectId) {
        return jdbc.sql(
                        "select day, agrees, reason, name, at from customer_answer where project_id = ? order by at desc, id desc")
                .param(projectId)
                .query((row, n) -> new Answer(
                        row.getObject("day", LocalDate.class),
                        row.getBoolean("agrees"),
                        row.getString("reason"),
                        row.getString("name"),
                        row.getObject("at", OffsetDateTime.class).toInstant()))
                .list();
    }

    /**
     * @param day as it stood on the page that was answered
     * @param said checked by the form: its texts fit
     */
    public Outcome answer(ProjectFacts project, ProjectContact contact, LocalDate day, Said said) {
        journal.inTurn(project.id());
        Optional<OutageFacts> window = outages.live(project.id())
                .filter(one -> one.state().isAnnounced() && one.day().equals(day) && one.powerOffAt() == null);
        if (window.isEmpty()) {
            return Outcome.DAY_HAS_CHANGED;
        }
        List<Said> before = saidTo(window.get().id());
        if (!before.isEmpty() && before.get(0).equals(said)) {
            return Outcome.KEPT;
        }
        if (before.size() >= ANSWERS_A_WINDOW) {
            return Outcome.TOO_MANY;
        }
        keep(project, contact, window.get(), said);
        outages.customerAnswers(project.id(), said.agrees, said.reason, "the customer's page", BY);
        letters.answered(project, window.get(), said, DAY.format(day));
        return Outcome.KEPT;
    }

    /** What somebody wrote. */
    public record Said(boolean agrees, String reason, String name) {
        public Said {
            reason = reason.strip();
            name = name.strip();
        }
    }

    private List<Said> saidTo(UUID windowId) {
        return jdbc.sql(
                        "select agrees, reason, name from customer_answer where window_id = ? order by at desc, id desc")
                .param(windowId)
                .query(Said.class)
                .list();
    }

    private void keep(ProjectFacts project, ProjectContact contact, OutageFacts window, Said said) {
        jdbc.sql("""
                insert into customer_answer (id, branch_id, project_id, window_id, contact_id, day, agrees, reason, name, at)
                values (:id, :branch, :project, :window, :contact, :day, :agrees, :reason, :name, :at)
                """)
                .param("id", Ids.next())
                .param("branch", project.branchId())
                .param("project", project.id())
                .param("window", window.id())
                .param("contact", contact.id())
                .param("day", window.day())
                .param("agrees", said.agrees)
                .param("reason", said.reason)
                .param("name", said.name)
                .param("at", SharingRows.utc(clock.instant()))
                .update();
    }
}
