package org.trammel.shop.handwork;

import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.dew.DewMargins;
import org.trammel.shop.dew.DewPurpose;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/** Reads what stands of the handwork at an operation. */
@Component
@Transactional(readOnly = true)
class HandRecords {

    private final ToolUseRepository uses;
    private final DewMargins margins;
    private final SerialReadRepository reads;
    private final MisreadRepository misreads;
    private final WaterBreakRepository waters;
    private final Travellers travellers;

    HandRecords(
            ToolUseRepository uses,
            DewMargins margins,
            SerialReadRepository reads,
            MisreadRepository misreads,
            WaterBreakRepository waters,
            Travellers travellers) {
        this.misreads = misreads;
        this.waters = waters;
        this.uses = uses;
        this.margins = margins;
        this.reads = reads;
        this.travellers = travellers;
    }

    HandRecord of(long operationId) {
        return of(operationId, asked(operationId));
    }

    HandRecord of(long operationId, Set<Proof> asked) {
        return new HandRecord(
                operationId,
                asked,
                uses.findByOperationIdOrderById(operationId).stream()
                        .map(ToolUseRow::used)
                        .toList(),
                margins.newest(operationId, DewPurpose.ARC).orElse(null),
                last(reads.findByOperationIdOrderById(operationId).stream().map(SerialReadRow::read)),
                misreads.findByOperationIdOrderById(operationId).stream()
                        .map(MisreadRow::misread)
                        .toList(),
                waters.findByOperationIdOrderById(operationId).stream()
                        .map(WaterBreakRow::water)
                        .toList());
    }

    /** Whether the serial was read back as it was struck by that tick, the newest. */
    boolean readSince(long operationId, long strikeTickId) {
        return reads.existsByOperationIdAndStrikeTickId(operationId, strikeTickId);
    }

    Set<Proof> asked(long operationId) {
        return travellers.operation(operationId).steps().stream()
                .map(FrameSheet.StepLine::proof)
                .filter(Objects::nonNull)
                .filter(proof -> proof.sheet() == Proof.Sheet.HANDWORK)
                .collect(Collectors.toSet());
    }

    /** Whoever worked with tools or measured metal and air; reading back is no work. */
    Set<Long> workedAt(long operationId) {
        return Stream.of(uses.peopleAt(operationId), margins.peopleAt(operationId))
                .flatMap(Set::stream)
                .collect(Collectors.toSet());
    }

    Set<Long> peopleAt(long operationId) {
        return Stream.of(
                        uses.peopleAt(operationId),
                        margins.peopleAt(operationId),
                        reads.peopleAt(operationId),
                        misreads.peopleAt(operationId),
                        waters.peopleAt(operationId))
                .flatMap(Set::stream)
                .collect(Collectors.toSet());
    }

    private static <T> @Nullable T last(Stream<T> rows) {
        return rows.reduce((before, after) -> after).orElse(null);
    }
}
