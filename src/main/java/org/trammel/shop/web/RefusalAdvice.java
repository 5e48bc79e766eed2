package org.trammel.shop.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpStatus;
import org.springframework.http.HttpStatusCode;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.servlet.FlashMap;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.support.RequestContextUtils;
import org.springframework.web.servlet.view.RedirectView;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Refusal;

/**
 * Turns every refusal, and whatever else goes wrong, into an answer of three parts.
 *
 * <p>A program gets a problem document. A form goes back to the page it came from, which shows the refusal and what was
 * typed. A page that cannot be opened says why in its place.
 */
@ControllerAdvice
@Order(Ordered.LOWEST_PRECEDENCE - 100)
class RefusalAdvice {

    private static final Logger LOG = LoggerFactory.getLogger(RefusalAdvice.class);

    private final Translated translated;

    RefusalAdvice(Translated translated) {
        this.translated = translated;
    }

    @ExceptionHandler(Refusal.class)
    Object refused(Refusal refusal, HttpServletRequest request) {
        return answer(refusal, HttpStatusCode.valueOf(refusal.kind().status()), request);
    }

    @ExceptionHandler(Exception.class)
    Object failed(Exception failure, HttpServletRequest request, HttpServletResponse response) throws Exception {
        if (failure instanceof AccessDeniedException || failure instanceof AuthenticationException) {
            throw failure;
        }
        Optional<Translated.Answer> known = translated.of(failure, request);
        if (known.isPresent()) {
            known.get().headers().forEach(response::setHeader);
            return answer(known.get().refusal(), known.get().status(), request);
        }
        String incident = UUID.randomUUID().toString().substring(0, 8);
        LOG.error("Incident {} at {} {}", incident, request.getMethod(), request.getRequestURI(), failure);
        return answer(Translated.incident(incident), HttpStatus.INTERNAL_SERVER_ERROR, request);
    }

    private static Object answer(Refusal refusal, HttpStatusCode status, HttpServletRequest request) {
        if (Problems.wanted(request, request.getRequestURI())) {
            return Problems.answer(refusal, status, request.getRequestURI());
        }
        boolean form = request.getMethod().equals("POST");
        Optional<String> from = CameFrom.path(request);
        if (form && from.isPresent()) {
            return backTo(from.get(), refusal, request);
        }
        return page(refusal, status);
    }

    private static RedirectView backTo(String path, Refusal refusal, HttpServletRequest request) {
        TypedForm typed = TypedForm.of(request);
        FlashMap flash = RequestContextUtils.getOutputFlashMap(request);
        flash.put("refusal", typed.shown(refusal, path));
        flash.put("typed", typed.byName());
        RedirectView back = new RedirectView(path, false, false, false);
        back.setStatusCode(HttpStatus.SEE_OTHER);
        return back;
    }

    static ModelAndView page(Refusal refusal, HttpStatusCode status) {
        Authentication on = SecurityContextHolder.getContext().getAuthentication();
        boolean tablet = on != null && on.getPrincipal() instanceof SignedOn who && who.tablet();
        ModelAndView page = new ModelAndView(
                "refusal", Map.of("refusal", Shown.of(refusal), "answers", status.value(), "tablet", tablet));
        page.setStatus(status);
        return page;
    }
}
