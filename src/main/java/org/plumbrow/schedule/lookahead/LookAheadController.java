package org.plumbrow.schedule.lookahead;

import jakarta.servlet.http.HttpServletResponse;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.schedule.plan.PlanAsking;
import org.plumbrow.schedule.plan.Publishing;
import org.plumbrow.web.Access;
import org.plumbrow.web.ConstraintSentences;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.plumbrow.web.Place;
import org.plumbrow.web.Refusal;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The look-ahead and what a manager does there: have it computed anew, publish a draft, throw it away. */
@Controller
class LookAheadController {

    private final LookAheadReading reading;
    private final EffectReading effects;
    private final SheetModel sheet;
    private final PlanAsking asking;
    private final Publishing publishing;
    private final ConstraintSentences constraints;
    private final Access access;

    LookAheadController(
            LookAheadReading reading,
            EffectReading effects,
            SheetModel sheet,
            PlanAsking asking,
            Publishing publishing,
            ConstraintSentences constraints,
            Access access) {
        this.reading = reading;
        this.effects = effects;
        this.sheet = sheet;
        this.asking = asking;
        this.publishing = publishing;
        this.constraints = constraints;
        this.access = access;
    }

    @GetMapping("/look-ahead")
    String show(SheetAsked asked, Model model) {
        return sheet.page(reading.view(asked), "schedule/look-ahead", model);
    }

    @PostMapping("/look-ahead/recompute")
    String recompute() {
        asking.askFor(access.require(May.CHANGE_PLAN).id());
        return "redirect:/look-ahead";
    }

    @GetMapping("/look-ahead/publish")
    String confirm(Model model) {
        Optional<Effect> effect = effects.ofDraft();
        effect.ifPresent(shown -> model.addAttribute("effect", shown));
        return effect.isPresent() ? "schedule/publish" : "redirect:/look-ahead";
    }

    /** @param plan the draft as it was read on the page before */
    @PostMapping("/look-ahead/publish")
    String publish(
            @RequestParam(name = "plan") UUID plan,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        UUID branch = access.require(May.PUBLISH_PLAN).id();
        Optional<Refusal> refused = published(branch, plan);
        if (refused.isPresent()) {
            response.setStatus(HttpStatus.CONFLICT.value());
            model.addAttribute("sentence", refused.get().sentence());
            return "schedule/not-published";
        }
        Flash.done(next, "The plan is published. Crews and customers see it from now on.");
        return "redirect:/look-ahead/tell";
    }

    /** What the database refuses (a crew in two places) is said like what the draft itself says. */
    private Optional<Refusal> published(UUID branch, UUID plan) {
        try {
            return publishing.publish(branch, plan);
        } catch (DataIntegrityViolationException refused) {
            return Optional.of(constraints.refusal(refused, ""));
        }
    }

    @PostMapping("/look-ahead/discard")
    String discard(RedirectAttributes next) {
        publishing.discard(access.require(May.CHANGE_PLAN).id());
        Flash.done(next, "The draft is gone. The published plan stands.");
        return "redirect:/look-ahead";
    }

    @Configuration(proxyBeanMethods = false)
    static class Places {
        @Bean
        Place lookAheadPlace() {
            return Place.inTheRow(10, "schedule.place", "/look-ahead", May.SEE_LOOK_AHEAD);
        }
    }
}
