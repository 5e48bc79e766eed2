package org.trammel.shop.travellers;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.routes.Signer;

/**
 * Everything a frame's travellers keep, whole and parts, withdrawn revisions included. People are named by id: who may
 * read names is for the reader to ask.
 *
 * @param travellers oldest first; withdrawn ones too
 */
public record FrameStory(
        String serial,
        List<Of> travellers,
        List<FrameSheet.HoldLine> holds,
        List<Agreed> agreed,
        List<Freed> freed,
        List<Noted> notes,
        List<Pictured> photos,
        List<Sent> sent,
        List<Carried> carried,
        List<Unconfirmed> unconfirmed) {

    /** One traveller of the frame. */
    public record Of(FrameSheet.Head head, List<ClockView> clocks, List<At> operations) {}

    /** One operation with all that was recorded at it. */
    public record At(
            FrameSheet.OperationLine line,
            List<Signer> signers,
            String caution,
            List<FrameSheet.StepLine> steps,
            List<FrameSheet.CharacteristicLine> characteristics,
            List<Ticked> ticks,
            List<Signed> signatures) {}

    /**
     * A tick, or the record that corrected one.
     *
     * @param step text of the step
     * @param undone true if a later record took it back
     */
    public record Ticked(
            long stepId,
            String step,
            boolean untick,
            boolean undone,
            long personId,
            Instant at,
            @Nullable String lot,
            @Nullable String reason) {}

    /**
     * A signature.
     *
     * @param counts false once the operation was opened again after it
     */
    public record Signed(long personId, Signer signer, String meaning, Instant at, boolean counts) {}

    /** One of those who lift a hold together agreed, before the last of them lifted it. */
    public record Agreed(long holdId, long personId, Instant at, String words) {}

    /** An operation that went on although a hold stayed. */
    public record Freed(long holdId, long operationId, String operation, long personId, Instant at, String reason) {}

    /** A note. */
    public record Noted(long travellerId, @Nullable Long operationId, String words, long personId, Instant at) {}

    /** A photograph, found by its hash. */
    public record Pictured(long travellerId, long operationId, String sha256, long personId, Instant at) {}

    /** A sending out, and its coming back. */
    public record Sent(
            long operationId,
            String recipient,
            long sentBy,
            Instant sentAt,
            @Nullable Long backBy,
            @Nullable Instant backAt,
            @Nullable String certificate) {}

    /**
     * What a newer revision said of a finished operation.
     *
     * @param newOperationId null where the operation is no longer part of the route
     */
    public record Carried(
            long oldOperationId,
            @Nullable Long newOperationId,
            Carry verdict,
            String reason,
            long personId,
            Instant at,
            @Nullable Long ownerId,
            @Nullable String customerAgreement,
            @Nullable String limits,
            @Nullable LocalDate expiresOn) {}

    /**
     * Work that the QA lead let a welder do although the six-month confirmation had run out.
     *
     * @param lapsedOn last day of the confirmation
     */
    public record Unconfirmed(
            long operationId,
            String operation,
            long personId,
            String qualification,
            LocalDate lapsedOn,
            long givenBy,
            Instant at,
            String reason) {}
}
