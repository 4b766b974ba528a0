package org.plumbrow.web;

import java.util.UUID;
import org.plumbrow.database.BackgroundRuns;
import org.plumbrow.database.Run;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestHeader;

/**
 * How far long work is. A page shows it with {@code ~{web/progress :: strip(${run})}}: the strip asks for itself every
 * second until the work is over; without script its link leads to a page of its own.
 */
@Controller
class RunController {

    private final BackgroundRuns runs;
    private final Access access;

    RunController(BackgroundRuns runs, Access access) {
        this.runs = runs;
        this.access = access;
    }

    @GetMapping("/runs/{runId}")
    String show(
            @PathVariable UUID runId,
            @RequestHeader(name = "HX-Request", defaultValue = "false") boolean partly,
            Model model) {
        model.addAttribute("run", seen(runId));
        return partly ? "web/progress :: strip(run=${run})" : "web/run";
    }

    @PostMapping("/runs/{runId}/stop")
    String stop(@PathVariable UUID runId) {
        Run run = seen(runId);
        access.require(run.branchId(), May.CHANGE_PLAN);
        runs.stop(runId, access.actor().name());
        return "redirect:/runs/{runId}";
    }

    private Run seen(UUID runId) {
        Run run = runs.find(runId).orElseThrow(NotFound::new);
        access.require(run.branchId(), May.SEE_LOOK_AHEAD);
        return run;
    }
}
