package org.trammel.shop.web;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Digest of what a request asks for: its fields and files, or its JSON body. Left out is what differs each time the same
 * act is sent (id, times, page token, confirmation), and secrets, which are nobody's content.
 */
final class SentContent {

    private SentContent() {}

    static String digest(HttpServletRequest request, @Nullable JsonNode body) {
        StringBuilder said = new StringBuilder();
        new TreeMap<>(request.getParameterMap()).forEach((name, values) -> {
            if (TypedForm.content(name)) {
                said.append(name).append(Arrays.toString(values)).append('\n');
            }
        });
        if (body instanceof ObjectNode object) {
            object.propertyNames().stream()
                    .sorted()
                    .filter(TypedForm::content)
                    .forEach(name -> said.append(name).append(object.get(name)).append('\n'));
        } else if (body != null) {
            said.append(body);
        }
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256")
                            .digest(said.toString().getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }
}
