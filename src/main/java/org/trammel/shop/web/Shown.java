package org.trammel.shop.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Refusal;

/**
 * A refusal as a page shows it.
 *
 * @param field the field at fault, if one is
 * @param again whether the same act may be sent again with a confirmation
 * @param stale somebody else changed it meanwhile, so that the page says beside each field what is kept by now
 * @param action where it is sent again; of one that came too late the page on which it is seen as it is now
 * @param resend what was typed, to be sent again as it was
 * @param secrets fields that must be typed again because they are never kept
 */
public record Shown(
        String what,
        String why,
        String instead,
        @Nullable String field,
        boolean again,
        boolean stale,
        String action,
        List<Typed> resend,
        List<String> secrets) {

    /** One value of a form as it was typed. */
    public record Typed(String name, String value) {}

    static Shown of(Refusal refusal) {
        return new Shown(
                refusal.what(),
                refusal.why(),
                refusal.instead(),
                refusal.field(),
                false,
                false,
                "",
                List.of(),
                List.of());
    }
}
