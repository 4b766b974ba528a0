package org.plumbrow.account.door;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Optional;
import java.util.regex.Pattern;
import org.plumbrow.account.person.Credentials;
import org.plumbrow.account.person.Credentials.Proof;
import org.plumbrow.account.person.Devices;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseCookie;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;
import org.springframework.web.util.WebUtils;

/** Signs a kept phone in again when its session has ended; not if its owner must have a second factor by now. */
final class KeptPhone extends OncePerRequestFilter {

    private static final String COOKIE = "PHONE";
    private static final Pattern NOT_A_PAGE = Pattern.compile("/(webjars|icons|actuator)/.*|.*\\.(css|js|svg|ico|png)");

    private final Devices devices;
    private final Credentials credentials;
    private final WebSignIn signIn;

    KeptPhone(Devices devices, Credentials credentials, WebSignIn signIn) {
        this.devices = devices;
        this.credentials = credentials;
        this.signIn = signIn;
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        return tokenOf(request).isEmpty()
                || NOT_A_PAGE.matcher(request.getRequestURI()).matches();
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (SecurityContextHolder.getContext().getAuthentication() == null) {
            Optional<Proof> owner = tokenOf(request).flatMap(devices::personOf).flatMap(credentials::of);
            if (owner.isEmpty()) {
                forget(request, response);
            } else if (!owner.get().owesSecondFactor()) {
                signIn.open(owner.get(), "by a kept phone", request, response);
            }
        }
        chain.doFilter(request, response);
    }

    static Optional<String> tokenOf(HttpServletRequest request) {
        return Optional.ofNullable(WebUtils.getCookie(request, COOKIE)).map(Cookie::getValue);
    }

    static void carry(String token, HttpServletRequest request, HttpServletResponse response) {
        write(token, Devices.LIFE.toSeconds(), request, response);
    }

    static void forget(HttpServletRequest request, HttpServletResponse response) {
        write("", 0, request, response);
    }

    private static void write(String value, long seconds, HttpServletRequest request, HttpServletResponse response) {
        response.addHeader(
                HttpHeaders.SET_COOKIE,
                ResponseCookie.from(COOKIE, value)
                        .path("/")
                        .httpOnly(true)
                        .secure(request.isSecure())
                        .sameSite("Lax")
                        .maxAge(seconds)
                        .build()
                        .toString());
    }
}
