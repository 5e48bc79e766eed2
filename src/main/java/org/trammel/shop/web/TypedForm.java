package org.trammel.shop.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.trammel.shop.records.Refusal;

/** What somebody typed into a form that was refused, so that it is not lost. Secrets are not kept. */
record TypedForm(String action, List<Shown.Typed> values, List<String> secrets) {

    /** Ours, not the person's: made afresh for every form. */
    private static final Set<String> OURS = Set.of("_csrf", "actId", "deviceAt", "confirm");

    static TypedForm of(HttpServletRequest request) {
        List<Shown.Typed> values = new ArrayList<>();
        List<String> secrets = new ArrayList<>();
        parameters(request).forEach((name, all) -> {
            if (OURS.contains(name)) {
                return;
            }
            if (secret(name)) {
                secrets.add(name);
                return;
            }
            for (String value : all) {
                values.add(new Shown.Typed(name, value));
            }
        });
        String query = request.getQueryString();
        return new TypedForm(request.getRequestURI() + (query == null ? "" : "?" + query), values, secrets);
    }

    /** The first value of every field, as field fragments show it. */
    Map<String, String> byName() {
        Map<String, String> map = new LinkedHashMap<>();
        values.forEach(typed -> map.putIfAbsent(typed.name(), typed.value()));
        return map;
    }

    /**
     * @param page the page it was typed on
     */
    Shown shown(Refusal refusal, String page) {
        boolean again = refusal.kind() == Refusal.Kind.ASK;
        boolean stale = refusal.kind() == Refusal.Kind.STALE;
        return new Shown(
                refusal.what(),
                refusal.why(),
                refusal.instead(),
                refusal.field(),
                again,
                stale,
                again ? action : stale ? page : "",
                again ? values : List.of(),
                again ? secrets : List.of());
    }

    /** A form whose file was too large cannot be read any more: then there is nothing to keep. */
    private static Map<String, String[]> parameters(HttpServletRequest request) {
        try {
            return request.getParameterMap();
        } catch (IllegalStateException tooLarge) {
            return Map.of();
        }
    }

    /** Whether a field says what is asked for, and is not ours nor a secret. */
    static boolean content(String name) {
        return !OURS.contains(name) && !secret(name);
    }

    private static boolean secret(String name) {
        String low = name.toLowerCase(Locale.ROOT);
        return low.contains("pin") && !low.contains("spin") || low.contains("password") || low.contains("secret");
    }
}
