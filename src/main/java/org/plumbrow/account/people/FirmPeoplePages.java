package org.plumbrow.account.people;

import java.util.UUID;
import org.plumbrow.web.Flash;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The owner's acts on a person's page. */
@Controller
class FirmPeoplePages {

    private final FirmPeople firm;

    FirmPeoplePages(FirmPeople firm) {
        this.firm = firm;
    }

    @PostMapping("/people/{personId}/end")
    String end(@PathVariable UUID personId, RedirectAttributes next) {
        firm.end(personId);
        Flash.doneWithUndo(
                next, "The account has ended and is signed out everywhere.", "/people/" + personId + "/restore");
        return "redirect:/people/firm";
    }

    @PostMapping("/people/{personId}/restore")
    String restore(@PathVariable UUID personId, RedirectAttributes next) {
        firm.restore(personId);
        Flash.done(next, "The account is open again, with its roles.");
        return "redirect:/people/{personId}";
    }

    @PostMapping("/people/{personId}/owner")
    String owner(
            @PathVariable UUID personId,
            @RequestParam(name = "owns", defaultValue = "false") boolean owns,
            RedirectAttributes next) {
        firm.share(personId, owns);
        Flash.doneWithUndo(
                next,
                owns ? "They own the firm too, with all its branches." : "They are no owner of the firm any more.",
                "/people/" + personId + "/owner?owns=" + !owns);
        return "redirect:/people/{personId}";
    }

    @PostMapping("/people/{personId}/second-factor/end")
    String endSecondFactor(@PathVariable UUID personId, RedirectAttributes next) {
        firm.endSecondFactor(personId);
        Flash.done(next, "The second factor has ended; they begin a new one at the next sign-in if they need one.");
        return "redirect:/people/{personId}";
    }
}
