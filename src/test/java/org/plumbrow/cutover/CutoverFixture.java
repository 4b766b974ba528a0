package org.plumbrow.cutover;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.EnumSet;
import java.util.UUID;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.calc.duration.Skill;
import org.plumbrow.crew.CrewEditing;
import org.plumbrow.crew.CrewTerms;
import org.plumbrow.database.BranchWall;
import org.plumbrow.database.Ids;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.project.Stage;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/** A branch with a utility that needs ten full working days and switches from 9 to 4, and a crew with an electrician. */
@Component
public class CutoverFixture {

    /** The day on which the fixture's outages are booked; the clock stands at Monday, March 1. */
    public static final LocalDate FRIDAY_26 = LocalDate.of(2027, 3, 26);

    public static final LocalTime NINE = LocalTime.of(9, 0);

    private final TestWorld world;
    private final JdbcClient jdbc;
    private final TransactionTemplate transaction;
    private final CrewEditing crews;
    private final ProjectFixture projects;
    private final OutagePlanning planning;
    private final OutageRecords records;

    CutoverFixture(
            TestWorld world,
            JdbcClient jdbc,
            TransactionTemplate transaction,
            CrewEditing crews,
            ProjectFixture projects,
            OutagePlanning planning,
            OutageRecords records) {
        this.world = world;
        this.jdbc = jdbc;
        this.transaction = transaction;
        this.crews = crews;
        this.projects = projects;
        this.planning = planning;
        this.records = records;
    }

    /** A branch ready for a cutover. */
    public record Ground(TestBranch branch, UUID utilityId, UUID crewId) {}

    public Ground ground() {
        TestBranch branch = world.branch();
        UUID utility = Ids.next();
        UUID crew = Ids.next();
        BranchWall.everywhere(() -> transaction.executeWithoutResult(status -> {
            jdbc.sql("""
                    insert into utility (id, version, branch_id, name, notice_working_days, appointment_weekdays,
                                         working_weekdays, federal_holidays, must_be_present, email)
                    values (?, 0, ?, 'Valley Electric', 10, 'MTWTF--', 'MTWTF--', true, 'the meter technician', '')
                    """).params(utility, branch.id()).update();
            jdbc.sql(
                            "insert into utility_slot (id, branch_id, utility_id, off_from, off_to) values (?, ?, ?, '09:00', '16:00')")
                    .params(Ids.next(), branch.id(), utility)
                    .update();
        }));
        world.as(
                branch.manager(),
                () -> crews.add(
                        crew,
                        branch.id(),
                        new CrewTerms(
                                "Crew 4",
                                4,
                                2,
                                EnumSet.of(Skill.INSTALLER, Skill.ELECTRICIAN, Skill.SERVICE),
                                branch.crewLead().personId(),
                                LocalDate.of(2026, 1, 1),
                                null)));
        return new Ground(branch, utility, crew);
    }

    public UUID dairy(Ground ground) {
        return projects.aDairyGroundMount()
                .in(ground.branch())
                .at(ground.utilityId(), null)
                .build();
    }

    /** The dairy with its contract signed, so that it is in the plan. */
    public UUID signedDairy(Ground ground) {
        return projects.aDairyGroundMount()
                .in(ground.branch())
                .at(ground.utilityId(), null)
                .reached(Stage.SIGNED)
                .build();
    }

    public UUID home(Ground ground) {
        return projects.aHomeRoof()
                .in(ground.branch())
                .at(ground.utilityId(), null)
                .build();
    }

    public OutageChoice friday(Ground ground) {
        return new OutageChoice(FRIDAY_26, NINE, 90, ground.crewId(), LocalDate.of(2027, 3, 30), NINE);
    }

    /** Booked for Friday the 26th, as the project manager. */
    public UUID booked(Ground ground, UUID project) {
        world.as(ground.branch().projectManager(), () -> {
            if (!planning.book(project, friday(ground)).isEmpty()) {
                throw new IllegalStateException("not booked");
            }
        });
        return project;
    }

    /** Booked, and both were told today. */
    public UUID noticeGiven(Ground ground, UUID project) {
        booked(ground, project);
        world.as(ground.branch().projectManager(), () -> {
            records.utilityTold(project, LocalDate.of(2027, 3, 1), "through the portal");
            records.customerTold(project, LocalDate.of(2027, 3, 1), "in person");
        });
        return project;
    }
}
