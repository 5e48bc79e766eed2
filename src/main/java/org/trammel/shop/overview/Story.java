package org.trammel.shop.overview;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.designs.WeighedFrame;
import org.trammel.shop.materials.MadeOf;
import org.trammel.shop.orders.OrderSheet;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.TravellerState;
import org.trammel.shop.web.RouteView;
import org.trammel.shop.web.ScaleView;

/**
 * A frame's whole story, as it is shown to one reader.
 *
 * @param ways a strip for each traveller in force
 * @param holds open holds
 * @param weighed the newest weighing that stands, of each traveller, beside what its drawing says
 * @param clocks of each traveller in force that run, or ran out on what has not gone on
 * @param heats what each traveller saw of ovens; none for one that was in no oven and of a metal that is not aged
 * @param general what was recorded of the frame as a whole
 * @param parts what was recorded, by traveller and operation
 * @param entries what was recorded, in the order it happened
 * @param unconfirmed work let be done with a confirmation that had run out
 */
record Story(
        String serial,
        FrameSheet.Head head,
        @Nullable OrderSheet order,
        List<WayOf> ways,
        List<HeldBy> holds,
        List<Found> nonconformances,
        List<Weighed> weighed,
        List<ClockOf> clocks,
        List<HeatOf> heats,
        List<Entry> general,
        List<PartOf> parts,
        List<Entry> entries,
        List<MadeOf> madeOf,
        List<Unconfirmed> unconfirmed) {

    /** Ids of the scrapped parts of a frame in the shop that no other part has taken the place of yet. */
    List<Long> toMakeAnew() {
        return parts.stream()
                .map(PartOf::head)
                .filter(head -> !head.part().isEmpty() && head.state() == TravellerState.SCRAPPED)
                .filter(head -> parts.stream()
                        .map(PartOf::head)
                        .anyMatch(whole -> Objects.equals(head.parentId(), whole.travellerId())
                                && whole.state().open()))
                .filter(head -> parts.stream()
                        .map(PartOf::head)
                        .noneMatch(
                                other -> other.part().equals(head.part()) && other.travellerId() > head.travellerId()))
                .map(FrameSheet.Head::travellerId)
                .toList();
    }

    /** What was left as it is, decided. */
    public List<Found> concessions() {
        return nonconformances.stream().filter(Found::concession).toList();
    }

    /**
     * A nonconformance.
     *
     * @param decision word of the decision; null before there is one
     * @param kind of the decision's mark
     * @param agreed who agreed, and as what
     * @param customer what the customer agreed to; null for a reader who sees no personal data
     */
    public record Found(
            long id,
            String number,
            String operation,
            String words,
            String state,
            @Nullable String decision,
            String kind,
            @Nullable String decisionWords,
            @Nullable String limits,
            @Nullable LocalDate expiresOn,
            List<String> agreed,
            @Nullable String customer,
            boolean concession) {}

    /** A weighing of the uncoated frame, or of its front triangle, beside its drawing. */
    public record Weighed(String letter, Instant at, WeighedFrame compared) {}

    /** Work let be done by somebody whose six-month confirmation had run out. */
    public record Unconfirmed(
            String where,
            String who,
            String qualification,
            LocalDate lapsedOn,
            String givenBy,
            Instant at,
            String reason) {}

    /**
     * A clock.
     *
     * @param kind of the mark beside it
     */
    public record ClockOf(String part, String name, Instant endsAt, boolean waits, boolean closed, String kind) {}

    /**
     * What a traveller saw of ovens.
     *
     * @param words its heat since its age against the limit; null for a metal that is not aged
     * @param visits what adds to it
     */
    public record HeatOf(
            String part, List<OvenRunOf> runs, @Nullable String words, List<VisitOf> visits) {}

    /** A run a traveller was in. */
    public record OvenRunOf(
            String code, String programme, @Nullable Instant startedAt, String state, String verdict, String came) {}

    /** A visit to an oven after the age. */
    public record VisitOf(String run, String programme, Instant at, double hours, boolean byRecord, boolean ahead) {}

    /** The strip of one traveller. */
    public record WayOf(String part, RouteView route) {}

    /** An open hold. */
    public record HeldBy(String reason, String words, String source, String who, Instant since, String lifters) {}

    /** One traveller with its operations. */
    public record PartOf(FrameSheet.Head head, List<OperationOf> operations) {}

    /** One operation with what was recorded at it. */
    public record OperationOf(
            FrameSheet.OperationLine line,
            String called,
            String station,
            String state,
            String kind,
            List<ReadingOf> readings,
            List<Entry> entries) {

        /** Whether there is anything to tell. */
        public boolean told() {
            return !readings.isEmpty() || !entries.isEmpty();
        }
    }

    /**
     * A reading.
     *
     * @param replaced true if a correction took its place
     * @param stands the verdict on its characteristic stands on it, so that it may be corrected
     */
    public record ReadingOf(
            long readingId,
            long characteristicId,
            String code,
            String name,
            String value,
            String raw,
            @Nullable BigDecimal u,
            String unit,
            String gauge,
            String rule,
            String verdict,
            String kind,
            @Nullable ScaleView scale,
            String who,
            Instant at,
            boolean replaced,
            boolean stands,
            @Nullable String reason) {}

    /**
     * Something that happened.
     *
     * @param where operation it happened at, with the part; empty if at none
     * @param kind of the mark beside it; empty for none
     * @param struck true if it was taken back
     * @param more words somebody wrote with it
     * @param photo hash of a photograph
     */
    public record Entry(
            Instant at,
            String where,
            String kind,
            String what,
            String who,
            boolean struck,
            @Nullable String more,
            @Nullable String photo) {}
}
