package org.plumbrow.schedule.tell;

import jakarta.servlet.http.HttpServletResponse;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.schedule.plan.ToTell;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.Flash;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Who must be told of the published plan, and telling them. */
@Controller
class TellPages {

    private static final String PAGE = "/look-ahead/tell";

    private final TellReading reading;
    private final TellSending sending;

    TellPages(TellReading reading, TellSending sending) {
        this.reading = reading;
        this.sending = sending;
    }

    @GetMapping(PAGE)
    String show(Model model) {
        Optional<TellView> view = reading.view();
        view.ifPresent(shown -> model.addAttribute("view", shown));
        return view.isPresent() ? "schedule/tell" : "redirect:/look-ahead";
    }

    /** @param plan as it was read on the page before @param how {@code notice}, {@code spoken}; with {@code all} the others are empty */
    @PostMapping(PAGE)
    String tell(
            @RequestParam(name = "plan") UUID plan,
            @RequestParam(name = "how", defaultValue = "all") String how,
            @RequestParam(name = "whom", defaultValue = "") String whom,
            @RequestParam(name = "id", required = false) @org.jspecify.annotations.Nullable UUID id,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        try {
            if (id == null) {
                int many = sending.tellAll(plan);
                Flash.done(next, many == 1 ? "1 notice is in the outbox." : many + " notices are in the outbox.");
            } else {
                ToTell who = sending.tellOne(plan, whom, id, how.equals("notice"));
                Flash.done(
                        next,
                        how.equals("notice")
                                ? "The notice to " + who.name() + " is in the outbox."
                                : who.name() + " is told; it is written down.");
            }
        } catch (EditedMeanwhile newer) {
            response.setStatus(409);
            model.addAttribute("newer", Boolean.TRUE);
            return show(model);
        }
        return "redirect:" + PAGE;
    }
}
