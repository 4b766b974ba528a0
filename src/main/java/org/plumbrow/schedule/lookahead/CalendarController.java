package org.plumbrow.schedule.lookahead;

import jakarta.servlet.http.HttpServletResponse;
import java.util.UUID;
import org.plumbrow.schedule.activity.Moves;
import org.plumbrow.schedule.activity.PlanMove;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.springframework.dao.OptimisticLockingFailureException;
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
    private final SheetModel sheet;
    private final Access access;

    CalendarController(CalendarReading reading, Moves moves, SheetModel sheet, Access access) {
        this.reading = reading;
        this.moves = moves;
        this.sheet = sheet;
        this.access = access;
    }

    @GetMapping("/look-ahead/crews")
    String show(SheetAsked asked, Model model) {
        return sheet.page(reading.view(asked), "schedule/crew-calendar", model);
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
