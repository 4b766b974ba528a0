package org.plumbrow.cutover.daylog;

import java.sql.Timestamp;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.calc.electrical.Service;
import org.plumbrow.cutover.ridethrough.LoadKind;
import org.plumbrow.cutover.ridethrough.SiteLoads;
import org.plumbrow.database.BranchWall;
import org.plumbrow.database.Ids;
import org.plumbrow.design.part.Cells;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.project.Stage;
import org.plumbrow.project.gate.GateRoad;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/** Projects of tests that go through the cutover have had an outage today, told weeks ago, with a whole day log. */
@Component
public class CutoverRoad implements GateRoad.Preparation {

    private final TestWorld world;
    private final Projects projects;
    private final JdbcClient jdbc;
    private final TransactionTemplate transaction;
    private final Clock clock;
    private final DayLogBook book;
    private final LogSteps steps;
    private final LogHolds holds;
    private final LogReversal reversal;
    private final SiteLoads loads;

    CutoverRoad(
            TestWorld world,
            Projects projects,
            JdbcClient jdbc,
            TransactionTemplate transaction,
            Clock clock,
            DayLogBook book,
            LogSteps steps,
            LogHolds holds,
            LogReversal reversal,
            SiteLoads loads) {
        this.loads = loads;
        this.world = world;
        this.projects = projects;
        this.jdbc = jdbc;
        this.transaction = transaction;
        this.clock = clock;
        this.book = book;
        this.steps = steps;
        this.holds = holds;
        this.reversal = reversal;
    }

    @Override
    public Stage before() {
        return Stage.CUTOVER;
    }

    @Override
    public void prepare(TestBranch branch, UUID projectId) {
        ProjectFacts project = world.as(branch.projectManager(), () -> projects.facts(projectId));
        Integer live = BranchWall.everywhere(() -> transaction.execute(
                status -> jdbc.sql("select count(*) from outage_window where project_id = ? and state <> 'CANCELLED'")
                        .param(projectId)
                        .query(Integer.class)
                        .single()));
        if (live != null && live == 0) {
            windowOfToday(project.id(), project.branchId());
            world.as(branch.projectManager(), () -> {
                whatStands(project);
                log(project);
            });
        }
    }

    /** Of a farm: a cold tank between milkings, and a generator that ran two days ago. */
    private void whatStands(ProjectFacts project) {
        if (!project.site().isFarm() || loads.of(project.id()).saysWhatSuffers()) {
            return;
        }
        LocalDate today = LocalDate.ofInstant(clock.instant(), java.time.ZoneId.of("America/New_York"));
        keep(
                project,
                LoadKind.TANK,
                "fullLb=12900; milkLb=6400; milkF=38; roomF=72; from1=01:00; to1=02:00; from2=17:00; to2=18:00; afterF=50; coolingF=20");
        keep(
                project,
                LoadKind.GENERATOR,
                "ratedKw=80; transfer=AUTOMATIC; rotation=SAME; fuelGal=90; galPerKwh=0.08; lastRun="
                        + today.minusDays(2));
        keep(project, LoadKind.LOADS, "mark=fan; number=16; kw=1.1; start=5");
    }

    private void keep(ProjectFacts project, LoadKind kind, String cells) {
        Map<String, String> written = Arrays.stream(cells.split("; "))
                .map(cell -> cell.split("="))
                .collect(Collectors.toMap(cell -> cell[0], cell -> cell[1]));
        loads.keep(project.id(), kind, -1, List.of(new Cells(written))).ifPresent(no -> {
            throw new IllegalStateException(no.sentence());
        });
    }

    /** An outage today, told weeks ago. */
    public void windowOfToday(UUID projectId, UUID branchId) {
        Instant now = clock.instant();
        Timestamp told = Timestamp.from(now.minus(40, ChronoUnit.DAYS));
        BranchWall.everywhere(() -> transaction.executeWithoutResult(status -> jdbc.sql("""
                insert into outage_window (id, version, branch_id, project_id, day, start_time, outage_minutes, state,
                    utility_told_at, utility_told_how, utility_confirmation, utility_confirmed_at, customer_told_at,
                    customer_told_how, made_at, made_by)
                select :id, 0, b.id, :project, cast(cast(:now as timestamptz) at time zone b.zone as date), '06:00', 90,
                    'NOTICE_GIVEN', :told, 'by letter', 'VE-1', :told, :told, 'by letter', :told, 'Tamsin'
                  from branch b where b.id = :branch
                """)
                .param("id", Ids.next())
                .param("branch", branchId)
                .param("project", projectId)
                .param("now", Timestamp.from(now))
                .param("told", told)
                .update()));
    }

    private void log(ProjectFacts project) {
        Service service = project.site().threePhase() ? Service.WYE_208_120 : Service.SINGLE_PHASE_120_240;
        book.open(project.id(), service, "Tamsin");
        reversal.latest(
                project.id(), new LogReversal.Setting(Ids.next(), LocalTime.of(22, 0), null, null, null, "the night"));
        upTo(project, service, Procedure.LAST);
        book.close(project.id());
    }

    /** Every step and hold point of an open log up to this one, as on a day that goes well. */
    public void upTo(TestBranch branch, UUID projectId, String last) {
        world.as(branch.projectManager(), () -> upTo(projects.facts(projectId), Service.SINGLE_PHASE_120_240, last));
    }

    private void upTo(ProjectFacts project, Service service, String last) {
        Readings readings = new Readings(service, project.site().generator(), false);
        for (ProcedureTable.Line line : ProcedureTable.LINES) {
            if (line.isHold()) {
                Hold hold = Hold.valueOf(line.code());
                hold.parts()
                        .forEach(part -> must(holds.sign(
                                project.id(),
                                new LogHolds.Signing(Ids.next(), hold, part, part.words(), "their trade", null))));
            } else if (!line.code().equals(Procedure.GENERATOR_BACK)
                    || project.site().generator()) {
                must(steps.done(
                        project.id(),
                        new LogSteps.Work(
                                Ids.next(), line.code(), LogScript.usual(readings, line.code()), Map.of(), null)));
            }
            if (line.code().equals(last)) {
                return;
            }
        }
    }

    private static void must(LogPen.Said said) {
        if (!said.isStored()) {
            throw new IllegalStateException(said.refusals().toString());
        }
    }
}
