package org.plumbrow.account.firm;

import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;

/** The page of the first run; gone once somebody can sign in. */
@Controller
class FirstRunPage {

    private final FirstRun firstRun;

    FirstRunPage(FirstRun firstRun) {
        this.firstRun = firstRun;
    }

    @GetMapping("/first-run")
    String show(Model model) {
        if (!firstRun.isDue()) {
            return "redirect:/";
        }
        model.addAttribute("form", FirstRunForm.empty());
        model.addAttribute("zones", Zones.options());
        return "account/first-run";
    }

    @PostMapping("/first-run")
    String found(
            @Valid @ModelAttribute("form") FirstRunForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        if (!firstRun.isDue()) {
            return "redirect:/";
        }
        if (!errors.hasErrors()) {
            firstRun.found(form).ifPresent(refused -> refused.putAt(errors));
        }
        if (errors.hasErrors()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            model.addAttribute("zones", Zones.options());
            return "account/first-run";
        }
        return "redirect:/sign-in?welcome";
    }
}
