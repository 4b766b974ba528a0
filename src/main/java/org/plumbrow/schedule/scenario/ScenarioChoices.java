package org.plumbrow.schedule.scenario;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.ActivityCode;
import org.plumbrow.schedule.activity.JobActivities;
import org.plumbrow.schedule.plan.BranchProblem;

/** The branch's crews, machines and works that a crew has yet to begin, by id. */
record ScenarioChoices(Map<UUID, String> crews, Map<UUID, String> machines, Map<UUID, String> works) {

    static ScenarioChoices of(BranchProblem branch) {
        Map<UUID, String> crews = new LinkedHashMap<>();
        branch.crews().forEach(crew -> crews.put(crew.id(), crew.name()));
        Map<UUID, String> machines = new LinkedHashMap<>();
        branch.equipment().forEach(machine -> machines.put(machine.id(), machine.name()));
        Map<UUID, String> works = new LinkedHashMap<>();
        for (JobActivities job : branch.jobs()) {
            job.items().stream()
                    .filter(item -> item.derived().kind() == ActivityCode.Kind.CREW)
                    .filter(item -> item.row().recorded().started().isEmpty())
                    .forEach(item -> works.put(
                            item.row().id(),
                            job.project().name() + ", " + item.row().words()));
        }
        return new ScenarioChoices(crews, machines, works);
    }

    /** With those works only. */
    ScenarioChoices withWorks(Predicate<UUID> which) {
        Map<UUID, String> some = new LinkedHashMap<>();
        works.forEach((id, words) -> {
            if (which.test(id)) {
                some.put(id, words);
            }
        });
        return new ScenarioChoices(crews, machines, some);
    }

    String crew(@Nullable UUID id) {
        return id == null ? "" : crews.getOrDefault(id, "a crew that has ended");
    }

    String machine(@Nullable UUID id) {
        return id == null ? "" : machines.getOrDefault(id, "a machine that has gone");
    }

    String work(@Nullable UUID id) {
        return id == null ? "" : works.getOrDefault(id, "a work that has begun or is gone");
    }
}
