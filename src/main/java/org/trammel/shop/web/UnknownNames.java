package org.trammel.shop.web;

import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.jackson.autoconfigure.JsonMapperBuilderCustomizer;
import org.springframework.stereotype.Component;
import tools.jackson.core.JsonParser;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.ValueDeserializer;
import tools.jackson.databind.deser.DeserializationProblemHandler;
import tools.jackson.databind.exc.UnrecognizedPropertyException;
import tools.jackson.databind.json.JsonMapper;

/** Refuses what {@link OnlyTheseNames} does not know; everywhere else an unknown property is passed over. */
@Component
class UnknownNames implements JsonMapperBuilderCustomizer {

    @Override
    public void customize(JsonMapper.Builder builder) {
        builder.addHandler(new Refused());
    }

    private static final class Refused extends DeserializationProblemHandler {

        @Override
        public boolean handleUnknownProperty(
                DeserializationContext context,
                JsonParser parser,
                @Nullable ValueDeserializer<?> deserializer,
                Object valueOrClass,
                String name) {
            Class<?> type = valueOrClass instanceof Class<?> itself ? itself : valueOrClass.getClass();
            if (!type.isAnnotationPresent(OnlyTheseNames.class)) {
                return false;
            }
            Collection<Object> known =
                    deserializer == null ? List.of() : List.copyOf(deserializer.getKnownPropertyNames());
            throw UnrecognizedPropertyException.from(parser, type, name, known);
        }
    }
}
