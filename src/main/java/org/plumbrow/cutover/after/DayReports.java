package org.plumbrow.cutover.after;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Timestamp;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.cutover.daylog.DayStories;
import org.plumbrow.cutover.daylog.DayStory;
import org.plumbrow.database.Ids;
import org.plumbrow.evidence.EvidenceFacts;
import org.plumbrow.evidence.EvidenceStore;
import org.plumbrow.evidence.Keeping;
import org.plumbrow.evidence.Upload;
import org.plumbrow.project.Journal;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.web.Access;
import org.plumbrow.web.BranchCard;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Refusal;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The report of a day whose log is closed, for the utility and for the customer; kept among the papers when asked for. */
@Service
@Transactional
class DayReports {

    private static final int MOST_PHOTOS = 12;

    private final ProjectAccess projectAccess;
    private final Access access;
    private final DayStories stories;
    private final EvidenceStore evidence;
    private final Journal journal;
    private final JdbcClient jdbc;
    private final Clock clock;

    DayReports(
            ProjectAccess projectAccess,
            Access access,
            DayStories stories,
            EvidenceStore evidence,
            Journal journal,
            JdbcClient jdbc,
            Clock clock) {
        this.projectAccess = projectAccess;
        this.access = access;
        this.stories = stories;
        this.evidence = evidence;
        this.journal = journal;
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** A report that was kept among the papers. */
    record Kept(ReportFor reading, UUID evidenceId, String sha256, Instant at, String by) {}

    /**
     * What is known of one reading.
     *
     * @param sha256 of the report as the log tells it now; empty before the log is closed
     * @param kept the newest that was kept; null for none
     */
    record Reading(
            ReportFor reading, String sha256, @Nullable Kept kept) {
        public boolean stands() {
            return kept != null && kept.sha256.equals(sha256);
        }
    }

    record Page(ProjectFacts project, DayStory day, List<Reading> readings, boolean mayKeep) {}

    @Transactional(readOnly = true)
    Page page(UUID projectId, UUID windowId) {
        DayStory day = day(projectId, windowId, May.SEE_CUTOVERS);
        List<Kept> kept = kept(windowId);
        List<Reading> readings = java.util.Arrays.stream(ReportFor.values())
                .map(one -> new Reading(
                        one,
                        day.how().isClosed() ? hash(write(day, one)) : "",
                        kept.stream()
                                .filter(before -> before.reading == one)
                                .findFirst()
                                .orElse(null)))
                .toList();
        return new Page(
                day.project(), day, readings, projectAccess.may(day.project().branchId(), May.RUN_CUTOVER));
    }

    /** Empty before the log is closed. */
    @Transactional(readOnly = true)
    Optional<byte[]> pdf(UUID projectId, UUID windowId, ReportFor reading) {
        DayStory day = day(projectId, windowId, May.SEE_CUTOVERS);
        return day.how().isClosed() ? Optional.of(write(day, reading)) : Optional.empty();
    }

    Optional<Refusal> keep(UUID projectId, UUID windowId, ReportFor reading) {
        DayStory day = day(projectId, windowId, May.RUN_CUTOVER);
        if (!day.how().isClosed()) {
            return Optional.of(new Refusal("", "The report opens once the day log is closed."));
        }
        byte[] pdf = write(day, reading);
        String hash = hash(pdf);
        boolean kept =
                kept(windowId).stream().anyMatch(before -> before.reading == reading && before.sha256.equals(hash));
        return kept ? Optional.empty() : keep(day, reading, pdf, hash);
    }

    private Optional<Refusal> keep(DayStory day, ReportFor reading, byte[] pdf, String hash) {
        UUID projectId = day.project().id();
        UUID branchId = day.project().branchId();
        Upload upload = new Upload(fileName(day, reading), pdf, "Report of the day for the " + reading.slug());
        Keeping keeping = evidence.keep(branchId, projectId, upload, access.actor());
        if (keeping instanceof Keeping.Refused refused) {
            return Optional.of(new Refusal("", refused.sentence()));
        }
        UUID paper = ((Keeping.Kept) keeping).evidence().id();
        jdbc.sql("""
                insert into day_report (id, branch_id, window_id, reading, evidence_id, sha256, kept_at, kept_by)
                values (?, ?, ?, ?, ?, ?, ?, ?)
                """)
                .params(
                        Ids.next(),
                        branchId,
                        day.window().id(),
                        reading.name(),
                        paper,
                        hash,
                        Timestamp.from(clock.instant()),
                        access.visitor().name())
                .update();
        journal.append(
                JournalEvent.of(
                        projectId,
                        "outage.report",
                        "The report of the cutover day for the " + reading.slug() + " is kept among the papers."),
                access.actor(),
                clock.instant());
        return Optional.empty();
    }

    static String fileName(DayStory day, ReportFor reading) {
        return "%s %s, report for the %s.pdf"
                .formatted(
                        day.project().number(),
                        DayWords.withYear(day.window().day()).replace(",", ""),
                        reading.slug());
    }

    private DayStory day(UUID projectId, UUID windowId, May act) {
        UUID branchId = projectAccess.require(projectId, act);
        ZoneId zone = access.visitor().branch(branchId).map(BranchCard::zone).orElseThrow(NotFound::new);
        return stories.of(windowId, zone)
                .filter(day -> day.project().id().equals(projectId))
                .orElseThrow(NotFound::new);
    }

    private byte[] write(DayStory day, ReportFor reading) {
        return reading == ReportFor.CUSTOMER
                ? new CustomerReport(day).pdf()
                : new UtilityReport(day).pdf(pictures(day));
    }

    private List<UtilityReport.Picture> pictures(DayStory day) {
        if (day.photos().isEmpty()) {
            return List.of();
        }
        return evidence.of(day.photos()).stream()
                .filter(facts -> !facts.hidden() && facts.isPicture())
                .limit(MOST_PHOTOS)
                .flatMap(facts ->
                        evidence
                                .file(facts.id())
                                .map(file -> new UtilityReport.Picture(file.bytes(), words(facts)))
                                .stream())
                .toList();
    }

    private static String words(EvidenceFacts facts) {
        return (facts.caption().isEmpty() ? facts.name() : facts.caption()) + ", brought by " + facts.byName();
    }

    private List<Kept> kept(UUID windowId) {
        return jdbc.sql("select * from day_report where window_id = ? order by kept_at desc, id desc")
                .param(windowId)
                .query((row, n) -> new Kept(
                        ReportFor.valueOf(row.getString("reading")),
                        row.getObject("evidence_id", UUID.class),
                        row.getString("sha256"),
                        row.getTimestamp("kept_at").toInstant(),
                        row.getString("kept_by")))
                .list();
    }

    private static String hash(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException never) {
            throw new IllegalStateException(never);
        }
    }
}
