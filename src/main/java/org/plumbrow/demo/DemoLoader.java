package org.plumbrow.demo;

import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.util.List;
import org.plumbrow.account.Accounts;
import org.plumbrow.database.BranchWall;
import org.plumbrow.project.gate.Gates;
import org.plumbrow.web.Access;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.SmartLifecycle;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Loads the demo into an empty database: in one transaction, before the first page is served. A database with anybody in
 * it is left as it is.
 */
@Component
@WithDemo
class DemoLoader implements SmartLifecycle {

    private static final Logger LOG = LoggerFactory.getLogger(DemoLoader.class);
    /** Any number that no other lock of the house uses: two nodes starting at once load it once. */
    private static final long LOAD_ONCE = 7_455_102_338L;

    private final Accounts accounts;
    private final DemoPassword password;
    private final DemoCast cast;
    private final DemoSettings settings;
    private final DemoProjects projects;
    private final DemoRoad road;
    private final DemoReports reports;
    private final DemoSurveys surveys;
    private final DemoPlaces places;
    private final DemoWaits waits;
    private final DemoEpilogue epilogue;
    private final DemoCustomers customers;
    private final Gates gates;
    private final EntityManager entities;
    private final TransactionTemplate transaction;
    private final JdbcClient jdbc;
    private final Access access;
    private final Clock clock;
    private boolean done;

    DemoLoader(
            Accounts accounts,
            DemoPassword password,
            DemoCast cast,
            DemoSettings settings,
            DemoProjects projects,
            DemoRoad road,
            DemoReports reports,
            DemoSurveys surveys,
            DemoPlaces places,
            DemoWaits waits,
            DemoEpilogue epilogue,
            DemoCustomers customers,
            Gates gates,
            EntityManager entities,
            TransactionTemplate transaction,
            JdbcClient jdbc,
            Access access,
            Clock clock) {
        this.accounts = accounts;
        this.password = password;
        this.cast = cast;
        this.settings = settings;
        this.projects = projects;
        this.road = road;
        this.reports = reports;
        this.surveys = surveys;
        this.places = places;
        this.waits = waits;
        this.epilogue = epilogue;
        this.customers = customers;
        this.gates = gates;
        this.entities = entities;
        this.transaction = transaction;
        this.jdbc = jdbc;
        this.access = access;
        this.clock = clock;
    }

    @Override
    public void start() {
        BranchWall.everywhere(() -> transaction.executeWithoutResult(status -> {
            jdbc.sql("select pg_advisory_xact_lock(?)")
                    .param(LOAD_ONCE)
                    .query((row, n) -> "")
                    .list();
            if (!accounts.anybody()) {
                gates.lookAgainAfter(this::load);
            }
        }));
        done = true;
    }

    private void load() {
        long begun = System.nanoTime();
        LOG.info("Loading the made-up demo branch into the empty database; this happens once.");
        Story story = Story.from(clock.instant());
        DemoCast.Cast people = cast.enter(password.make());
        DemoSettings.Places offices = access.as(people.manager(), () -> settings.give(people, story));
        List<DemoProjects.Told> told = projects.open(people, story, offices);
        told.forEach(each -> {
            road.walk(each, people, story);
            // Every flush looks at all that the transaction has read; of a project that is told nothing comes back.
            entities.flush();
            entities.clear();
        });
        reports.tell(told, people, story);
        told.forEach(each -> surveys.dayOne(each, people, story));
        told.forEach(each -> epilogue.agree(each, people, story));
        told.forEach(each -> places.begin(each, people, story));
        told.forEach(each -> waits.begin(each, people, story));
        told.forEach(each -> surveys.begin(each, people, story));
        told.forEach(each -> road.beginNext(each, people, story));
        epilogue.stand(told, people);
        customers.tell(told, people, story);
        LOG.info(
                "The demo branch is there: {} projects, {} s.",
                told.size(),
                (System.nanoTime() - begun) / 1_000_000_000);
    }

    @Override
    public void stop() {
        done = false;
    }

    @Override
    public boolean isRunning() {
        return done;
    }

    /** Before the web server begins to answer. */
    @Override
    public int getPhase() {
        return 0;
    }
}
