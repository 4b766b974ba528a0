package org.plumbrow.account.people;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.util.Optional;
import org.plumbrow.web.Refusal;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;

/** Pages for who is not signed in and holds a link: an invitation, or the way to a new password. */
@Controller
class LinkPages {

    private final Joining joining;
    private final Resets resets;

    LinkPages(Joining joining, Resets resets) {
        this.joining = joining;
        this.resets = resets;
    }

    @GetMapping("/invited/{invitationToken}")
    String invited(@PathVariable String invitationToken, Model model, HttpServletResponse response) {
        Invitations.Open invitation = joining.invitation(invitationToken).orElseThrow(LinkHasEnded::new);
        model.addAttribute("form", new JoinForm(invitation.name(), null, null));
        return joinPage(invitation, invitationToken, model, response);
    }

    private static String joinPage(
            Invitations.Open invitation, String token, Model model, HttpServletResponse response) {
        kept(response);
        model.addAttribute("invitation", invitation);
        model.addAttribute("token", token);
        return "account/join";
    }

    @PostMapping("/invited/{invitationToken}")
    String join(
            @PathVariable String invitationToken,
            @Valid @ModelAttribute("form") JoinForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        Invitations.Open invitation = joining.invitation(invitationToken).orElseThrow(LinkHasEnded::new);
        if (!errors.hasErrors()) {
            joining.join(invitationToken, form).ifPresent(refused -> refused.putAt(errors));
        }
        if (errors.hasErrors()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return joinPage(invitation, invitationToken, model, response);
        }
        return "redirect:/sign-in?welcome";
    }

    @GetMapping("/forgotten")
    String forgotten(Model model) {
        model.addAttribute("form", new ForgottenForm(""));
        return "account/forgotten";
    }

    @PostMapping("/forgotten")
    String sendLink(
            @Valid @ModelAttribute("form") ForgottenForm form,
            BindingResult errors,
            HttpServletRequest request,
            HttpServletResponse response) {
        if (errors.hasErrors()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return "account/forgotten";
        }
        resets.ask(form.typedEmail(), request.getRemoteAddr());
        return "account/link-sent";
    }

    @GetMapping("/reset/{resetToken}")
    String reset(@PathVariable String resetToken, Model model, HttpServletResponse response) {
        resets.behind(resetToken).orElseThrow(LinkHasEnded::new);
        model.addAttribute("form", new ResetForm(null, null));
        return resetPage(resetToken, model, response);
    }

    private static String resetPage(String token, Model model, HttpServletResponse response) {
        kept(response);
        model.addAttribute("token", token);
        return "account/reset";
    }

    @PostMapping("/reset/{resetToken}")
    String chooseAnew(
            @PathVariable String resetToken,
            @ModelAttribute("form") ResetForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        resets.behind(resetToken).orElseThrow(LinkHasEnded::new);
        Optional<Refusal> refused = resets.use(resetToken, form);
        if (refused.isPresent()) {
            refused.get().putAt(errors);
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return resetPage(resetToken, model, response);
        }
        return "redirect:/sign-in?changed";
    }

    /** The address is a secret: it is told to no other page. */
    private static void kept(HttpServletResponse response) {
        response.setHeader("Referrer-Policy", "no-referrer");
    }

    @ExceptionHandler(LinkHasEnded.class)
    String ended(HttpServletResponse response) {
        response.setStatus(HttpStatus.NOT_FOUND.value());
        return "account/link-ended";
    }
}
