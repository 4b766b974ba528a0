package org.plumbrow.notice;

import java.nio.charset.StandardCharsets;
import java.util.UUID;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Place;
import org.springframework.context.annotation.Bean;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The outbox: what was sent, what waits, what did not leave and why. */
@Controller
class OutboxPages {

    private static final int PLACE_ORDER = 80;

    private final OutboxDesk desk;
    private final Postman postman;

    OutboxPages(OutboxDesk desk, Postman postman) {
        this.desk = desk;
        this.postman = postman;
    }

    @Bean
    static Place outboxPlace() {
        return Place.underOwnName(PLACE_ORDER, "notice.place", "/outbox", May.SEE_OUTBOX);
    }

    @GetMapping("/outbox")
    String ofBranch(@RequestParam(name = "page", defaultValue = "1") int page, Model model) {
        return list(desk.ofBranch(page), false, model);
    }

    @GetMapping("/outbox/sign-in")
    String toSignIn(@RequestParam(name = "page", defaultValue = "1") int page, Model model) {
        return list(desk.toSignIn(page), true, model);
    }

    private String list(OutboxDesk.View view, boolean toSignIn, Model model) {
        model.addAttribute("view", view);
        model.addAttribute("toSignIn", toSignIn);
        model.addAttribute("canSend", postman.canSend());
        return "notice/outbox";
    }

    @GetMapping("/outbox/{noticeId}")
    String one(@PathVariable UUID noticeId, Model model) {
        model.addAttribute("letter", desk.read(noticeId));
        model.addAttribute("canSend", postman.canSend());
        return "notice/notice";
    }

    @GetMapping("/outbox/{noticeId}/calendar")
    ResponseEntity<byte[]> calendar(@PathVariable UUID noticeId) {
        NewNotice.CalendarPart calendar = desk.read(noticeId).calendar();
        if (calendar == null) {
            throw new NotFound("a calendar entry");
        }
        return ResponseEntity.ok()
                .header(HttpHeaders.CONTENT_TYPE, "text/calendar; charset=UTF-8")
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment()
                                .filename(calendar.fileName())
                                .build()
                                .toString())
                .body(calendar.ics().getBytes(StandardCharsets.UTF_8));
    }

    @PostMapping("/outbox/{noticeId}/passed-on")
    String passedOn(@PathVariable UUID noticeId, RedirectAttributes next) {
        if (desk.passedOn(noticeId)) {
            Flash.doneWithUndo(next, "Written down: you passed it on yourself.", "/outbox/" + noticeId + "/wait-again");
        }
        return "redirect:/outbox/{noticeId}";
    }

    @PostMapping("/outbox/{noticeId}/wait-again")
    String waitAgain(@PathVariable UUID noticeId, RedirectAttributes next) {
        if (desk.waitAgain(noticeId)) {
            Flash.done(next, "It waits to be sent again, with five new tries.");
        }
        return "redirect:/outbox/{noticeId}";
    }
}
