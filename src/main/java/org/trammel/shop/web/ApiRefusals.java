package org.trammel.shop.web;

import org.springframework.boot.jackson.JacksonComponent;
import org.trammel.shop.records.Refusal;
import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.ValueSerializer;

/** A refusal that is part of an answer is told in the words of a problem document, and of nothing else it is made of. */
@JacksonComponent
class ApiRefusals extends ValueSerializer<Refusal> {

    @Override
    public void serialize(Refusal refusal, JsonGenerator json, SerializationContext context) {
        json.writeStartObject();
        json.writeStringProperty("type", Problems.type(refusal));
        json.writeStringProperty("title", refusal.what());
        json.writeStringProperty("detail", refusal.why());
        json.writeStringProperty("instead", refusal.instead());
        if (refusal.field() != null) {
            json.writeStringProperty("field", refusal.field());
        }
        json.writeEndObject();
    }
}
