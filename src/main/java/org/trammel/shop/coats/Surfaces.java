package org.trammel.shop.coats;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.dew.DewMargin;
import org.trammel.shop.dew.DewMargins;
import org.trammel.shop.dew.DewPurpose;
import org.trammel.shop.dew.MetalAir;
import org.trammel.shop.gauges.Means;
import org.trammel.shop.materials.Lot;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;

/** Records the surface of a frame at the operation it stands at. What is not as asked is recorded too, and opens nothing. */
@Service
public class Surfaces {

    private final MaskRepository masks;
    private final BlastRepository blasts;
    private final DewMargins margins;
    private final SprayRepository sprays;
    private final SurfaceRecords records;
    private final CoatTurn turn;
    private final CoatLots lots;
    private final CoatColours colours;
    private final CoatGauges gauges;
    private final CoatGives gives;
    private final ActLog log;

    Surfaces(
            MaskRepository masks,
            BlastRepository blasts,
            DewMargins margins,
            SprayRepository sprays,
            SurfaceRecords records,
            CoatTurn turn,
            CoatLots lots,
            CoatColours colours,
            CoatGauges gauges,
            CoatGives gives,
            ActLog log) {
        this.masks = masks;
        this.blasts = blasts;
        this.margins = margins;
        this.sprays = sprays;
        this.records = records;
        this.turn = turn;
        this.lots = lots;
        this.colours = colours;
        this.gauges = gauges;
        this.gives = gives;
        this.log = log;
    }

    /** What stands at an operation that a finish guards. */
    @Transactional(readOnly = true)
    public SurfaceRecord of(long operationId) {
        return records.of(operationId, turn.of(operationId).finish());
    }

    /** Ticks one mask of the finish, or takes the tick back. */
    @Transactional
    public SurfaceRecord mask(Act act, long operationId, @Nullable String landmark, boolean fitted) {
        String deed = "The mask was not noted.";
        if (!turn.opens(act, "note-mask", operationId)) {
            return of(operationId);
        }
        CoatTurn.At at = turn.atHand(act, operationId, deed);
        if (!at.finish().content().masks().contains(landmark)) {
            throw Refusal.input(
                    "landmark",
                    deed,
                    "Finish " + at.finish().called() + " has no such landmark.",
                    "Choose one from its list.");
        }
        masks.saveAndFlush(new MaskRow(operationId, Objects.requireNonNull(landmark), fitted, act));
        return told(act, at, fitted ? "mask-fitted" : "mask-taken-off", Map.of("landmark", landmark));
    }

    /**
     * What it was blasted with.
     *
     * @param cleanliness what was looked at and how, such as the grade and the white cloth
     */
    public record Blasted(
            String lot,
            @Nullable BigDecimal pressure_bar,
            String gauge,
            @Nullable String cleanliness) {}

    @Transactional
    public SurfaceRecord blasted(Act act, long operationId, Blasted entry) {
        String deed = "The blast was not recorded.";
        if (!turn.opens(act, "record-blast", operationId)) {
            return of(operationId);
        }
        CoatTurn.At at = turn.atHand(act, operationId, deed);
        requireKind(at, at.finish().blasts(at.line().code()), deed);
        BigDecimal bar = figure("pressure", "The pressure", deed, entry.pressure_bar(), "bar");
        if (bar.signum() <= 0) {
            throw Refusal.input("pressure", deed, "The pressure is not above 0 bar.", "Read it while the air flows.");
        }
        String clean = TypedText.line("cleanliness", "The cleanliness", deed, entry.cleanliness(), 200);
        Means gauge = gauges.pressure(entry.gauge(), bar);
        Lot lot = lots.media(act, entry.lot(), at);
        blasts.saveAndFlush(new BlastRow(
                operationId,
                at.head().metal(),
                new SurfaceRecord.Blast(
                        lot.code(),
                        bar,
                        Objects.requireNonNull(at.finish().content().most_bar()),
                        gauge.code(),
                        clean,
                        act.by(),
                        act.at()),
                act));
        gives.give(act, at, CoatFigure.PRESSURE, bar, List.of(gauge));
        return told(act, at, "blasted", Map.of("lot", lot.code()));
    }

    /** Computes the dew point at the metal and keeps it with the margin, enough or not. */
    @Transactional
    public SurfaceRecord measured(Act act, long operationId, MetalAir entry) {
        String deed = "Air and metal were not recorded.";
        if (!turn.opens(act, "record-air", operationId)) {
            return of(operationId);
        }
        CoatTurn.At at = turn.atHand(act, operationId, deed);
        DewMargins.Measured measured = margins.measure(act, operationId, DewPurpose.COAT, entry, deed);
        DewMargin margin = measured.margin();
        if (margin.enough()) {
            gives.give(act, at, CoatFigure.MARGIN, margin.margin_K(), List.of(measured.air(), measured.metal()));
        } else {
            gives.tooSmall(act, at);
        }
        return told(
                act,
                at,
                "air-measured",
                Map.of(
                        "margin",
                        margin.margin_K().toPlainString(),
                        "enough",
                        margin.enough(),
                        "setting",
                        measured.settings().get(0)));
    }

    /** What is sprayed, and the earth; the earth may be missing where the finish does not ask for it. */
    public record Spraying(
            String lot,
            @Nullable BigDecimal earth_MOhm,
            @Nullable String gauge) {}

    @Transactional
    public SurfaceRecord spraying(Act act, long operationId, Spraying entry) {
        String deed = "Powder and earth were not recorded.";
        if (!turn.opens(act, "record-powder-and-earth", operationId)) {
            return of(operationId);
        }
        CoatTurn.At at = turn.atHand(act, operationId, deed);
        requireKind(at, at.finish().coats(at.line().code()), deed);
        BigDecimal most = at.finish().content().mostEarth_MOhm();
        BigDecimal earth =
                most == null ? null : figure("earth", "The earth resistance", deed, entry.earth_MOhm(), "MΩ");
        if (earth != null && earth.signum() < 0) {
            throw Refusal.input("earth", deed, "A resistance is not below 0 MΩ.", "Measure it again, hook to frame.");
        }
        Means gauge = earth == null ? null : gauges.earth(entry.gauge() == null ? "" : entry.gauge(), earth);
        Lot lot = lots.powder(act, entry.lot(), at, deed);
        Refusal other = colours.differs(at.head().travellerId(), at.line().code(), at.finish(), lot.code(), deed);
        if (other != null) {
            throw other.at("lot");
        }
        sprays.saveAndFlush(new SprayRow(
                operationId,
                new SurfaceRecord.Spray(
                        lot.code(),
                        lot.expiresOn(),
                        earth,
                        most,
                        gauge == null ? null : gauge.code(),
                        act.by(),
                        act.at()),
                act));
        if (gauge != null) {
            gives.give(act, at, CoatFigure.EARTH, earth, List.of(gauge));
        }
        return told(act, at, "powder-and-earth", Map.of("lot", lot.code()));
    }

    private SurfaceRecord told(Act act, CoatTurn.At at, String what, Map<String, ?> facts) {
        Map<String, Object> all = new java.util.HashMap<>(facts);
        all.put("operation", at.line().operationId());
        all.put("finish", at.finish().id());
        log.event(Chains.bearing(at.head().serial()), what, all);
        turn.come(act, at.line().operationId());
        return records.of(at.line().operationId(), at.finish());
    }

    private static void requireKind(CoatTurn.At at, boolean named, String deed) {
        if (!named) {
            throw Refusal.state(
                    deed,
                    "Finish " + at.finish().called() + " names operation "
                            + at.line().code() + " for the other half of its work.",
                    "Record it at the operation in which it is done.");
        }
    }

    private static BigDecimal figure(String field, String what, String deed, @Nullable BigDecimal value, String unit) {
        if (value == null) {
            throw Refusal.input(field, deed, what + " is missing.", "Read it and enter it in " + unit + ".");
        }
        return value;
    }
}
