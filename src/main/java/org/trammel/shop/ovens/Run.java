package org.trammel.shop.ovens;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.thermal.Judged;
import org.trammel.calc.thermal.ThermocoupleRole;

/**
 * A load and its run as they are read.
 *
 * @param judged what its newest record says; null without one
 */
public record Run(
        long id,
        String code,
        String oven,
        Programme programme,
        RunState state,
        String hung,
        long openedBy,
        Instant openedAt,
        @Nullable Long startedBy,
        @Nullable Instant startedAt,
        @Nullable Instant stoppedAt,
        @Nullable Instant decidedAt,
        @Nullable Judged judged,
        long version,
        List<Loaded> frames,
        List<Wired> thermocouples,
        List<Door> doors,
        List<Signed> signatures) {

    public Run {
        frames = List.copyOf(frames);
        thermocouples = List.copyOf(thermocouples);
        doors = List.copyOf(doors);
        signatures = List.copyOf(signatures);
    }

    /**
     * A frame, or a part of one, in a load.
     *
     * @param operationId the operation of its traveller that waits for this run; null where none does
     * @param words why it was kept back or taken out
     */
    public record Loaded(
            long travellerId,
            @Nullable Long operationId,
            String serial,
            String part,
            String mark,
            String metal,
            String place,
            @Nullable BigDecimal mass_kg,
            FrameState state,
            String words,
            long loadedBy) {

        /** Stored serial with the part, as it stands in addresses. */
        public String tag() {
            return part.isEmpty() ? serial : serial + "-" + part;
        }
    }

    /** A thermocouple in this run; {@code error_K} is how much too high it was known to read as the run began. */
    public record Wired(String code, ThermocoupleRole role, String logColumn, String place, BigDecimal error_K) {

        public String roleWord() {
            return Fitted.word(role);
        }
    }

    /** A door opened or shut. */
    public record Door(boolean opened, Instant movedAt, String words, long by) {}

    /** A signature; of the load or of the run. */
    public record Signed(boolean ofLoad, RunSigner signer, long personId, Instant at, boolean counts) {}

    /** Frames that are in it, those taken out apart. */
    public List<Loaded> in() {
        return frames.stream()
                .filter(frame -> frame.state() != FrameState.TAKEN_OUT)
                .toList();
    }

    /** Everybody who opened, loaded, signed as heat treater or started it. */
    java.util.Set<Long> tookPart() {
        java.util.Set<Long> people = new java.util.HashSet<>();
        people.add(openedBy);
        frames.forEach(frame -> people.add(frame.loadedBy()));
        signatures.stream()
                .filter(signed -> signed.counts() && signed.signer() == RunSigner.HEAT_TREATER)
                .forEach(signed -> people.add(signed.personId()));
        if (startedBy != null) {
            people.add(startedBy);
        }
        return people;
    }

    /** Those, and everybody who signed it: the independent second, and who released it. */
    java.util.Set<Long> hadAHand() {
        java.util.Set<Long> people = tookPart();
        signatures.stream().filter(Signed::counts).forEach(signed -> people.add(signed.personId()));
        return people;
    }
}
