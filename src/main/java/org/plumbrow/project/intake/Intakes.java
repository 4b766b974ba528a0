package org.plumbrow.project.intake;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.branch.PermitOfficeFacts;
import org.plumbrow.branch.UtilityFacts;
import org.plumbrow.database.BackgroundRuns;
import org.plumbrow.database.Ids;
import org.plumbrow.evidence.table.TableReader;
import org.plumbrow.evidence.table.TableUnreadable;
import org.plumbrow.evidence.table.UserTable;
import org.plumbrow.web.Access;
import org.plumbrow.web.BranchCard;
import org.plumbrow.web.Csv;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** From a file that somebody brings to projects: match the columns, look at the preview, take all good rows in as one. */
@Service
@Transactional
class Intakes {

    static final String RUN_KIND = "project-intake";

    private final IntakeRows rows;
    private final Access access;
    private final BranchSettings settings;
    private final BackgroundRuns runs;
    private final JdbcClient jdbc;
    private final Clock clock;

    Intakes(
            IntakeRows rows,
            Access access,
            BranchSettings settings,
            BackgroundRuns runs,
            JdbcClient jdbc,
            Clock clock) {
        this.rows = rows;
        this.access = access;
        this.settings = settings;
        this.runs = runs;
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** A file as its page shows it: the choices and what each row means under them. */
    record Look(IntakeRows.Brought file, UserTable table, List<IntakeRow> rows) {
        public List<IntakeRow.Ready> ready() {
            return of(IntakeRow.Ready.class);
        }

        public List<IntakeRow.LeftOut> leftOut() {
            return of(IntakeRow.LeftOut.class);
        }

        public List<IntakeRow.IsHere> here() {
            return of(IntakeRow.IsHere.class);
        }

        private <T extends IntakeRow> List<T> of(Class<T> kind) {
            return rows.stream().filter(kind::isInstance).map(kind::cast).toList();
        }
    }

    /** @throws TableUnreadable if the file as a whole is no table */
    public UUID bring(String fileName, byte[] bytes) throws TableUnreadable {
        BranchCard branch = access.require(May.IMPORT);
        UserTable table = TableReader.read(bytes);
        UUID id = Ids.next();
        rows.insert(
                id,
                branch.id(),
                fileName,
                bytes,
                IntakeChoices.guessed(table.header()),
                access.actor(),
                clock.instant());
        return id;
    }

    @Transactional(readOnly = true)
    public List<IntakeRows.Brought> latest() {
        return rows.latest(access.require(May.IMPORT).id());
    }

    @Transactional(readOnly = true)
    public Look look(UUID id) {
        IntakeRows.Brought file = file(id);
        access.require(file.branchId(), May.IMPORT);
        return lookUnchecked(file);
    }

    /** For the work in the background, which re-reads everything against what is here by then. */
    Look lookUnchecked(UUID id) {
        return lookUnchecked(file(id));
    }

    private Look lookUnchecked(IntakeRows.Brought file) {
        try {
            UserTable table = TableReader.read(rows.bytes(file.id()));
            return new Look(file, table, IntakeReading.read(table, file.choices(), here(file.branchId())));
        } catch (TableUnreadable impossible) {
            throw new IllegalStateException("a file that was read once cannot be read again", impossible);
        }
    }

    /** @throws EditedMeanwhile if somebody saved other choices meanwhile */
    public void choose(UUID id, long openedVersion, IntakeChoices choices) {
        IntakeRows.Brought file = file(id);
        access.require(file.branchId(), May.IMPORT);
        if (!rows.choose(id, openedVersion, choices)) {
            throw new EditedMeanwhile(openedVersion, file.version());
        }
    }

    /** Asks for the rows to be taken in; asking twice takes them in once. */
    public void takeIn(UUID id) {
        IntakeRows.Brought file = file(id);
        access.require(file.branchId(), May.IMPORT);
        if (rows.letWait(id)) {
            runs.start(RUN_KIND, file.branchId(), id, access.actor().name());
        }
    }

    /** The rows that are left out, as a file to correct and bring again, with what to mend in a column of its own. */
    @Transactional(readOnly = true)
    public byte[] leftOut(UUID id) {
        Look look = look(id);
        List<String> header = new java.util.ArrayList<>(look.table.header());
        header.add("what to mend");
        // With the mark of UTF-8: this file is opened in a spreadsheet, mended, and brought again.
        StringBuilder text = new StringBuilder("\uFEFF");
        Csv table = Csv.to(text, header.toArray(new String[0]));
        look.leftOut().forEach(row -> table.row(withSentences(row)));
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static List<String> withSentences(IntakeRow.LeftOut row) {
        List<String> cells = new java.util.ArrayList<>(row.cells());
        cells.add(String.join(" ", row.sentences()));
        return cells;
    }

    private IntakeRows.Brought file(UUID id) {
        return rows.find(id).orElseThrow(NotFound::new);
    }

    private IntakeReading.Here here(UUID branchId) {
        Set<String> references = jdbc.sql(
                        "select lower(reference) from project where branch_id = ? and reference is not null")
                .param(branchId)
                .query(String.class)
                .set();
        Map<String, UUID> utilities = settings.utilities(branchId).stream()
                .collect(Collectors.toMap(each -> lower(each.name()), UtilityFacts::id, (first, second) -> first));
        Map<String, UUID> offices = settings.permitOffices(branchId).stream()
                .collect(Collectors.toMap(each -> lower(each.name()), PermitOfficeFacts::id, (first, second) -> first));
        LocalDate today =
                LocalDate.ofInstant(clock.instant(), settings.facts(branchId).zone());
        return new IntakeReading.Here(references, utilities, offices, today);
    }

    private static String lower(String name) {
        return name.toLowerCase(Locale.ROOT);
    }
}
