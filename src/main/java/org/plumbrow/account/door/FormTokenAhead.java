package org.plumbrow.account.door;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.plumbrow.web.Access;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Reads the form token of a signed-in person before the page is written: a long page whose only form stands at its end
 * would ask for it when the head of the answer has already left.
 */
final class FormTokenAhead extends OncePerRequestFilter {

    private final Access access;

    FormTokenAhead(Access access) {
        this.access = access;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (access.present().isPresent()
                && request.getAttribute(CsrfToken.class.getName()) instanceof CsrfToken token) {
            token.getToken();
        }
        chain.doFilter(request, response);
    }
}
