package org.trammel.shop.people;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.web.AuthenticationEntryPoint;
import org.springframework.security.web.WebAttributes;
import org.springframework.security.web.access.AccessDeniedHandler;

/** Turns away who may not come in: a browser is sent to the sign-on page, a program gets a problem document. */
final class Porter implements AuthenticationEntryPoint, AccessDeniedHandler {

    private final FirstStart firstStart;

    Porter(FirstStart firstStart) {
        this.firstStart = firstStart;
    }

    @Override
    public void commence(HttpServletRequest request, HttpServletResponse response, AuthenticationException reason)
            throws IOException {
        String path = request.getRequestURI().substring(request.getContextPath().length());
        if (Doors.isApi(path) || wantsJson(request)) {
            response.setStatus(HttpStatus.UNAUTHORIZED.value());
            response.setContentType(MediaType.APPLICATION_PROBLEM_JSON_VALUE);
            response.getOutputStream()
                    .write(("{\"status\":401,\"title\":\"Nothing was done.\",\"detail\":\"Nobody is signed on here.\","
                                    + "\"instead\":\"Sign on first.\"}")
                            .getBytes(StandardCharsets.UTF_8));
            return;
        }
        String door = firstStart.ownerMissing() ? "/first-owner" : "/sign-on" + next(request, path);
        if (request.getHeader("HX-Request") != null) {
            response.setHeader("HX-Redirect", request.getContextPath() + door);
            response.setStatus(HttpStatus.UNAUTHORIZED.value());
            return;
        }
        response.setStatus(HttpStatus.SEE_OTHER.value());
        response.setHeader(HttpHeaders.LOCATION, request.getContextPath() + door);
    }

    @Override
    public void handle(HttpServletRequest request, HttpServletResponse response, AccessDeniedException reason)
            throws IOException {
        request.setAttribute(WebAttributes.ACCESS_DENIED_403, reason);
        response.sendError(HttpStatus.FORBIDDEN.value());
    }

    private static String next(HttpServletRequest request, String path) {
        if (!request.getMethod().equals("GET") || path.equals("/")) {
            return "";
        }
        String wanted = request.getQueryString() == null ? path : path + "?" + request.getQueryString();
        return "?next=" + URLEncoder.encode(wanted, StandardCharsets.UTF_8);
    }

    private static boolean wantsJson(HttpServletRequest request) {
        String accept = request.getHeader(HttpHeaders.ACCEPT);
        return accept != null && accept.contains("json") && !accept.contains("html");
    }
}
