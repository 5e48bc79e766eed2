package org.trammel.shop.travellers;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Point;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.routes.Rule;
import org.trammel.shop.routes.Signer;

/**
 * A frame, or a part of one, as the screens and the programs read it.
 *
 * @param head whose traveller it is and where it stands
 * @param operations all of them in order, loops included
 * @param at the operation at hand in full; null when all are done
 * @param holds open holds that concern it, of the whole frame included
 * @param inTheWay what keeps the operation at hand from beginning or going on, in words
 */
public record FrameSheet(
        Head head,
        List<OperationLine> operations,
        @Nullable OperationSheetOfFrame at,
        List<HoldLine> holds,
        List<ClockView> clocks,
        List<NoteLine> notes,
        List<Refusal> inTheWay) {

    /** Head of a traveller. */
    public record Head(
            long travellerId,
            String serial,
            String part,
            String mark,
            @Nullable Long parentId,
            @Nullable Long orderId,
            String orderNumber,
            @Nullable Long designRevisionId,
            long routeRevisionId,
            String letter,
            String metal,
            String kind,
            String description,
            TravellerState state,
            @Nullable String stateReason,
            Instant releasedAt,
            @Nullable Instant finishedAt,
            @Nullable Instant shippedAt,
            @Nullable Long currentOperationId,
            @Nullable String currentCode,
            @Nullable String currentStation) {

        static Head of(Traveller t) {
            return new Head(
                    t.id(),
                    t.serial(),
                    t.part(),
                    t.mark(),
                    t.parentId(),
                    t.orderId(),
                    t.orderNumber(),
                    t.designRevisionId(),
                    t.routeRevisionId(),
                    t.letter(),
                    t.metal(),
                    t.kind(),
                    t.description(),
                    t.state(),
                    t.stateReason(),
                    t.releasedAt(),
                    t.finishedAt(),
                    t.shippedAt(),
                    t.currentOperationId(),
                    t.currentCode(),
                    t.currentStation());
        }

        /** Stored serial with the part, as it stands in addresses: AB270423 or AB270423-FT. */
        public String tag() {
            return part.isEmpty() ? serial : serial + "-" + part;
        }
    }

    /** One operation in the strip of all. */
    public record OperationLine(
            long operationId,
            String code,
            int loop,
            String name,
            String station,
            Point point,
            OperationState state,
            @Nullable String stateReason,
            @Nullable Instant startedAt,
            @Nullable Instant finishedAt) {

        static OperationLine of(Operation o) {
            return new OperationLine(
                    o.id(),
                    o.code(),
                    o.loop(),
                    o.name(),
                    o.station(),
                    o.point(),
                    o.state(),
                    o.stateReason(),
                    o.startedAt(),
                    o.finishedAt());
        }
    }

    /** The operation at hand. */
    public record OperationSheetOfFrame(
            OperationLine line,
            String caution,
            List<Signer> signers,
            @Nullable String qualification,
            boolean together,
            boolean outside,
            boolean irreversible,
            @Nullable Instant atPointSince,
            List<StepLine> steps,
            List<CharacteristicLine> characteristics,
            List<SignatureLine> signatures) {

        /** The window that has closed before the work of this operation began, if one has. */
        public Optional<ClockView> closedWindow(List<ClockView> clocks, Instant at) {
            boolean matters = line.state() == OperationState.WAITING
                    || line.state() == OperationState.IN_WORK && !WindowWork.begunOn(steps);
            return clocks.stream()
                    .filter(c -> matters && c.closedAt(at) && c.gates().contains(line.code()))
                    .findFirst();
        }
    }

    /** One step. */
    public record StepLine(
            long stepId,
            int number,
            String text,
            String instruction,
            boolean photo,
            boolean irreversible,
            @Nullable String lotKind,
            @Nullable String startsClock,
            @Nullable Proof proof,
            boolean secondPerson,
            @Nullable String qualification,
            boolean ticked,
            @Nullable Long tickedBy,
            @Nullable String tickedByName,
            @Nullable Instant tickedAt) {}

    /** One characteristic; on a blind one the nominal and limits are kept back until it is read. */
    public record CharacteristicLine(
            long characteristicId,
            String code,
            String name,
            String unit,
            int decimals,
            @Nullable BigDecimal nominal,
            @Nullable BigDecimal lowerLimit,
            @Nullable BigDecimal upperLimit,
            boolean blind,
            String gaugeKind,
            List<String> points,
            Reduction reduction,
            Rule rule,
            List<Signer> signers,
            boolean sided,
            boolean secondPerson,
            boolean deciding,
            @Nullable String coldSetClock,
            CharacteristicState state,
            @Nullable Long readingId,
            @Nullable String nonconformance) {

        static CharacteristicLine of(Characteristic c) {
            boolean blind = c.readBack()
                    && (c.state() == CharacteristicState.OPEN || c.state() == CharacteristicState.FIRST_READ);
            return new CharacteristicLine(
                    c.id(),
                    c.code(),
                    c.name(),
                    c.unit(),
                    c.decimals(),
                    blind ? null : c.nominal(),
                    blind ? null : c.lowerLimit(),
                    blind ? null : c.upperLimit(),
                    blind,
                    c.gaugeKind(),
                    c.points(),
                    c.reduction(),
                    c.rule(),
                    c.signers(),
                    c.sided(),
                    c.secondPerson(),
                    c.deciding(),
                    c.coldSetClock(),
                    c.state(),
                    c.readingId(),
                    c.nonconformance());
        }
    }

    /** A signature of a point. */
    public record SignatureLine(
            long signedBy, String name, Signer signer, String meaning, Instant at, boolean counts) {}

    /** A hold. */
    public record HoldLine(
            long holdId,
            String serial,
            @Nullable Long travellerId,
            @Nullable Long operationId,
            HoldScope scope,
            HoldReason reason,
            String words,
            String source,
            long placedBy,
            String placedByName,
            Instant placedAt,
            @Nullable Long liftedBy,
            @Nullable String liftedByName,
            @Nullable Instant liftedAt,
            @Nullable String liftWords) {}

    /** A note. */
    public record NoteLine(String words, String name, Instant at) {}
}
