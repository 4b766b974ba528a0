package org.plumbrow.account.door;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Addresses of our own pages only: where somebody goes on after signing in must not be another site. */
final class LocalAddress {

    private static final Pattern OURS = Pattern.compile("/(?![/\\\\])[\\x21-\\x7e&&[^\\\\]]{0,1000}");

    private LocalAddress() {}

    static boolean isOurs(@Nullable String address) {
        return address != null && OURS.matcher(address).matches();
    }

    /** The asked page, as an address to come back to. */
    static String of(HttpServletRequest request) {
        String query = request.getQueryString();
        return query == null ? request.getRequestURI() : request.getRequestURI() + "?" + query;
    }

    static String signInFor(HttpServletRequest request) {
        String asked = of(request);
        boolean worthIt = "GET".equals(request.getMethod()) && isOurs(asked) && !"/".equals(asked);
        return worthIt ? "/sign-in?next=" + URLEncoder.encode(asked, StandardCharsets.UTF_8) : "/sign-in";
    }

    /** Whether a form was sent from one of our own pages, as far as the browser says. */
    static boolean cameFromUs(HttpServletRequest request) {
        String origin = request.getHeader("Origin");
        if (origin == null) {
            return true;
        }
        try {
            URI from = URI.create(origin);
            return request.getServerName().equalsIgnoreCase(from.getHost()) && request.getServerPort() == port(from);
        } catch (IllegalArgumentException notAnAddress) {
            return false;
        }
    }

    private static int port(URI from) {
        if (from.getPort() != -1) {
            return from.getPort();
        }
        return "https".equals(from.getScheme()) ? 443 : 80;
    }
}
