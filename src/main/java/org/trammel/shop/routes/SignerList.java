package org.trammel.shop.routes;

import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Signers in one column, in the order they sign. */
@Converter
class SignerList implements AttributeConverter<List<Signer>, String> {

    @Override
    public String convertToDatabaseColumn(List<Signer> signers) {
        return signers.stream().map(Signer::name).collect(Collectors.joining(","));
    }

    @Override
    public List<Signer> convertToEntityAttribute(String column) {
        return column.isEmpty()
                ? List.of()
                : Stream.of(column.split(",")).map(Signer::valueOf).toList();
    }
}
