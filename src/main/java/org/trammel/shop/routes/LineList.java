package org.trammel.shop.routes;

import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;
import java.util.List;

/** Short texts in one column, one a line; no text of these holds a line break. */
@Converter
class LineList implements AttributeConverter<List<String>, String> {

    @Override
    public String convertToDatabaseColumn(List<String> lines) {
        return String.join("\n", lines);
    }

    @Override
    public List<String> convertToEntityAttribute(String column) {
        return column.isEmpty() ? List.of() : List.of(column.split("\n"));
    }
}
