package org.plumbrow.account.firm;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.regex.Pattern;
import org.plumbrow.web.Access;
import org.springframework.web.filter.OncePerRequestFilter;

/** Until somebody can sign in, every page leads to the first run. Behind the sign-in, so that it costs nothing later. */
public final class FirstRunFirst extends OncePerRequestFilter {

    private static final Pattern ALSO_OPEN =
            Pattern.compile("/first-run|/error|/actuator/health.*|/webjars/.*|/icons/.*|.*\\.(css|js|svg|ico|png)");

    private final FirstRun firstRun;
    private final Access access;

    public FirstRunFirst(FirstRun firstRun, Access access) {
        this.firstRun = firstRun;
        this.access = access;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (access.present().isEmpty()
                && !ALSO_OPEN.matcher(request.getRequestURI()).matches()
                && firstRun.isDue()) {
            response.sendRedirect("/first-run");
            return;
        }
        chain.doFilter(request, response);
    }
}
