package org.plumbrow.schedule.crewweek;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import org.plumbrow.web.link.LinkKind;
import org.plumbrow.web.link.PrivateLinks;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** The calendar behind a crew's private link. */
@Controller
class CrewFeedController {

    private static final MediaType CALENDAR = new MediaType("text", "calendar", StandardCharsets.UTF_8);

    private final PrivateLinks links;
    private final CrewFeed feed;

    CrewFeedController(PrivateLinks links, CrewFeed feed) {
        this.links = links;
        this.feed = feed;
    }

    @GetMapping("/c/{feedToken}.ics")
    ResponseEntity<byte[]> calendar(@PathVariable String feedToken, HttpServletRequest request) {
        byte[] file =
                links.visit(LinkKind.CREW_FEED, feedToken, request.getRemoteAddr(), link -> feed.of(link.subjectId()));
        return ResponseEntity.ok().contentType(CALENDAR).body(file);
    }
}
