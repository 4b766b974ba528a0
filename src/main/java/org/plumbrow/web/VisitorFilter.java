package org.plumbrow.web;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Finds out who is asking and opens exactly that person's branches for the request. The account room puts it into the
 * security chain, behind the sign-in. A branch named in the address ({@code ?branch=QV}) is remembered as seen last.
 */
public final class VisitorFilter extends OncePerRequestFilter {

    private final Access access;
    private final VisitorSource people;

    public VisitorFilter(Access access, VisitorSource people) {
        this.access = access;
        this.people = people;
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        String path = request.getRequestURI();
        return path.startsWith("/webjars/")
                || path.startsWith("/actuator/")
                || path.endsWith(".css")
                || path.endsWith(".js");
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        Optional<Visitor> visitor = signedIn().flatMap(who -> people.find(who.personId()));
        if (visitor.isEmpty()) {
            // An account that has ended leaves no one signed in.
            signedIn().ifPresent(gone -> SecurityContextHolder.clearContext());
            chain.doFilter(request, response);
            return;
        }
        BranchCard branch = branchOf(request, visitor.get());
        try {
            access.as(visitor.get(), branch, () -> {
                try {
                    chain.doFilter(request, response);
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                } catch (ServletException e) {
                    throw new CarriedServletException(e);
                }
                return Boolean.TRUE;
            });
        } catch (UncheckedIOException e) {
            throw e.getCause();
        } catch (CarriedServletException e) {
            throw e.carried;
        }
    }

    private @Nullable BranchCard branchOf(HttpServletRequest request, Visitor visitor) {
        String code = request.getParameter("branch");
        if (code == null || code.isBlank()) {
            return visitor.lastBranch().orElse(null);
        }
        Optional<BranchCard> named = visitor.branchCalled(code);
        named.filter(card -> !card.id().equals(visitor.lastBranchId()))
                .ifPresent(card -> people.looksAt(visitor.personId(), card.id()));
        return named.orElse(null);
    }

    private static Optional<SignedIn> signedIn() {
        Authentication authentication = SecurityContextHolder.getContext().getAuthentication();
        return authentication != null && authentication.getPrincipal() instanceof SignedIn who
                ? Optional.of(who)
                : Optional.empty();
    }

    private static final class CarriedServletException extends RuntimeException {
        private final transient ServletException carried;

        CarriedServletException(ServletException carried) {
            super(carried);
            this.carried = carried;
        }
    }
}
