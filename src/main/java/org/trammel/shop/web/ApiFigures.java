package org.trammel.shop.web;

import java.math.BigDecimal;
import org.springframework.boot.jackson.JacksonComponent;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.databind.DeserializationContext;
import tools.jackson.databind.ValueDeserializer;

/**
 * Figures in the JSON of the API: numbers a workshop can have. One with a giant exponent is a few signs long and fills
 * the memory once its digits are written out.
 */
@JacksonComponent
class ApiFigures {

    private static final int DIGITS = 20;

    static class Reader extends ValueDeserializer<BigDecimal> {

        @Override
        public BigDecimal deserialize(JsonParser parser, DeserializationContext context) {
            if (!parser.hasToken(JsonToken.VALUE_NUMBER_INT) && !parser.hasToken(JsonToken.VALUE_NUMBER_FLOAT)) {
                return context.reportInputMismatch(this, "A figure is a JSON number with a decimal point");
            }
            BigDecimal value = parser.getDecimalValue();
            boolean large = (long) value.precision() - value.scale() > DIGITS;
            if (large || value.scale() > DIGITS || value.precision() > 2 * DIGITS) {
                return context.reportInputMismatch(
                        this, "A figure has at most %d digits before and after the decimal point", DIGITS);
            }
            return value;
        }
    }
}
