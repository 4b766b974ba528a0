package org.plumbrow.account.firm;

import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.util.Locale;
import org.plumbrow.account.person.SecurityLog;
import org.plumbrow.web.Access;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.plumbrow.web.Paging;
import org.plumbrow.web.Place;
import org.springframework.context.annotation.Bean;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Branches and security events, for the firm's owner. */
@Controller
class FirmPages {

    private static final int BRANCHES_ORDER = 90;
    private static final int LOG_ORDER = 95;

    private final FirmBranches branches;
    private final SecurityLog log;
    private final Access access;

    FirmPages(FirmBranches branches, SecurityLog log, Access access) {
        this.branches = branches;
        this.log = log;
        this.access = access;
    }

    @Bean
    static Place branchesPlace() {
        return Place.underOwnName(BRANCHES_ORDER, "account.branches.place", "/branches", May.RUN_FIRM);
    }

    @Bean
    static Place securityLogPlace() {
        return Place.underOwnName(LOG_ORDER, "account.log.place", "/security-log", May.RUN_FIRM);
    }

    @GetMapping("/branches")
    String branches(Model model) {
        model.addAttribute("form", BranchForm.empty());
        return branchesPage(model);
    }

    private String branchesPage(Model model) {
        model.addAttribute("branches", branches.all());
        model.addAttribute("zones", Zones.options());
        return "account/branches";
    }

    @PostMapping("/branches")
    String open(
            @Valid @ModelAttribute("form") BranchForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        access.require(May.RUN_FIRM);
        if (!errors.hasErrors()) {
            branches.open(form).ifPresent(refused -> refused.putAt(errors));
        }
        if (errors.hasErrors()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return branchesPage(model);
        }
        String code = String.valueOf(form.branchCode()).strip().toUpperCase(Locale.ROOT);
        Flash.done(next, form.branchName() + " is open. Look over its settings, then invite its people.");
        next.addAttribute("branch", code);
        return "redirect:/you";
    }

    @GetMapping("/security-log")
    String log(@RequestParam(name = "page", defaultValue = "1") int page, Model model) {
        access.require(May.RUN_FIRM);
        Paging paging = Paging.of(page, log.size());
        model.addAttribute("lines", log.lines(paging));
        model.addAttribute("page", paging);
        return "account/security-log";
    }
}
