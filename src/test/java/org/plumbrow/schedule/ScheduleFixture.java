package org.plumbrow.schedule;

import static org.awaitility.Awaitility.await;

import java.time.Duration;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.calc.duration.EquipmentKind;
import org.plumbrow.calc.duration.Skill;
import org.plumbrow.crew.CrewEditing;
import org.plumbrow.crew.CrewTerms;
import org.plumbrow.crew.EquipmentEditing;
import org.plumbrow.crew.EquipmentTerms;
import org.plumbrow.database.BackgroundRuns;
import org.plumbrow.database.BranchWall;
import org.plumbrow.database.Ids;
import org.plumbrow.database.Run;
import org.plumbrow.project.ProjectStages;
import org.plumbrow.project.Stage;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/** Branches that can plan: crews, machines, projects at a stage, and a plan computed by the real background run. */
@Component
public class ScheduleFixture {

    private static final LocalDate LONG_AGO = LocalDate.of(2026, 1, 5);
    private static final Skill[] ALL = Skill.values();

    private final TestWorld world;
    private final CrewEditing crews;
    private final EquipmentEditing machines;
    private final ProjectStages stages;
    private final BackgroundRuns runs;
    private final TransactionTemplate transaction;

    ScheduleFixture(
            TestWorld world,
            CrewEditing crews,
            EquipmentEditing machines,
            ProjectStages stages,
            BackgroundRuns runs,
            TransactionTemplate transaction) {
        this.world = world;
        this.crews = crews;
        this.machines = machines;
        this.stages = stages;
        this.runs = runs;
        this.transaction = transaction;
    }

    /** A crew of four that can do everything. */
    public UUID crew(TestBranch branch, String name) {
        return crew(branch, name, null, ALL);
    }

    public UUID crew(TestBranch branch, String name, @Nullable UUID lead, Skill... skills) {
        UUID id = Ids.next();
        world.as(
                branch.manager(),
                () -> crews.add(
                        id,
                        branch.id(),
                        new CrewTerms(name, 4, 2, Set.copyOf(Arrays.asList(skills)), lead, LONG_AGO, null)));
        return id;
    }

    public UUID machine(TestBranch branch, String name, EquipmentKind kind) {
        UUID id = Ids.next();
        world.as(branch.manager(), () -> machines.add(id, branch.id(), new EquipmentTerms(kind, name, LONG_AGO, null)));
        return id;
    }

    /** Takes the project to the stage, one gate after the other, each on that day. */
    public void reach(TestBranch branch, UUID project, Stage stage, LocalDate day) {
        inBranch(branch, () -> {
            for (Stage next : Stage.values()) {
                if (next.ordinal() <= stage.ordinal()
                        && !stages.reached(project).containsKey(next)) {
                    stages.pass(project, next, day, branch.projectManager().actor());
                }
            }
            return stage;
        });
    }

    /** Has the branch planned after all that was changed so far. */
    public Run planned(TestBranch branch) {
        UUID id = inBranch(branch, () -> runs.start("plan", branch.id(), null, "Ines"));
        await().atMost(Duration.ofSeconds(30)).until(() -> find(branch, id).isOver());
        return find(branch, id);
    }

    private Run find(TestBranch branch, UUID id) {
        return BranchWall.within(branch.id(), () -> runs.find(id)).orElseThrow();
    }

    public <T> T inBranch(TestBranch branch, Supplier<T> work) {
        return world.as(branch.manager(), () -> transaction.execute(status -> work.get()));
    }
}
