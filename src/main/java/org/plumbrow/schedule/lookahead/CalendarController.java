package org.plumbrow.schedule.lookahead;

import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.schedule.activity.Moves;
import org.plumbrow.schedule.activity.PlanMove;
import org.plumbrow.schedule.plan.Plans;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.format.annotation.DateTimeFormat;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The crew calendar: who works where, work by work, to be moved; and the last move, to be taken back. */
@Controller
class CalendarController {

    private final CalendarReading reading;
    private final Moves moves;
    private final Plans plans;
    private final Access access;

    CalendarController(CalendarReading reading, Moves moves, Plans plans, Access access) {
        this.reading = reading;
        this.moves = moves;
        this.plans = plans;
        this.access = access;
    }

    @GetMapping("/look-ahead/crews")
    String show(
            @RequestParam(name = "from", required = false) @DateTimeFormat(iso = DateTimeFormat.ISO.DATE) @Nullable
                    LocalDate from,
            @RequestParam(name = "plan", defaultValue = "") String plan,
            Model model) {
        Optional<CalendarView> view = reading.view(Optional.ofNullable(from), plan.equals("published"));
        model.addAttribute("run", plans.latestRun(access.branch().id()).orElse(null));
        view.ifPresent(shown -> model.addAttribute("view", shown));
        return view.isPresent() ? "schedule/crew-calendar" : "schedule/no-plan";
    }

    /** @param move number of the last move as it was read on the page before */
    @PostMapping("/look-ahead/crews/undo")
    String undo(
            @RequestParam(name = "move") long move,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        UUID branch = access.require(May.CHANGE_PLAN).id();
        try {
            PlanMove undone = moves.undo(branch, move);
            Flash.done(next, "Taken back: " + undone.sentence() + ". The plan is computed anew.");
        } catch (EditedMeanwhile | OptimisticLockingFailureException newer) {
            response.setStatus(HttpStatus.CONFLICT.value());
            model.addAttribute("last", reading.lastMove(branch).orElse(null));
            return "schedule/not-undone";
        }
        return "redirect:/look-ahead/crews";
    }
}
