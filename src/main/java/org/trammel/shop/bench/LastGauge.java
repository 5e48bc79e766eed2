package org.trammel.shop.bench;

import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseCookie;
import org.springframework.stereotype.Component;
import org.trammel.shop.travellers.FrameSheet;

/**
 * The gauge this tablet used last for each kind, so that it stands first the next time. Kept by the tablet: gauges lie on
 * its table.
 */
@Component
class LastGauge {

    private static final Duration KEPT = Duration.ofDays(90);

    @Nullable
    String in(HttpServletRequest request, FrameSheet.@Nullable OperationSheetOfFrame at, long characteristicId) {
        if (at == null || request.getCookies() == null) {
            return null;
        }
        String kind = at.characteristics().stream()
                .filter(c -> c.characteristicId() == characteristicId)
                .map(FrameSheet.CharacteristicLine::gaugeKind)
                .findFirst()
                .orElse("");
        for (Cookie cookie : request.getCookies()) {
            if (cookie.getName().equals(name(kind))) {
                return URLDecoder.decode(cookie.getValue(), StandardCharsets.UTF_8);
            }
        }
        return null;
    }

    void remember(HttpServletResponse response, String kind, String gauge) {
        ResponseCookie cookie = ResponseCookie.from(name(kind), URLEncoder.encode(gauge, StandardCharsets.UTF_8))
                .path("/station")
                .maxAge(KEPT)
                .httpOnly(true)
                .sameSite("Strict")
                .build();
        response.addHeader(HttpHeaders.SET_COOKIE, cookie.toString());
    }

    private static String name(String kind) {
        return "trammel-gauge-" + kind.replaceAll("[^A-Za-z0-9-]", "");
    }
}
