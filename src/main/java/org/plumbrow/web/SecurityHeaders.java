package org.plumbrow.web;

import org.springframework.security.config.Customizer;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.HeadersConfigurer;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;

/** The headers of every page: only our own files, no inline script or style, no frame, nothing told to other sites. */
public final class SecurityHeaders {

    private static final String ONLY_OURS = String.join(
            "; ",
            "default-src 'none'",
            "script-src 'self'",
            "style-src 'self'",
            "img-src 'self' data:",
            "connect-src 'self'",
            "font-src 'self'",
            "manifest-src 'self'",
            "worker-src 'self'",
            "form-action 'self'",
            "base-uri 'none'",
            "frame-ancestors 'none'");

    private SecurityHeaders() {}

    /** For {@code http.headers(...)} of each security chain. HSTS goes out whenever the request came by https. */
    public static Customizer<HeadersConfigurer<HttpSecurity>> strict() {
        return headers -> headers.contentSecurityPolicy(policy -> policy.policyDirectives(ONLY_OURS))
                .referrerPolicy(referrer -> referrer.policy(ReferrerPolicy.SAME_ORIGIN))
                .permissionsPolicyHeader(policy ->
                        policy.policy("camera=(self), geolocation=(self), microphone=(), payment=(), usb=()"));
    }
}
