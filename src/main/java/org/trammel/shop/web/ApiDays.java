package org.trammel.shop.web;

import java.time.LocalDate;
import org.springframework.boot.jackson.JacksonComponent;
import org.trammel.calc.units.TypedDay;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.ValueDeserializer;

/** Days in the JSON of the API: a text such as 2026-03-18, of a year that a shop can mean. */
@JacksonComponent
class ApiDays {

    static class Reader extends ValueDeserializer<LocalDate> {

        @Override
        public LocalDate deserialize(JsonParser parser, DeserializationContext context) {
            if (!parser.hasToken(JsonToken.VALUE_STRING)) {
                return context.reportInputMismatch(this, "A day is a text such as 2026-03-18");
            }
            TypedDay day = TypedDay.of(parser.getString());
            return day instanceof TypedDay.Read read
                    ? read.day()
                    : context.reportInputMismatch(this, "%s", ((TypedDay.Unreadable) day).reason());
        }
    }
}
