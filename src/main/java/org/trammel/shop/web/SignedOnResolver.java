package org.trammel.shop.web;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.core.MethodParameter;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.stereotype.Component;
import org.springframework.web.bind.support.WebDataBinderFactory;
import org.springframework.web.context.request.NativeWebRequest;
import org.springframework.web.method.support.HandlerMethodArgumentResolver;
import org.springframework.web.method.support.ModelAndViewContainer;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Refusal;

/** Gives a controller who is signed on at the device the request comes from. */
@Component
class SignedOnResolver implements HandlerMethodArgumentResolver {

    static Optional<SignedOn> now() {
        Authentication authentication = SecurityContextHolder.getContext().getAuthentication();
        return authentication != null && authentication.getPrincipal() instanceof SignedOn who
                ? Optional.of(who)
                : Optional.empty();
    }

    @Override
    public boolean supportsParameter(MethodParameter parameter) {
        return parameter.getParameterType() == SignedOn.class;
    }

    @Override
    public @Nullable SignedOn resolveArgument(
            MethodParameter parameter,
            @Nullable ModelAndViewContainer container,
            NativeWebRequest web,
            @Nullable WebDataBinderFactory binders) {
        Optional<SignedOn> who = now();
        if (who.isEmpty() && !parameter.isOptional()) {
            throw Refusal.person("Nothing was done.", "Nobody is signed on here.", "Sign on first.");
        }
        return who.orElse(null);
    }
}
