package org.plumbrow.project.intake;

import java.time.Clock;
import java.util.List;
import java.util.UUID;
import org.plumbrow.database.BackgroundWork;
import org.plumbrow.database.RunProgress;
import org.plumbrow.project.ProjectRegister;
import org.plumbrow.project.ProjectStages;
import org.plumbrow.project.Stage;
import org.plumbrow.web.Actor;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/** Takes the good rows of a file in, all in one transaction: a stop or a fault leaves nothing behind. */
@Component
class IntakeWork implements BackgroundWork {

    private final Intakes intakes;
    private final IntakeRows rows;
    private final ProjectRegister register;
    private final ProjectStages stages;
    private final TransactionTemplate transaction;
    private final Clock clock;

    IntakeWork(
            Intakes intakes,
            IntakeRows rows,
            ProjectRegister register,
            ProjectStages stages,
            TransactionTemplate transaction,
            Clock clock) {
        this.intakes = intakes;
        this.rows = rows;
        this.register = register;
        this.stages = stages;
        this.transaction = transaction;
        this.clock = clock;
    }

    @Override
    public String kind() {
        return Intakes.RUN_KIND;
    }

    @Override
    public String perform(RunProgress progress) {
        UUID id = java.util.Objects.requireNonNull(progress.subjectId());
        return transaction.execute(status -> {
            Intakes.Look look = intakes.lookUnchecked(id);
            if (look.file().state() == IntakeRows.State.TAKEN_IN) {
                return "It was taken in already.";
            }
            List<IntakeRow.Ready> ready = look.ready();
            for (int i = 0; i < ready.size(); i++) {
                if (progress.isStopped()) {
                    status.setRollbackOnly();
                    return "Stopped; nothing was taken in.";
                }
                open(progress.branchId(), ready.get(i), Actor.named(progress.askedBy()));
                progress.step(i + 1, ready.size(), "Opening projects");
            }
            rows.takenIn(id, ready.size(), look.here().size(), look.leftOut().size(), clock.instant());
            return ready.size() + " projects opened, " + look.leftOut().size() + " rows left out, "
                    + look.here().size() + " were here already.";
        });
    }

    private void open(UUID branchId, IntakeRow.Ready row, Actor by) {
        UUID project = register.openUnchecked(branchId, row.project(), by);
        if (row.operatingSince() != null) {
            stages.arrive(project, Stage.COMMISSIONED, row.operatingSince(), by);
        }
    }
}
