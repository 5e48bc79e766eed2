package org.trammel.shop.web;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Clock;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.core.MethodParameter;
import org.springframework.stereotype.Component;
import org.springframework.web.bind.support.WebDataBinderFactory;
import org.springframework.web.context.request.NativeWebRequest;
import org.springframework.web.method.support.HandlerMethodArgumentResolver;
import org.springframework.web.method.support.ModelAndViewContainer;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

/**
 * Gives a controller the {@link Act} of its request: the id and the device's time as the client sent them (form field,
 * JSON property or header), who is signed on, and the server's time.
 */
@Component
class ActResolver implements HandlerMethodArgumentResolver {

    private final Clock clock;

    ActResolver(Clock clock) {
        this.clock = clock;
    }

    @Override
    public boolean supportsParameter(MethodParameter parameter) {
        return parameter.getParameterType() == Act.class;
    }

    @Override
    public Act resolveArgument(
            MethodParameter parameter,
            @Nullable ModelAndViewContainer container,
            NativeWebRequest web,
            @Nullable WebDataBinderFactory binders) {
        String id = sent(web, "actId", "Act-Id");
        if (id == null) {
            throw Refusal.input(
                    "actId",
                    "Nothing was recorded.",
                    "The act has no id, so it could not be told from a second one.",
                    "Send a fresh UUID as actId, or in the header Act-Id, and the same one when you repeat the act.");
        }
        SignedOn who = SignedOnResolver.current();
        if (who == null) {
            throw SignedOnResolver.nobody();
        }
        return new Act(
                uuid(id),
                who.person().id(),
                who.deviceId(),
                clock.instant().truncatedTo(ChronoUnit.MICROS),
                deviceAt(web),
                content(web));
    }

    private static String content(NativeWebRequest web) {
        ReadableTwice body = web.getNativeRequest(ReadableTwice.class);
        HttpServletRequest request = Objects.requireNonNull(web.getNativeRequest(HttpServletRequest.class));
        return SentContent.digest(request, body == null ? null : body.tree());
    }

    private static @Nullable String sent(NativeWebRequest request, String field, String header) {
        String value = request.getParameter(field);
        if (value == null || value.isBlank()) {
            value = request.getHeader(header);
        }
        if (value == null || value.isBlank()) {
            ReadableTwice body = request.getNativeRequest(ReadableTwice.class);
            value = body == null ? null : body.property(field);
        }
        return value == null || value.isBlank() ? null : value.strip();
    }

    private static UUID uuid(String text) {
        try {
            return UUID.fromString(text);
        } catch (IllegalArgumentException unreadable) {
            throw Refusal.input(
                    "actId", "Nothing was recorded.", "The act id is not a UUID.", "Load the page again and repeat.");
        }
    }

    private static @Nullable Instant deviceAt(NativeWebRequest request) {
        String text = sent(request, "deviceAt", "Device-At");
        try {
            return text == null ? null : Instant.parse(text).truncatedTo(ChronoUnit.MICROS);
        } catch (DateTimeParseException unreadable) {
            throw Refusal.input(
                    "deviceAt",
                    "Nothing was recorded.",
                    "The device's time is not written as ISO 8601 in UTC.",
                    "Send it as 2026-03-18T07:30:00Z, or leave it out.");
        }
    }
}
