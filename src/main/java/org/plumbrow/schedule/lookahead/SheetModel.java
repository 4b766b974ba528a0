package org.plumbrow.schedule.lookahead;

import java.util.Optional;
import org.plumbrow.schedule.plan.Plans;
import org.plumbrow.web.Access;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

/** What the pages with a grid of days have in common: the run that computes the next plan, and a word while there is none. */
@Component
class SheetModel {

    private final Plans plans;
    private final Access access;

    SheetModel(Plans plans, Access access) {
        this.plans = plans;
        this.access = access;
    }

    /** @return the template that shows it */
    String page(Optional<?> view, String template, Model model) {
        model.addAttribute("run", plans.latestRun(access.branch().id()).orElse(null));
        view.ifPresent(shown -> model.addAttribute("view", shown));
        return view.isPresent() ? template : "schedule/no-plan";
    }
}
