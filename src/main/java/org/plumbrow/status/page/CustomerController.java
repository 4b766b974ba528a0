package org.plumbrow.status.page;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Optional;
import org.plumbrow.evidence.EvidenceFile;
import org.plumbrow.status.CustomerAnswers;
import org.plumbrow.web.LinkEnded;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;

/**
 * The page behind a customer's private link. Nothing is kept in a session: what was answered stands on the page itself.
 * Whatever is not there is answered like a link that has ended.
 */
@Controller
class CustomerController {

    private static final MediaType CALENDAR = new MediaType("text", "calendar", StandardCharsets.UTF_8);

    private final CustomerVisit visit;
    private final CustomerWords words;

    CustomerController(CustomerVisit visit, CustomerWords words) {
        this.visit = visit;
        this.words = words;
    }

    @GetMapping("/s/{customerToken}")
    String show(@PathVariable String customerToken, HttpServletRequest request, Model model) {
        model.addAttribute("answerForm", AnswerForm.EMPTY);
        boolean opened = request.getHeader("HX-Request") == null;
        return page(visit.look(guest(customerToken, request), opened), customerToken, model);
    }

    private static CustomerVisit.Guest guest(String token, HttpServletRequest request) {
        return new CustomerVisit.Guest(token, request.getRemoteAddr());
    }

    private static String page(CustomerView view, String token, Model model) {
        model.addAttribute("view", view);
        String base = "/s/" + token;
        model.addAttribute("base", base);
        model.addAttribute("photo", base + "/shut-off");
        model.addAttribute("photoSmall", base + "/shut-off/small");
        model.addAttribute("paperBase", base + "/papers");
        return "status/customer";
    }

    @PostMapping("/s/{customerToken}/answer")
    String answer(
            @PathVariable String customerToken,
            @ModelAttribute("answerForm") AnswerForm form,
            BindingResult errors,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        CustomerVisit.Guest guest = guest(customerToken, request);
        form.missing(words).forEach(refusal -> refusal.putAt(errors));
        HttpStatus status = HttpStatus.UNPROCESSABLE_CONTENT;
        if (!errors.hasErrors()) {
            Optional<LocalDate> day = form.answeredDay();
            CustomerAnswers.Outcome outcome = day.isPresent()
                    ? visit.answer(guest, day.get(), form.said())
                    : CustomerAnswers.Outcome.DAY_HAS_CHANGED;
            if (outcome == CustomerAnswers.Outcome.KEPT) {
                return "redirect:/s/{customerToken}#answer";
            }
            status = HttpStatus.CONFLICT;
            errors.reject("refused", words.say("status.ask." + outcome.name()));
        }
        response.setStatus(status.value());
        model.addAttribute("problem", true);
        return page(visit.look(guest, false), customerToken, model);
    }

    @GetMapping("/s/{customerToken}/power-off.ics")
    ResponseEntity<byte[]> calendar(@PathVariable String customerToken, HttpServletRequest request) {
        byte[] file = visit.calendar(guest(customerToken, request)).orElseThrow(LinkEnded::new);
        return ResponseEntity.ok()
                .contentType(CALENDAR)
                .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"power-off.ics\"")
                .body(file);
    }

    @GetMapping("/s/{customerToken}/shut-off")
    ResponseEntity<byte[]> photo(@PathVariable String customerToken, HttpServletRequest request) {
        return file(visit.shutOffPhoto(guest(customerToken, request), false)
                .map(photo -> new CustomerVisit.Taken(words.say("status.shutoff.photo"), photo)));
    }

    @GetMapping("/s/{customerToken}/shut-off/small")
    ResponseEntity<byte[]> smallPhoto(@PathVariable String customerToken, HttpServletRequest request) {
        return file(visit.shutOffPhoto(guest(customerToken, request), true)
                .map(photo -> new CustomerVisit.Taken(words.say("status.shutoff.photo"), photo)));
    }

    @GetMapping("/s/{customerToken}/papers/{paperSlot}")
    ResponseEntity<byte[]> paper(
            @PathVariable String customerToken, @PathVariable String paperSlot, HttpServletRequest request) {
        return file(visit.paper(guest(customerToken, request), paperSlot));
    }

    /** Photos to look at, everything else to keep; nothing that a browser would run. */
    private static ResponseEntity<byte[]> file(Optional<CustomerVisit.Taken> taken) {
        CustomerVisit.Taken it = taken.orElseThrow(LinkEnded::new);
        EvidenceFile file = it.file();
        ContentDisposition.Builder disposition =
                file.isPicture() ? ContentDisposition.inline() : ContentDisposition.attachment();
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType(file.mediaType()))
                .header("X-Content-Type-Options", "nosniff")
                .header("Content-Security-Policy", EvidenceFile.NOTHING_RUNS)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        disposition
                                .filename(it.title() + file.ending(), StandardCharsets.UTF_8)
                                .build()
                                .toString())
                .body(file.bytes());
    }

    /** An address that is none, below or beside a link, tells nothing either. */
    @GetMapping({"/s", "/s/", "/s/{customerToken}/**"})
    String elsewhere() {
        throw new LinkEnded();
    }
}
