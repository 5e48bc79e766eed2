package org.trammel.shop.people;

import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Duration;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseCookie;

/** The cookie that names a device. Scripts cannot read it and other sites cannot send it. */
final class DeviceCookie {

    static final String NAME = "trammel-device";

    /** Browsers keep no cookie longer; a tablet renews it at every sign-on. */
    private static final Duration TABLET_LIFE = Duration.ofDays(400);

    private DeviceCookie() {}

    static Optional<String> token(HttpServletRequest request) {
        Cookie[] cookies = request.getCookies();
        if (cookies == null) {
            return Optional.empty();
        }
        for (Cookie cookie : cookies) {
            if (cookie.getName().equals(NAME) && cookie.getValue().matches("[0-9a-f]{64}")) {
                return Optional.of(cookie.getValue());
            }
        }
        return Optional.empty();
    }

    /** A tablet keeps its name for good; a desk forgets it when the browser closes. */
    static void give(HttpServletRequest request, HttpServletResponse response, String token, boolean tablet) {
        write(request, response, token, tablet ? TABLET_LIFE : null);
    }

    static void take(HttpServletRequest request, HttpServletResponse response) {
        write(request, response, "", Duration.ZERO);
    }

    private static void write(
            HttpServletRequest request, HttpServletResponse response, String value, @Nullable Duration life) {
        ResponseCookie.ResponseCookieBuilder cookie = ResponseCookie.from(NAME, value)
                .httpOnly(true)
                .sameSite("Strict")
                .secure(request.isSecure())
                .path("/");
        if (life != null) {
            cookie.maxAge(life);
        }
        response.addHeader(HttpHeaders.SET_COOKIE, cookie.build().toString());
    }
}
