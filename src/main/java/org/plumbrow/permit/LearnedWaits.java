package org.plumbrow.permit;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.plumbrow.branch.PlanningSettings;
import org.plumbrow.calc.duration.WaitTime;
import org.plumbrow.database.ReadOnce;
import org.plumbrow.project.ProjectFacts;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** How long those who answer a branch's questions take, for the plan. Nobody is asked for: who plans has been let in. */
@Service
@Transactional(readOnly = true)
public class LearnedWaits {

    private final AwaitedRows rows;

    LearnedWaits(AwaitedRows rows) {
        this.rows = rows;
    }

    /** What was learned, project by project. */
    public static final class OfBranch {

        private final LeadTimes times;
        private final Map<UUID, List<Awaited>> open;

        private OfBranch(LeadTimes times, Map<UUID, List<Awaited>> open) {
            this.times = times;
            this.open = open;
        }

        /** Rows that take the place of the table's. */
        public List<WaitTime> of(ProjectFacts project) {
            return times.rowsOf(project, open.getOrDefault(project.id(), List.of()));
        }
    }

    /** One query; once a page. */
    public OfBranch of(PlanningSettings settings) {
        return ReadOnce.of(new Taught(settings.branch().id()), () -> read(settings));
    }

    private record Taught(UUID branchId) {}

    private OfBranch read(PlanningSettings settings) {
        Map<Boolean, List<Awaited>> all =
                rows.all(settings.branch().id()).stream().collect(Collectors.partitioningBy(Awaited::isOpen));
        return new OfBranch(
                new LeadTimes(settings, all.get(false)),
                all.get(true).stream().collect(Collectors.groupingBy(Awaited::projectId)));
    }
}
