package org.plumbrow.account.door;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.plumbrow.account.person.Credentials;
import org.plumbrow.account.person.Credentials.Proof;
import org.plumbrow.account.person.SecondFactors;
import org.plumbrow.web.QrCode;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;

/** The second step of signing in: the code from the phone; or, for who owes a second factor, its beginning. */
@Controller
class CodePages {

    private final SignInDesk desk;
    private final Entrance entrance;
    private final Credentials credentials;
    private final SecondFactors factors;
    private final Clock clock;

    CodePages(SignInDesk desk, Entrance entrance, Credentials credentials, SecondFactors factors, Clock clock) {
        this.desk = desk;
        this.entrance = entrance;
        this.credentials = credentials;
        this.factors = factors;
        this.clock = clock;
    }

    /** @return the view that asks this person for the second step */
    String ask(Proof person, @Nullable String next, @Nullable String carried, Model model) {
        if (person.hasSecondFactor()) {
            model.addAttribute("codeForm", new CodeForm("", null, next, carried));
            return "account/sign-in-code";
        }
        return firstCodePage(person, new CodeForm("", factors.newSecret(), next, carried), model);
    }

    private static String firstCodePage(Proof person, CodeForm form, Model model) {
        model.addAttribute("codeForm", form);
        model.addAttribute("qr", QrCode.of(SecondFactors.keyAddress(form.givenSecret(), person.email())));
        return "account/sign-in-set-up";
    }

    @GetMapping("/sign-in/code")
    String show(HttpServletRequest request, Model model) {
        return halfWay(request).map(person -> ask(person, null, null, model)).orElse("redirect:/sign-in");
    }

    @PostMapping("/sign-in/code")
    String code(
            @ModelAttribute("codeForm") CodeForm form,
            BindingResult errors,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response) {
        Optional<Proof> found = halfWay(request).filter(Proof::hasSecondFactor);
        if (found.isEmpty()) {
            return "redirect:/sign-in";
        }
        Proof person = found.get();
        Optional<String> no = desk.checkCode(person, form.typedCode(), request.getRemoteAddr());
        if (no.isPresent()) {
            errors.rejectValue("code", "refused", no.get());
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return "account/sign-in-code";
        }
        boolean keep = HalfWay.of(request, clock.instant()).orElseThrow().keep();
        HalfWay.forget(request);
        return entrance.letIn(
                person, "with password and code", keep, form.next(), form.carried(), model, request, response);
    }

    @PostMapping("/sign-in/set-up")
    String begin(
            @ModelAttribute("codeForm") CodeForm form,
            BindingResult errors,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response) {
        Optional<Proof> found = halfWay(request).filter(Proof::owesSecondFactor);
        if (found.isEmpty()) {
            return "redirect:/sign-in";
        }
        Proof person = found.get();
        Optional<List<String>> recovery = desk.beginSecondFactor(person, form.givenSecret(), form.typedCode());
        if (recovery.isEmpty()) {
            errors.rejectValue("code", "refused", SignInDesk.WRONG_CODE);
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return firstCodePage(person, form, model);
        }
        boolean keep = HalfWay.of(request, clock.instant()).orElseThrow().keep();
        HalfWay.forget(request);
        entrance.open(person, "with a password, and began a second factor", keep, request, response);
        model.addAttribute("recovery", recovery.get());
        model.addAttribute("next", Entrance.goOn(form.next()));
        CarriedForm.unpack(form.carried()).ifPresent(carried -> model.addAttribute("carried", carried));
        return "account/recovery-codes";
    }

    private Optional<Proof> halfWay(HttpServletRequest request) {
        return HalfWay.of(request, clock.instant()).flatMap(half -> credentials.of(half.personId()));
    }
}
