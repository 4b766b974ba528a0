package org.plumbrow.account.own;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.account.person.SecondFactors;
import org.plumbrow.web.Access;
import org.plumbrow.web.Flash;
import org.plumbrow.web.QrCode;
import org.plumbrow.web.Refusal;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Password, second factor and kept phones of the person who asks. */
@Controller
class OwnPages {

    private final OwnPassword password;
    private final OwnFactor factor;
    private final Endings endings;
    private final Access access;

    OwnPages(OwnPassword password, OwnFactor factor, Endings endings, Access access) {
        this.password = password;
        this.factor = factor;
        this.endings = endings;
        this.access = access;
    }

    @GetMapping("/you/password")
    String password(Model model) {
        model.addAttribute("form", PasswordForm.empty());
        return "account/password";
    }

    @PostMapping("/you/password")
    String changePassword(
            @ModelAttribute("form") PasswordForm form,
            BindingResult errors,
            HttpServletRequest request,
            HttpServletResponse response,
            RedirectAttributes next) {
        Optional<Refusal> refused = password.change(form, request.getSession().getId());
        if (refused.isPresent()) {
            refused.get().putAt(errors);
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return "account/password";
        }
        Flash.done(next, "The new password holds. Everything else of yours was signed out.");
        return "redirect:/you";
    }

    @GetMapping("/you/second-factor")
    String factor(Model model) {
        return factorPage(new FactorForm("", factor.newSecret()), model);
    }

    private String factorPage(FactorForm form, Model model) {
        model.addAttribute("factor", factor.state());
        model.addAttribute("factorForm", form);
        model.addAttribute(
                "qr",
                QrCode.of(SecondFactors.keyAddress(
                        form.givenSecret(), access.visitor().email())));
        return "account/second-factor";
    }

    @PostMapping("/you/second-factor")
    String beginFactor(
            @ModelAttribute("factorForm") FactorForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        return codesOrAgain(factor.begin(form), form, errors, model, response);
    }

    @PostMapping("/you/second-factor/codes")
    String renewCodes(
            @ModelAttribute("factorForm") FactorForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        return codesOrAgain(factor.renewRecoveryCodes(form), form, errors, model, response);
    }

    private String codesOrAgain(
            OwnFactor.Outcome outcome,
            FactorForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        if (outcome.refusal().isPresent()) {
            outcome.refusal().get().putAt(errors);
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return factorPage(form, model);
        }
        model.addAttribute("recovery", outcome.recoveryCodes());
        model.addAttribute("next", "/you");
        return "account/recovery-codes";
    }

    @PostMapping("/you/second-factor/end")
    String endFactor(
            @ModelAttribute("factorForm") FactorForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        OwnFactor.Outcome outcome = factor.end(form);
        if (outcome.refusal().isPresent()) {
            outcome.refusal().get().putAt(errors);
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return factorPage(form, model);
        }
        Flash.done(next, "The second factor has ended. The password alone signs you in.");
        return "redirect:/you";
    }

    @PostMapping("/you/devices/{deviceId}/end")
    String endPhone(@PathVariable UUID deviceId, RedirectAttributes next) {
        endings.ofPhone(deviceId);
        Flash.done(next, "That phone has to sign in again.");
        return "redirect:/you";
    }

    @PostMapping("/you/sign-out-everywhere")
    String signOutEverywhere(HttpServletRequest request) {
        endings.everywhere();
        request.getSession().invalidate();
        return "redirect:/sign-in?everywhere";
    }
}
