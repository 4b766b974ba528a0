package org.plumbrow.account.door;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.plumbrow.account.person.Credentials.Proof;
import org.plumbrow.account.person.SecurityLog;
import org.plumbrow.web.SignedIn;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.authentication.session.ChangeSessionIdAuthenticationStrategy;
import org.springframework.security.web.authentication.session.SessionAuthenticationStrategy;
import org.springframework.security.web.context.SecurityContextRepository;
import org.springframework.security.web.csrf.CsrfAuthenticationStrategy;
import org.springframework.security.web.csrf.CsrfTokenRepository;
import org.springframework.stereotype.Component;

/**
 * Opens the session of a person who has proved to be one: a new session id and a new form token, so that nothing that
 * was planted before counts. The session keeps the person's id and the hour it began.
 */
@Component
class WebSignIn {

    /** However busy, a session ends after this. */
    static final Duration LONGEST = Duration.ofHours(12);

    private static final String SINCE = "signedInSince";

    private final SecurityContextRepository contexts;
    private final SessionAuthenticationStrategy newId = new ChangeSessionIdAuthenticationStrategy();
    private final SessionAuthenticationStrategy newFormToken;
    private final SecurityLog log;
    private final Clock clock;

    WebSignIn(SecurityContextRepository contexts, CsrfTokenRepository formTokens, SecurityLog log, Clock clock) {
        this.contexts = contexts;
        this.newFormToken = new CsrfAuthenticationStrategy(formTokens);
        this.log = log;
        this.clock = clock;
    }

    void open(Proof person, String how, HttpServletRequest request, HttpServletResponse response) {
        var authentication =
                UsernamePasswordAuthenticationToken.authenticated(new SignedIn(person.id()), null, List.of());
        request.getSession(true);
        newId.onAuthentication(authentication, request, response);
        newFormToken.onAuthentication(authentication, request, response);
        request.getSession().setAttribute(SINCE, clock.instant().toEpochMilli());
        SecurityContext context = SecurityContextHolder.createEmptyContext();
        context.setAuthentication(authentication);
        SecurityContextHolder.setContext(context);
        contexts.saveContext(context, request, response);
        log.write("signed-in", person.actor(), "Signed in " + how + ".");
    }

    /** Whether the session of this request has lived its twelve hours. */
    boolean isTooOld(HttpServletRequest request) {
        var session = request.getSession(false);
        return session != null
                && session.getAttribute(SINCE) instanceof Long since
                && clock.instant().isAfter(Instant.ofEpochMilli(since).plus(LONGEST));
    }
}
