package org.trammel.shop.records;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;

/** What a sealed payload says that columns of its record say as well. The events are passed over, for speed. */
record SealedPayload(UUID act, Instant at, String kind, String subject, int place, List<String> chains) {

    private static final JsonFactory JSON = new JsonFactory();

    /** Reads a payload; null if it is not one, which a record with a fitting seal never has. */
    static @Nullable SealedPayload of(String payload) {
        UUID act = null;
        Instant at = null;
        String kind = null;
        String subject = null;
        int place = -1;
        List<String> chains = new ArrayList<>(2);
        try (JsonParser parser = JSON.createParser(ObjectReadContext.empty(), payload)) {
            parser.nextToken();
            while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
                String name = parser.currentName();
                parser.nextToken();
                switch (name) {
                    case "act" -> act = UUID.fromString(parser.getString());
                    case "at" -> at = Instant.parse(parser.getString());
                    case "kind" -> kind = parser.getString();
                    case "subject" -> subject = parser.getString();
                    case "place" -> place = parser.getIntValue();
                    case "chains" -> {
                        while (parser.nextToken() != JsonToken.END_ARRAY) {
                            chains.add(parser.getString());
                        }
                    }
                    default -> parser.skipChildren();
                }
            }
        } catch (JacksonException | IllegalArgumentException | DateTimeException unreadable) {
            return null;
        }
        return act == null || at == null || kind == null || subject == null
                ? null
                : new SealedPayload(act, at, kind, subject, place, chains);
    }
}
