package org.trammel.shop.assembly;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.designs.Designs;
import org.trammel.shop.gauges.Gauge;
import org.trammel.shop.gauges.GaugeRange;
import org.trammel.shop.gauges.Gauges;
import org.trammel.shop.orders.OwnPartsHeld;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Files;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.StoredFile;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.HasCome;
import org.trammel.shop.travellers.Travellers;

/** Custody of customers' own parts in the shop: what each was like when it came, and whether it is what the frame was drawn for. */
@Service
public class OwnPartChecks {

    private static final String DEED = "The part was not checked in.";
    private static final int DECIMALS = 3;
    private static final BigDecimal GREATEST_mm = BigDecimal.valueOf(2000);

    /** What reads a length of a fork or shock, the coarsest last. */
    private static final List<String> LENGTH = List.of("CALLIPER", "LONG-CALLIPER", "SCALE-RULE", "TAPE");

    private final OwnPartCheckRepository rows;
    private final OwnPartsHeld held;
    private final Travellers travellers;
    private final Designs designs;
    private final Files files;
    private final Gauges gauges;
    private final Settings settings;
    private final HasCome hasCome;
    private final Crew crew;
    private final ActLog log;

    OwnPartChecks(
            OwnPartCheckRepository rows,
            OwnPartsHeld held,
            Travellers travellers,
            Designs designs,
            Files files,
            Gauges gauges,
            Settings settings,
            HasCome hasCome,
            Crew crew,
            ActLog log) {
        this.rows = rows;
        this.held = held;
        this.travellers = travellers;
        this.designs = designs;
        this.files = files;
        this.gauges = gauges;
        this.settings = settings;
        this.hasCome = hasCome;
        this.crew = crew;
        this.log = log;
    }

    /**
     * A part of the order with the newest check of it.
     *
     * @param drawn_mm what the drawing in force says of the figure it was measured against, which may not be what it was
     *     measured for; null where it says nothing
     */
    public record Line(
            OwnPartsHeld.Held part,
            @Nullable OwnPartCheck check,
            @Nullable BigDecimal drawn_mm) {

        /** Whether it may be fitted: with us, looked at, and what the frame is drawn for. */
        public boolean fits() {
            return part.withUs() && check != null && conforming();
        }

        /** Whether what was measured is what the drawing in force asks for. */
        public boolean conforming() {
            return check != null && (check.figure() == null || drawn_mm != null && check.conformsTo(drawn_mm));
        }
    }

    /** The own parts of the order of a frame. */
    @Transactional(readOnly = true)
    public List<Line> of(FrameSheet.Head head) {
        if (head.orderId() == null) {
            return List.of();
        }
        List<OwnPartsHeld.Held> parts = held.ofOrder(head.orderId());
        if (parts.isEmpty()) {
            return List.of();
        }
        Map<Long, OwnPartCheck> newest = new HashMap<>();
        rows.findByOrderIdOrderById(head.orderId())
                .forEach(row -> newest.put(row.check().ownPartId(), row.check()));
        return parts.stream()
                .map(part -> line(head, part, newest.get(part.id())))
                .toList();
    }

    private Line line(FrameSheet.Head head, OwnPartsHeld.Held part, @Nullable OwnPartCheck check) {
        String drawn = check == null || check.figure() == null
                ? null
                : figureOf(travellers.inForce(head.serial(), head.part()), check.figure());
        return new Line(part, check, drawn == null ? null : new BigDecimal(drawn));
    }

    /** The first own part that may not be fitted; one that was given back or replaced is neither fitted nor awaited. */
    Optional<Refusal> outstanding(FrameSheet.Head head, String cannot) {
        return of(head).stream()
                .filter(line -> !line.fits() && !line.part().over())
                .findFirst()
                .map(line -> Refusal.state(
                        cannot,
                        "The customer's own " + line.part().what() + " "
                                + (!line.part().withUs()
                                        ? "is " + line.part().state() + "."
                                        : line.check() == null
                                                ? "is with us and has no record of how it came."
                                                : "measures " + NewFastener.plain(measured(line.check()))
                                                        + " mm; the frame is drawn for "
                                                        + (line.drawn_mm() == null
                                                                ? "no such part now."
                                                                : NewFastener.plain(line.drawn_mm()) + " ± "
                                                                        + NewFastener.plain(within(line.check()))
                                                                        + " mm.")),
                        "Measure and check it in on the sheet of own parts, or agree with the customer on another."));
    }

    private static BigDecimal measured(OwnPartCheck check) {
        return check.measured_mm() == null ? BigDecimal.ZERO : check.measured_mm();
    }

    private static BigDecimal within(OwnPartCheck check) {
        return check.within_mm() == null ? BigDecimal.ZERO : check.within_mm();
    }

    /**
     * A part as it came.
     *
     * @param makerSerial number on it; "none" where it has none
     * @param photo its picture; null for none
     * @param figure of the design it is measured against; null for none
     * @param gauge label of what it was measured with; asked where there is a figure
     */
    public record Came(
            long ownPartId,
            @Nullable String condition,
            @Nullable String makerSerial,
            @Nullable Picture photo,
            OwnPartCheck.@Nullable Figure figure,
            @Nullable BigDecimal measured_mm,
            @Nullable String gauge) {}

    /** A picture as it was sent. */
    public record Picture(byte[] content, String mediaType, String name) {}

    /** Checks a part in; one that is not what the frame was drawn for is kept so, and is not fitted. */
    @Transactional
    public OwnPartCheck checkIn(Act act, long travellerId, Came came) {
        String serial = travellers.head(travellerId).serial();
        String piece = travellers.head(travellerId).part();
        boolean opened = hasCome.opens(
                act, "check-in-own-part", "own-part:" + came.ownPartId(), List.of(), Chains.bearing(serial));
        // A sheet opened before a new drawing came names the traveller of the old one.
        FrameSheet.Head head = travellers.inForce(serial, piece);
        if (!opened) {
            return of(head).stream()
                    .filter(line -> line.part().id() == came.ownPartId())
                    .map(Line::check)
                    .findFirst()
                    .orElseThrow();
        }
        if (!crew.byId(act.by()).mayWork()) {
            throw Refusal.person(DEED, "A reader changes nothing.", "Somebody who works here does it.");
        }
        OwnPartsHeld.Held part = of(head).stream()
                .map(Line::part)
                .filter(one -> one.id() == came.ownPartId())
                .findFirst()
                .orElseThrow(() -> Refusal.missing(
                        DEED, "The order of this frame has no such part.", "Choose one from its list."));
        if (!part.withUs()) {
            throw Refusal.state(DEED, "It is " + part.state() + ".", "Book it in on the order first.");
        }
        requireFigure(head, part, came.figure(), act);
        OwnPartCheck check = read(head, came, act);
        rows.saveAndFlush(new OwnPartCheckRow(java.util.Objects.requireNonNull(head.orderId()), check, act));
        log.event(
                Chains.bearing(head.serial()),
                "own-part-checked-in",
                Map.of("part", part.id(), "conforming", check.conforming()));
        if (head.currentOperationId() != null) {
            hasCome.to(act, head.currentOperationId());
        }
        return check;
    }

    /** A part once measured against a figure is measured against it again: it does not come to fit by leaving that out. */
    private void requireFigure(
            FrameSheet.Head head, OwnPartsHeld.Held part, OwnPartCheck.@Nullable Figure figure, Act act) {
        boolean mayName = crew.byId(act.by()).isAny(Role.QA_LEAD, Role.OWNER);
        OwnPartCheck.Figure before =
                rows.findByOrderIdOrderById(java.util.Objects.requireNonNull(head.orderId())).stream()
                        .map(OwnPartCheckRow::check)
                        .filter(check -> check.ownPartId() == part.id() && check.figure() != null)
                        .map(OwnPartCheck::figure)
                        .reduce((earlier, later) -> later)
                        .orElse(null);
        if (before != null && before != figure && (figure == null || !mayName)) {
            throw Refusal.input(
                    "figure",
                    DEED,
                    "It was measured against “" + before.word() + "” before.",
                    figure == null
                            ? "Measure it against that again; what does not fit is given back."
                            : "Measure it against that again. Where that was a slip, QA lead or owner names another.");
        }
        OwnPartCheck.Figure called = OwnPartCheck.Figure.of(part.what()).orElse(null);
        if (figure == null && called != null && !mayName && figureOf(head, called) != null) {
            throw Refusal.input(
                    "figure",
                    DEED,
                    "The drawing of " + head.mark() + " gives “" + called.word() + "”.",
                    "Measure the " + part.what()
                            + " against it. Where it is another thing, QA lead or owner checks it in.");
        }
    }

    private OwnPartCheck read(FrameSheet.Head head, Came came, Act act) {
        BigDecimal nominal = came.figure() == null ? null : drawn(head, came.figure());
        BigDecimal within = nominal == null ? null : settings.number("own.part.within");
        BigDecimal measured = came.measured_mm();
        if (nominal != null
                && (measured == null
                        || measured.signum() <= 0
                        || measured.compareTo(GREATEST_mm) > 0
                        || measured.stripTrailingZeros().scale() > DECIMALS)) {
            throw Refusal.input(
                    "measured",
                    DEED,
                    measured == null
                            ? "It was not measured."
                            : measured.toPlainString() + " mm do not lie above 0 and up to " + GREATEST_mm
                                    + " mm, with three decimals at most.",
                    "Measure it; never take it from memory or a maker's page.");
        }
        String gauge = nominal == null || measured == null ? null : gauge(came.gauge(), measured);
        return new OwnPartCheck(
                came.ownPartId(),
                TypedText.line("condition", "Its condition", DEED, came.condition(), 400),
                TypedText.line("makerSerial", "The number on it", DEED, came.makerSerial(), 80),
                photo(came.photo()),
                came.figure(),
                nominal == null ? null : measured,
                gauge,
                nominal,
                within,
                nominal == null
                        || measured != null
                                && measured.subtract(nominal).abs().compareTo(java.util.Objects.requireNonNull(within))
                                        <= 0,
                act.by(),
                act.at());
    }

    /** What it was measured with: in date, and reaching what it read. */
    private String gauge(@Nullable String typed, BigDecimal measured_mm) {
        if (typed == null || typed.isBlank()) {
            throw Refusal.input("gauge", DEED, "It is not said with which gauge.", "Scan the label on the gauge.");
        }
        gauges.keep(List.of(typed));
        List<String> kinds = gauges.byCode(typed).map(Gauge::ranges).orElse(List.of()).stream()
                .map(GaugeRange::kind)
                .toList();
        String kind = LENGTH.stream().filter(kinds::contains).findFirst().orElse("TAPE");
        return gauges.require(typed, kind, "mm", List.of(measured_mm), settings.today())
                .code();
    }

    private @Nullable String figureOf(FrameSheet.Head head, OwnPartCheck.Figure figure) {
        String typed = head.designRevisionId() == null
                ? null
                : designs.revision(head.designRevisionId()).geometry().get(figure.name());
        return typed == null || typed.isBlank() ? null : typed;
    }

    private BigDecimal drawn(FrameSheet.Head head, OwnPartCheck.Figure figure) {
        String typed = figureOf(head, figure);
        if (typed == null) {
            throw Refusal.input(
                    "figure",
                    DEED,
                    "The design of " + head.mark() + " has no figure for “" + figure.word() + "”.",
                    "Choose another figure, or none.");
        }
        return new BigDecimal(typed);
    }

    private @Nullable String photo(@Nullable Picture sent) {
        if (sent == null || sent.content().length == 0) {
            return null;
        }
        StoredFile kept = files.keep(sent.content(), sent.mediaType(), sent.name());
        if (!kept.isImage()) {
            throw Refusal.input(
                    "photo", DEED, "What was sent is not a picture.", "Take a photograph, JPEG or PNG, and send that.");
        }
        return kept.sha256();
    }
}
