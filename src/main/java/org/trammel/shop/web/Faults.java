package org.trammel.shop.web;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import java.util.Locale;
import java.util.UUID;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.webmvc.error.ErrorController;
import org.springframework.http.HttpStatus;
import org.springframework.http.HttpStatusCode;
import org.springframework.security.web.WebAttributes;
import org.springframework.security.web.csrf.CsrfException;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.RequestMapping;
import org.trammel.shop.records.Refusal;

/** The last answer: what went wrong before or after a controller, in the same three parts. */
@Controller
class Faults implements ErrorController {

    private static final Logger LOG = LoggerFactory.getLogger(Faults.class);

    @RequestMapping("/error")
    Object answer(HttpServletRequest request) {
        HttpStatusCode status = status(request);
        Object failed = request.getAttribute(RequestDispatcher.ERROR_REQUEST_URI);
        String path = failed == null ? request.getRequestURI() : failed.toString();
        Refusal refusal = words(status, path, request);
        return Problems.wanted(request, path)
                ? Problems.answer(refusal, status, path)
                : RefusalAdvice.page(refusal, status);
    }

    private static HttpStatusCode status(HttpServletRequest request) {
        Object code = request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE);
        return code instanceof Integer number && number >= 400 && number < 600
                ? HttpStatusCode.valueOf(number)
                : HttpStatus.NOT_FOUND;
    }

    /** A program that comes with the device's cookie proves as a page does that it is not another site that asks. */
    private static Refusal withoutToken() {
        return Refusal.stale(
                "Nothing was recorded.",
                "The request carries no page token, or not the one of its cookie XSRF-TOKEN.",
                "Get /api/v1/sign-on, keep the cookie XSRF-TOKEN it gives, and send its value back in the header"
                        + " X-XSRF-TOKEN.");
    }

    /** Whether it is a form without a file. */
    private static boolean typed(HttpServletRequest request) {
        String type = request.getContentType();
        return type != null && type.toLowerCase(Locale.ROOT).startsWith("application/x-www-form-urlencoded");
    }

    private static Refusal words(HttpStatusCode status, String path, HttpServletRequest request) {
        if (status.value() == HttpStatus.NOT_FOUND.value()) {
            return Translated.nowhere(path);
        }
        if (status.value() == HttpStatus.UNAUTHORIZED.value()) {
            return SignedOnResolver.nobody();
        }
        if (status.value() == HttpStatus.FORBIDDEN.value()) {
            if (request.getAttribute(WebAttributes.ACCESS_DENIED_403) instanceof CsrfException) {
                return path.startsWith("/api/")
                        ? withoutToken()
                        : Refusal.stale(
                                "Nothing was recorded.",
                                "The sheet this came from was open too long, or it is none of ours.",
                                "Open the sheet again and repeat.");
            }
            return Refusal.person(
                    "This is not open to you here.",
                    "Your role does not allow it.",
                    "If you need it, ask the QA lead or the owner.");
        }
        if (status.value() == HttpStatus.CONTENT_TOO_LARGE.value()) {
            if (typed(request)) {
                return Refusal.input(
                        "words",
                        "Nothing was recorded.",
                        "What was typed is longer than one sheet takes.",
                        "Open the sheet again and write the few words that matter; send a long text as a file.");
            }
            return Refusal.input(
                    "file",
                    "Nothing was recorded.",
                    "What was sent is larger than is taken here: 20 MB of a picture or a certificate, 200 MB of a logger's record.",
                    "Make the file smaller, open the sheet again and send that one.");
        }
        if (status.is4xxClientError()) {
            return Refusal.state(
                    "Nothing was recorded.",
                    "The request is not one this service understands (" + status.value() + ").",
                    "Open the sheet again and repeat.");
        }
        String incident = UUID.randomUUID().toString().substring(0, 8);
        Object failure = request.getAttribute(RequestDispatcher.ERROR_EXCEPTION);
        LOG.error("Incident {} at {}", incident, path, failure instanceof Throwable thrown ? thrown : null);
        return Translated.incident(incident);
    }
}
