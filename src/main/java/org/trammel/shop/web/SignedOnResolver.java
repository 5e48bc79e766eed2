package org.trammel.shop.web;

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

/** Gives a controller whoever is signed on where the request comes from. */
@Component
class SignedOnResolver implements HandlerMethodArgumentResolver {

    @Override
    public boolean supportsParameter(MethodParameter parameter) {
        return parameter.getParameterType() == SignedOn.class;
    }

    @Override
    public @Nullable SignedOn resolveArgument(
            MethodParameter parameter,
            @Nullable ModelAndViewContainer container,
            NativeWebRequest request,
            @Nullable WebDataBinderFactory binders) {
        SignedOn who = current();
        if (who == null && !parameter.isOptional()) {
            throw nobody();
        }
        return who;
    }

    static @Nullable SignedOn current() {
        Authentication authentication = SecurityContextHolder.getContext().getAuthentication();
        return authentication != null && authentication.getPrincipal() instanceof SignedOn who ? who : null;
    }

    static Refusal nobody() {
        return Refusal.person(
                "Nothing was recorded.", "Nobody is signed on here.", "Sign on with your badge and repeat the act.");
    }
}
