package org.trammel.shop.welding;

import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;
import java.util.List;

/** Codes that stand in one column, a space between them. */
@Converter
class WordList implements AttributeConverter<List<String>, String> {

    @Override
    public String convertToDatabaseColumn(List<String> words) {
        return words == null ? "" : String.join(" ", words);
    }

    @Override
    public List<String> convertToEntityAttribute(String column) {
        return column == null || column.isBlank() ? List.of() : List.of(column.split(" "));
    }
}
