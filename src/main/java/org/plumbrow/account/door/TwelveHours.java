package org.plumbrow.account.door;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;

/** Ends a session that is older than a working day, however busy it was. */
final class TwelveHours extends OncePerRequestFilter {

    private final WebSignIn signIn;

    TwelveHours(WebSignIn signIn) {
        this.signIn = signIn;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (signIn.isTooOld(request)) {
            request.getSession().invalidate();
            SecurityContextHolder.clearContext();
        }
        chain.doFilter(request, response);
    }
}
