package org.plumbrow.account.door;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
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

/** The sign-in page. */
@Controller
class SignInPage {

    private final SignInDesk desk;
    private final WebSignIn signIn;
    private final Access access;

    SignInPage(SignInDesk desk, WebSignIn signIn, Access access) {
        this.desk = desk;
        this.signIn = signIn;
        this.access = access;
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
            HttpServletRequest request,
            HttpServletResponse response) {
        SignInDesk.Answer answer = desk.check(form.typedEmail(), form.typedPassword(), request.getRemoteAddr());
        if (answer instanceof SignInDesk.No no) {
            errors.reject("refused", no.sentence());
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return "account/sign-in";
        }
        return goOn(((SignInDesk.Known) answer).person(), form, request, response);
    }

    private String goOn(Proof person, SignInForm form, HttpServletRequest request, HttpServletResponse response) {
        signIn.open(person, "with a password", request, response);
        return "redirect:" + (LocalAddress.isOurs(form.next()) ? form.next() : "/");
    }
}
