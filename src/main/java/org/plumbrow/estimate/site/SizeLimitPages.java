package org.plumbrow.estimate.site;

import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.branch.Saving;
import org.plumbrow.branch.UtilityFacts;
import org.plumbrow.calc.Range;
import org.plumbrow.estimate.site.SizeLimits.Limit;
import org.plumbrow.web.Access;
import org.plumbrow.web.Entered;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Place;
import org.springframework.context.annotation.Bean;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** What no system may exceed: the branch's policy and each utility's cap. */
@Controller
class SizeLimitPages {

    private static final int ORDER = 13;
    private static final String ALL = "/settings/size-limits";
    private static final String POLICY = ALL + "/branch";
    private static final String UTILITY = ALL + "/of-utility/{utilityId}";
    private static final Range OFFSET = new Range(5, 200, "%");
    private static final Range KW_AC = new Range(0.1, 10_000, "kW AC");

    private final SizeLimits limits;
    private final BranchSettings settings;
    private final Access access;
    private final Saving saving;

    SizeLimitPages(SizeLimits limits, BranchSettings settings, Access access, Saving saving) {
        this.limits = limits;
        this.settings = settings;
        this.access = access;
        this.saving = saving;
    }

    @Bean
    static Place sizeLimitsPlace() {
        return Place.underOwnName(ORDER, "estimate.limits.place", ALL, May.CHANGE_SETTINGS);
    }

    record LimitForm(
            @Nullable String mostOffsetPercent,
            @Nullable String mostKwAc,
            @Nullable String version) {}

    /** @param limit null while nothing was said */
    record Line(String whose, String href, @Nullable Limit limit) {}

    @GetMapping(ALL)
    String all(Model model) {
        UUID branchId = access.require(May.CHANGE_SETTINGS).id();
        List<Limit> known = limits.ofBranch(branchId);
        List<Line> lines = new ArrayList<>();
        lines.add(new Line(SizeLimits.POLICY, POLICY, of(known, null)));
        for (UtilityFacts utility : settings.utilities(branchId)) {
            lines.add(new Line(utility.name(), ALL + "/of-utility/" + utility.id(), of(known, utility.id())));
        }
        model.addAttribute("lines", lines);
        return "estimate/size-limits";
    }

    private static @Nullable Limit of(List<Limit> known, @Nullable UUID utilityId) {
        return known.stream()
                .filter(limit -> java.util.Objects.equals(limit.utilityId(), utilityId))
                .findFirst()
                .orElse(null);
    }

    @GetMapping(POLICY)
    String policy(Model model) {
        return show(policy(), model);
    }

    @GetMapping(UTILITY)
    String utility(@PathVariable UUID utilityId, Model model) {
        return show(utility(utilityId), model);
    }

    /** Whose limit it is, and where its page stands. */
    private record Subject(UUID branchId, @Nullable UUID utilityId, String whose, String href) {}

    private Subject policy() {
        return new Subject(access.require(May.CHANGE_SETTINGS).id(), null, SizeLimits.POLICY, POLICY);
    }

    /** The utility's own branch counts, not the one seen last: who is in several follows a link from any of them. */
    private Subject utility(UUID utilityId) {
        access.require(May.CHANGE_SETTINGS);
        UtilityFacts utility = settings.utility(utilityId).orElseThrow(NotFound::new);
        access.require(utility.branchId(), May.CHANGE_SETTINGS);
        return new Subject(utility.branchId(), utilityId, utility.name(), ALL + "/of-utility/" + utilityId);
    }

    private Limit now(Subject subject) {
        return limits.one(subject.branchId, subject.utilityId)
                .orElse(new Limit(subject.utilityId, -1, subject.whose, null, null));
    }

    private String show(Subject subject, Model model) {
        Limit limit = now(subject);
        model.addAttribute(
                "limitForm",
                new LimitForm(
                        Entered.written(limit.mostOffsetPercent()),
                        Entered.written(limit.mostKwAc()),
                        String.valueOf(limit.version())));
        return page(subject, model);
    }

    private static String page(Subject subject, Model model) {
        model.addAttribute("whose", subject.whose);
        model.addAttribute("action", subject.href);
        return "estimate/size-limit";
    }

    @PostMapping(POLICY)
    String changePolicy(
            @ModelAttribute("limitForm") LimitForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        return change(policy(), form, errors, model, response, next);
    }

    @PostMapping(UTILITY)
    String changeUtility(
            @PathVariable UUID utilityId,
            @ModelAttribute("limitForm") LimitForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        return change(utility(utilityId), form, errors, model, response, next);
    }

    private String change(
            Subject subject,
            LimitForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        Entered entered = new Entered(errors);
        Limit to = new Limit(
                subject.utilityId,
                Entered.version(form.version()),
                subject.whose,
                entered.maybe("mostOffsetPercent", "the share of the use", form.mostOffsetPercent(), OFFSET),
                entered.maybe("mostKwAc", "the power", form.mostKwAc(), KW_AC));
        return saving.of(errors, response, () -> page(subject, model))
                .make(
                        () -> {
                            limits.change(subject.branchId, to.version(), to);
                            return Optional.empty();
                        },
                        () -> {
                            Flash.done(next, "Saved: " + subject.whose + ".");
                            return "redirect:" + ALL;
                        },
                        model,
                        to::written,
                        () -> {
                            Limit stored = now(subject);
                            return new Saving.Theirs("this limit", subject.href, stored.version(), stored.written());
                        });
    }
}
