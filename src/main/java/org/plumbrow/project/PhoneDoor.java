package org.plumbrow.project;

import java.util.Map;
import java.util.Optional;
import org.plumbrow.web.NotForYourRole;
import org.plumbrow.web.NotFound;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.ExceptionHandler;

/**
 * Where a phone sends what it has kept: a form's own fields, with the id of the sending. Answered for the script, never
 * with a page: a page in its place (signing in, a token that has ended) says that nothing was taken.
 */
public abstract class PhoneDoor {

    private final String thing;

    /** @param thing what is written there: "survey" */
    protected PhoneDoor(String thing) {
        this.thing = thing;
    }

    /** What the phone says of this sending; empty if it came without its number. */
    protected static Optional<PhoneSending> of(Map<String, String> typed) {
        return PhoneSending.of(
                typed.getOrDefault("sending", ""), typed.getOrDefault("person", ""), typed.getOrDefault("written", ""));
    }

    @ExceptionHandler(NotFound.class)
    ResponseEntity<PhoneReply> gone() {
        return ResponseEntity.status(HttpStatus.NOT_FOUND)
                .body(PhoneReply.refused("This " + thing + " is no longer there, or not in your branches."));
    }

    @ExceptionHandler(NotForYourRole.class)
    ResponseEntity<PhoneReply> notForYou(NotForYourRole refused) {
        return ResponseEntity.status(HttpStatus.FORBIDDEN).body(PhoneReply.refused(refused.sentence()));
    }
}
