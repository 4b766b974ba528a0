package org.plumbrow.cutover.ridethrough;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.calc.outage.ranking.WeatherHour.Forecast;
import org.plumbrow.project.Journal;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.plumbrow.web.Refusal;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The weather forecast that somebody pasted for a site. */
@Service
@Transactional
class Forecasts {

    private static final int LONGEST = 60_000;

    private final JdbcClient jdbc;
    private final ProjectAccess projectAccess;
    private final Access access;
    private final Journal journal;
    private final Clock clock;

    Forecasts(JdbcClient jdbc, ProjectAccess projectAccess, Access access, Journal journal, Clock clock) {
        this.jdbc = jdbc;
        this.projectAccess = projectAccess;
        this.access = access;
        this.journal = journal;
        this.clock = clock;
    }

    /** @param version -1 while nobody has pasted one */
    record Kept(String text, String by, Instant at, long version) {
        static final Kept NOTHING = new Kept("", "", Instant.EPOCH, -1);

        Map<LocalDateTime, Forecast> hours() {
            return ForecastText.read(text);
        }
    }

    @Transactional(readOnly = true)
    public Kept of(UUID projectId) {
        return jdbc.sql("select content, brought_by, brought_at, version from site_forecast where project_id = ?")
                .param(projectId)
                .query((row, n) -> new Kept(
                        row.getString("content"),
                        row.getString("brought_by"),
                        row.getObject("brought_at", OffsetDateTime.class).toInstant(),
                        row.getLong("version")))
                .optional()
                .orElse(Kept.NOTHING);
    }

    /** @throws EditedMeanwhile if somebody pasted another one since the page was opened */
    public Optional<Refusal> keep(UUID projectId, String text, long version) {
        UUID branchId = projectAccess.require(projectId, May.BOOK_OUTAGE);
        if (text.length() > LONGEST) {
            return Optional.of(new Refusal("text", "60,000 characters fit: paste fewer hours."));
        }
        int hours;
        try {
            hours = ForecastText.read(text).size();
        } catch (IllegalArgumentException wrong) {
            return Optional.of(new Refusal("text", String.valueOf(wrong.getMessage())));
        }
        if (!store(projectId, branchId, text, version)) {
            throw new EditedMeanwhile(version, of(projectId).version());
        }
        journal.append(
                JournalEvent.of(projectId, "outage.forecast", "A weather forecast was brought; hours: " + hours + "."),
                access.actor(),
                clock.instant());
        return Optional.empty();
    }

    private boolean store(UUID projectId, UUID branchId, String text, long version) {
        return jdbc.sql("""
                        insert into site_forecast as f (project_id, branch_id, content, brought_at, brought_by)
                        select :project, :branch, :text, :at, :by
                         where :version = -1 or exists (select 1 from site_forecast where project_id = :project)
                        on conflict (project_id) do update
                           set content = :text, brought_at = :at, brought_by = :by, version = f.version + 1
                         where f.version = :version
                        """)
                        .param("project", projectId)
                        .param("branch", branchId)
                        .param("text", text)
                        .param("at", OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC))
                        .param("by", access.actor().name())
                        .param("version", version)
                        .update()
                == 1;
    }
}
