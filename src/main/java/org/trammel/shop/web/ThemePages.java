package org.trammel.shop.web;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URI;
import java.time.Duration;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseCookie;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The paper and the night sheet: a choice of the device, remembered by a cookie and read on the server. */
@Controller
class ThemePages {

    static final String COOKIE = "trammel-theme";
    static final String PAPER = "paper";
    static final String NIGHT = "night";

    @PostMapping("/theme")
    ResponseEntity<Void> choose(@RequestParam String theme, HttpServletRequest request) {
        ResponseCookie cookie = ResponseCookie.from(COOKIE, theme.equals(NIGHT) ? NIGHT : PAPER)
                .path("/")
                .maxAge(Duration.ofDays(365))
                .sameSite("Strict")
                .build();
        URI back = URI.create(CameFrom.path(request).orElse("/"));
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .header(HttpHeaders.SET_COOKIE, cookie.toString())
                .location(back)
                .build();
    }
}
