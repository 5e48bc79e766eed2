package org.trammel.shop.routes;

import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;

/**
 * A route to be laid out.
 *
 * @param code capitals, digits and hyphens, such as HT-6061
 * @param copyOf code of the route it begins as a copy of, null or empty for an empty one
 */
public record NewRoute(
        String code,
        String name,
        String metal,
        String kind,
        @Nullable String copyOf) {

    private static final String DEED = "The route was not laid out.";
    private static final Pattern CODE = Pattern.compile("[A-Z0-9][A-Z0-9-]{1,19}");
    private static final Pattern KIND = Pattern.compile("[A-Z][A-Z_]{1,29}");

    String checkedCode() {
        String read = TypedText.line("code", "Code", DEED, code, 20);
        if (!CODE.matcher(read).matches()) {
            throw Refusal.input(
                    "code",
                    DEED,
                    "A route's code is 2 to 20 capitals, digits and hyphens.",
                    "Enter a code such as HT-6061.");
        }
        return read;
    }

    NewRoute checked() {
        if (metal == null || !Kinds.METALS.contains(metal)) {
            throw Refusal.input(
                    "metal",
                    DEED,
                    "A route is for one metal of " + String.join(", ", Kinds.METALS) + ".",
                    "Choose one of them.");
        }
        if (kind == null || !KIND.matcher(kind).matches()) {
            throw Refusal.input("kind", DEED, "The kind of frame is missing.", "Choose one, such as HARDTAIL.");
        }
        return new NewRoute(
                checkedCode(),
                TypedText.line("name", "Name", DEED, name, 120),
                metal,
                kind,
                copyOf == null || copyOf.isBlank() ? null : copyOf.strip());
    }
}
