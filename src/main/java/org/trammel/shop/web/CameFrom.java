package org.trammel.shop.web;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URI;
import java.util.Optional;
import org.springframework.http.HttpHeaders;

/** The page of ours that a request was sent from. */
final class CameFrom {

    private CameFrom() {}

    /**
     * Path and query of the page, without the host, so that nobody can make us send a browser elsewhere. Empty if the
     * request does not say, or was sent from another site.
     */
    static Optional<String> path(HttpServletRequest request) {
        String referer = request.getHeader(HttpHeaders.REFERER);
        if (referer == null) {
            return Optional.empty();
        }
        try {
            URI page = URI.create(referer);
            String path = page.getRawPath();
            if (!ours(page, request) || path == null || !path.startsWith("/") || path.startsWith("//")) {
                return Optional.empty();
            }
            return Optional.of(page.getRawQuery() == null ? path : path + "?" + page.getRawQuery());
        } catch (IllegalArgumentException unreadable) {
            return Optional.empty();
        }
    }

    private static boolean ours(URI page, HttpServletRequest request) {
        String name = request.getServerName();
        String authority = String.valueOf(page.getRawAuthority());
        return authority.equalsIgnoreCase(name) || authority.equalsIgnoreCase(name + ":" + request.getServerPort());
    }
}
