package org.plumbrow.notice;

import java.net.URI;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/**
 * The address under which people reach this installation, for links that leave the house: {@code plumbrow.address}. It
 * is never taken from a request: whoever sends one may write any host into it.
 */
@Component
public class OwnAddress {

    private final URI base;

    OwnAddress(
            @Value("${plumbrow.address:}") String setting,
            @Value("${server.port:8080}") int port,
            @Value("${server.ssl.enabled:false}") boolean https) {
        String given = setting.isBlank() ? (https ? "https" : "http") + "://localhost:" + port : setting.strip();
        this.base = URI.create(given.endsWith("/") ? given.substring(0, given.length() - 1) : given);
        if (base.getHost() == null || !"http".equals(base.getScheme()) && !"https".equals(base.getScheme())) {
            throw new IllegalArgumentException(
                    "plumbrow.address must be a web address such as https://jobs.firm.example");
        }
    }

    /** The whole address of one of our pages. @param path from the root, with its slash */
    public String of(String path) {
        return base + path;
    }

    public String host() {
        return base.getHost();
    }
}
