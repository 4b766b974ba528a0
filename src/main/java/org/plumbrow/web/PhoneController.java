package org.plumbrow.web;

import java.util.UUID;
import org.springframework.http.ResponseEntity;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;

/**
 * What a page asks before it sends what a phone has kept: who is signed in now, and the form token of that session.
 * Whoever is not signed in is led to the sign-in page as everywhere.
 */
@Controller
class PhoneController {

    private final Access access;

    PhoneController(Access access) {
        this.access = access;
    }

    /** @param header in which the token is sent */
    record SignedInHere(UUID person, String header, String token) {}

    @GetMapping("/phone")
    ResponseEntity<SignedInHere> whoIsHere(CsrfToken token) {
        return ResponseEntity.ok(
                new SignedInHere(access.visitor().personId(), token.getHeaderName(), token.getToken()));
    }
}
