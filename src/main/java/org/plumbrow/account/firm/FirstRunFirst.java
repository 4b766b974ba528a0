package org.plumbrow.account.firm;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.regex.Pattern;
import org.plumbrow.web.SignedIn;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/** Until somebody can sign in, every page leads to the first run. Behind the sign-in, so that it costs nothing later. */
@Component
@Order(Ordered.LOWEST_PRECEDENCE)
class FirstRunFirst extends OncePerRequestFilter {

    private static final Pattern ALSO_OPEN =
            Pattern.compile("/first-run|/error|/actuator/health.*|/webjars/.*|/icons/.*|.*\\.(css|js|svg|ico|png)");

    private final FirstRun firstRun;

    FirstRunFirst(FirstRun firstRun) {
        this.firstRun = firstRun;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        var who = SecurityContextHolder.getContext().getAuthentication();
        boolean signedIn = who != null && who.getPrincipal() instanceof SignedIn;
        if (!signedIn && !ALSO_OPEN.matcher(request.getRequestURI()).matches() && firstRun.isDue()) {
            response.sendRedirect("/first-run");
            return;
        }
        chain.doFilter(request, response);
    }
}
