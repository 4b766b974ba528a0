package org.plumbrow.status.desk;

import java.util.UUID;
import org.plumbrow.status.CustomerLinks;
import org.plumbrow.web.Flash;
import org.plumbrow.web.QrCode;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The private link of one person at the customer's side; the page says what each act does before it is done. */
@Controller("customerLinkPages")
class LinkPages {

    private static final String BACK = "redirect:/projects/{projectId}/customer/links/{contactId}";

    private final CustomerLinks links;
    private final DeskReading reading;

    LinkPages(CustomerLinks links, DeskReading reading) {
        this.links = links;
        this.reading = reading;
    }

    @GetMapping("/projects/{projectId}/customer/links/{contactId}")
    String link(@PathVariable UUID projectId, @PathVariable UUID contactId, Model model) {
        CustomerLinks.Held held = links.of(projectId, contactId);
        model.addAttribute("held", held);
        model.addAttribute("about", reading.title(projectId));
        held.link().map(links::address).ifPresent(address -> {
            model.addAttribute("address", address);
            model.addAttribute("square", QrCode.of(address));
        });
        return "status/link";
    }

    @PostMapping("/projects/{projectId}/customer/links/{contactId}")
    String make(@PathVariable UUID projectId, @PathVariable UUID contactId, RedirectAttributes next) {
        boolean before = links.of(projectId, contactId).link().isPresent();
        links.make(projectId, contactId);
        Flash.done(
                next,
                before
                        ? "There is a new link. The one before opens nothing any more."
                        : "The link is made. Write the e-mail, or hand it on yourself.");
        return BACK;
    }

    @PostMapping("/projects/{projectId}/customer/links/{contactId}/end")
    String end(@PathVariable UUID projectId, @PathVariable UUID contactId, RedirectAttributes next) {
        boolean ended = links.end(projectId, contactId);
        Flash.done(next, ended ? "The link has ended: it opens nothing any more." : "There was no link.");
        return BACK;
    }

    @PostMapping("/projects/{projectId}/customer/links/{contactId}/send")
    String send(@PathVariable UUID projectId, @PathVariable UUID contactId, RedirectAttributes next) {
        boolean written = links.send(projectId, contactId);
        Flash.done(
                next,
                written ? "The e-mail with the link is in the outbox." : "There is no link to send. Make one first.");
        return BACK;
    }
}
