package org.plumbrow.account.door;

import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.net.URI;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.plumbrow.web.SignedIn;
import org.springframework.http.HttpStatus;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.View;
import org.springframework.web.servlet.ViewResolver;

/**
 * What becomes of a request that nobody signed in, or whose form token is not the session's. A page leads to the
 * sign-in page and on from there; a form keeps what was typed.
 */
@Component
class Away {

    private static final String HTMX = "HX-Request";

    private final ViewResolver views;

    Away(ViewResolver thymeleafViewResolver) {
        this.views = thymeleafViewResolver;
    }

    /** Nobody is signed in. */
    void nobody(HttpServletRequest request, HttpServletResponse response) throws IOException, ServletException {
        boolean fromPage = request.getHeader(HTMX) != null;
        if ("GET".equals(request.getMethod()) || "HEAD".equals(request.getMethod())) {
            if (fromPage) {
                response.setStatus(HttpStatus.UNAUTHORIZED.value());
                response.setHeader("HX-Redirect", "/sign-in" + next(request.getHeader("HX-Current-URL")));
            } else {
                response.sendRedirect(LocalAddress.signInFor(request));
            }
            return;
        }
        if (!LocalAddress.cameFromUs(request)) {
            show("account/foreign-form", Map.of(), HttpStatus.FORBIDDEN, request, response);
            return;
        }
        Optional<CarriedForm> carried = CarriedForm.of(request);
        SignInForm form =
                SignInForm.empty(null, carried.map(CarriedForm::packed).orElse(null));
        show("account/sign-in", Map.of("form", form, "away", true), HttpStatus.UNAUTHORIZED, request, response);
    }

    /** The form token is missing or another session's. */
    void wrongToken(HttpServletRequest request, HttpServletResponse response) throws IOException, ServletException {
        var authentication = SecurityContextHolder.getContext().getAuthentication();
        boolean signedIn = authentication != null && authentication.getPrincipal() instanceof SignedIn;
        if (!signedIn) {
            nobody(request, response);
            return;
        }
        Optional<CarriedForm> carried = CarriedForm.of(request);
        if (carried.isEmpty() || !LocalAddress.cameFromUs(request)) {
            show("account/foreign-form", Map.of(), HttpStatus.FORBIDDEN, request, response);
            return;
        }
        show("account/again", Map.of("carried", carried.get()), HttpStatus.FORBIDDEN, request, response);
    }

    private static String next(String currentUrl) {
        try {
            URI current = URI.create(Objects.toString(currentUrl, ""));
            String path = current.getRawPath();
            return LocalAddress.isOurs(path) ? "?next=" + path : "";
        } catch (IllegalArgumentException notAnAddress) {
            return "";
        }
    }

    private void show(
            String page,
            Map<String, ?> model,
            HttpStatus status,
            HttpServletRequest request,
            HttpServletResponse response)
            throws ServletException {
        boolean fromPage = request.getHeader(HTMX) != null;
        if (fromPage) {
            // htmx swaps only what succeeded; the whole page is to be replaced by this one
            response.setHeader("HX-Retarget", "body");
            response.setHeader("HX-Reswap", "innerHTML");
        }
        response.setStatus(fromPage ? HttpStatus.OK.value() : status.value());
        response.setHeader("Cache-Control", "no-store");
        try {
            View view = Objects.requireNonNull(views.resolveViewName(page, request.getLocale()));
            view.render(model, request, response);
        } catch (RuntimeException e) {
            throw e;
        } catch (Exception e) {
            throw new ServletException(e);
        }
    }
}
