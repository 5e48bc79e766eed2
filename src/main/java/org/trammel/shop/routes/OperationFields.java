package org.trammel.shop.routes;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** What an operation is, without its steps and characteristics. See {@link OperationSheet} for each. */
record OperationFields(
        String code,
        String name,
        String station,
        Point point,
        List<Signer> signers,
        @Nullable String qualification,
        boolean together,
        boolean outside,
        boolean irreversible,
        boolean joins,
        @Nullable Integer repeatLimit,
        @Nullable String caution) {

    OperationFields {
        point = Objects.requireNonNullElse(point, Point.NONE);
        signers = signers == null ? List.of() : List.copyOf(signers);
    }

    static OperationFields of(OperationSheet sheet) {
        return new OperationFields(
                sheet.code(),
                sheet.name(),
                sheet.station(),
                sheet.point(),
                sheet.signers(),
                sheet.qualification(),
                sheet.together(),
                sheet.outside(),
                sheet.irreversible(),
                sheet.joins(),
                sheet.repeatLimit(),
                sheet.caution());
    }

    /** The same, read and bounded. */
    OperationFields checked() {
        if (signers.stream().distinct().count() < signers.size()) {
            throw Said.refused("signers", "A signer is named twice.", "Name each signer once.");
        }
        return new OperationFields(
                Said.operation(code),
                Said.line("name", "Name", name, 120),
                Said.orEmpty("station", "Station", station, 10),
                point,
                signers,
                Said.wordOrNone("qualification", "The qualification", qualification),
                together,
                outside,
                irreversible,
                joins,
                repeatLimit == null ? null : Said.within("repeatLimit", "The repeat limit", repeatLimit, 1, 99),
                Said.orEmpty("caution", "Caution", caution, 160));
    }

    OperationFields withoutGate() {
        return new OperationFields(
                code,
                name,
                station,
                Point.NONE,
                List.of(),
                qualification,
                together,
                outside,
                irreversible,
                false,
                repeatLimit,
                caution);
    }

    OperationFields named(String otherCode, String otherName) {
        return new OperationFields(
                otherCode,
                otherName,
                station,
                point,
                signers,
                qualification,
                together,
                outside,
                irreversible,
                joins,
                repeatLimit,
                caution);
    }

    OperationSheet with(List<StepSheet> steps, List<CharacteristicSheet> characteristics) {
        return new OperationSheet(
                code,
                name,
                station == null ? "" : station,
                point,
                signers,
                qualification,
                together,
                outside,
                irreversible,
                joins,
                repeatLimit,
                caution == null ? "" : caution,
                steps,
                characteristics);
    }
}
