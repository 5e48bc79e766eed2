package org.trammel.shop.web;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URI;
import java.util.Locale;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatusCode;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.trammel.shop.records.Refusal;

/** Refusals as problem documents (RFC 9457). */
final class Problems {

    private Problems() {}

    /** Whether the caller is a program: it asked below /api, or for JSON and not for a page. */
    static boolean wanted(HttpServletRequest request, String path) {
        String accept = request.getHeader(HttpHeaders.ACCEPT);
        boolean json = accept != null && accept.contains("json") && !accept.contains("text/html");
        return path.startsWith("/api/") || json;
    }

    static ResponseEntity<ProblemDetail> answer(Refusal refusal, HttpStatusCode status, String path) {
        ProblemDetail problem = ProblemDetail.forStatusAndDetail(status, refusal.why());
        problem.setType(URI.create(type(refusal)));
        problem.setTitle(refusal.what());
        problem.setProperty("instead", refusal.instead());
        if (refusal.field() != null) {
            problem.setProperty("field", refusal.field());
        }
        problem.setInstance(instance(path));
        return ResponseEntity.status(status)
                .contentType(MediaType.APPLICATION_PROBLEM_JSON)
                .body(problem);
    }

    /** Tells the cases apart for a program. */
    static String type(Refusal refusal) {
        return "urn:trammel:refusal:" + refusal.kind().name().toLowerCase(Locale.ROOT);
    }

    private static URI instance(String path) {
        try {
            return URI.create(path);
        } catch (IllegalArgumentException unreadable) {
            return URI.create("/");
        }
    }
}
