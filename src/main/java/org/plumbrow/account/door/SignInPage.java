package org.plumbrow.account.door;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import org.jspecify.annotations.Nullable;
import org.plumbrow.account.person.Credentials.Proof;
import org.plumbrow.web.Access;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The first step of signing in: address and password. The second, where there is one, is {@link CodePages}. */
@Controller
class SignInPage {

    private final SignInDesk desk;
    private final Entrance entrance;
    private final CodePages codes;
    private final Access access;
    private final Clock clock;

    SignInPage(SignInDesk desk, Entrance entrance, CodePages codes, Access access, Clock clock) {
        this.desk = desk;
        this.entrance = entrance;
        this.codes = codes;
        this.access = access;
        this.clock = clock;
    }

    @GetMapping("/sign-in")
    String show(@RequestParam(name = "next", required = false) @Nullable String next, Model model) {
        if (access.present().isPresent()) {
            return "redirect:" + (LocalAddress.isOurs(next) ? next : "/");
        }
        model.addAttribute("form", SignInForm.empty(LocalAddress.isOurs(next) ? next : null, null));
        return "account/sign-in";
    }

    @PostMapping("/sign-in")
    String signIn(
            @ModelAttribute("form") SignInForm form,
            BindingResult errors,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response) {
        SignInDesk.Answer answer = desk.check(form.typedEmail(), form.typedPassword(), request.getRemoteAddr());
        if (answer instanceof SignInDesk.No no) {
            errors.reject("refused", no.sentence());
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return "account/sign-in";
        }
        Proof person = ((SignInDesk.Known) answer).person();
        if (person.hasSecondFactor() || person.owesSecondFactor()) {
            HalfWay.remember(person.id(), form.keeps(), clock.instant(), request);
            return codes.ask(person, form.next(), form.carried(), model);
        }
        return entrance.letIn(
                person, "with a password", form.keeps(), form.next(), form.carried(), model, request, response);
    }
}
