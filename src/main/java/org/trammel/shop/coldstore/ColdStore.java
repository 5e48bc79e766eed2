package org.trammel.shop.coldstore;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.gauges.Gauge;
import org.trammel.shop.gauges.GaugeRange;
import org.trammel.shop.gauges.Gauges;
import org.trammel.shop.gauges.Means;
import org.trammel.shop.people.Crew;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.OperationState;
import org.trammel.shop.travellers.ScannedFrames;
import org.trammel.shop.travellers.StoppedClocks;
import org.trammel.shop.travellers.Travellers;

/**
 * A cold store, in which clocks of a frame stand still by the rule of the shop: it is measured as the frame goes in and as it
 * comes out. Where it was too warm at the end nobody knows since when, and its windows have run all the time.
 */
@Service
public class ColdStore {

    private static final List<String> KINDS = List.of("THERMOCOUPLE", "CONTACT-TEMP", "IR-TEMP", "HYGRO");
    private static final BigDecimal COLDEST = BigDecimal.valueOf(-100);
    private static final BigDecimal WARMEST = BigDecimal.valueOf(60);
    private static final Limit RECENT = Limit.of(50);

    private final ColdStoreRepository rows;
    private final ScannedFrames frames;
    private final StoppedClocks clocks;
    private final Travellers travellers;
    private final Gauges gauges;
    private final Crew crew;
    private final Settings settings;
    private final ActLog log;

    ColdStore(
            ColdStoreRepository rows,
            ScannedFrames frames,
            StoppedClocks clocks,
            Travellers travellers,
            Gauges gauges,
            Crew crew,
            Settings settings,
            ActLog log) {
        this.rows = rows;
        this.frames = frames;
        this.clocks = clocks;
        this.travellers = travellers;
        this.gauges = gauges;
        this.crew = crew;
        this.settings = settings;
        this.log = log;
    }

    /** How cold it was, what the setting asked for, and what it was read with. */
    record Cold(BigDecimal degC, BigDecimal most_degC, String gauge) {

        boolean enough() {
            return degC.compareTo(most_degC) <= 0;
        }
    }

    /**
     * A frame that went in or came out.
     *
     * @param counts whether it was cold enough then
     */
    public record Move(
            long travellerId,
            String serial,
            String part,
            String mark,
            boolean wentIn,
            BigDecimal degC,
            BigDecimal most_degC,
            boolean counts,
            String gauge,
            long by,
            Instant at) {}

    /** Frames that lie in it, the longest first. */
    @Transactional(readOnly = true)
    public List<Move> lying() {
        return rows.lying().stream().map(ColdStoreMoveRow::move).toList();
    }

    /** What went in and out, newest first. */
    @Transactional(readOnly = true)
    public List<Move> moves() {
        return rows.findAllByOrderByIdDesc(RECENT).stream()
                .map(ColdStoreMoveRow::move)
                .toList();
    }

    /** When a frame and its parts went in and came out, oldest first. */
    @Transactional(readOnly = true)
    public List<Move> of(String serial) {
        return rows.findBySerialOrderById(serial).stream()
                .map(ColdStoreMoveRow::move)
                .toList();
    }

    /** Puts a frame in; its clocks that the setting names stand still. */
    @Transactional
    public Move putIn(Act act, String tag, @Nullable BigDecimal degC, @Nullable String gauge) {
        String deed = "The frame was not put into the cold store.";
        ScannedFrames.Found found = frames.find(List.of(tag), deed).get(0);
        FrameSheet.Head head = found.head();
        if (!log.opens(act, "put-into-cold-store", "traveller:" + head.travellerId(), found.chain())) {
            return last(head.travellerId());
        }
        requireWorks(act, deed);
        if (!head.state().open()) {
            throw Refusal.state(deed, head.mark() + " is " + head.state().word() + ".", "Read its tag again.");
        }
        if (lies(head.travellerId())) {
            throw Refusal.state(deed, head.mark() + " lies in it already.", "Take it out first.");
        }
        requireBetween(head, deed);
        Cold cold = cold(degC, gauge, deed);
        if (!cold.enough()) {
            throw Refusal.input(
                    "degC",
                    deed,
                    "It is at " + plain(cold.degC()) + " °C, and clocks stand still at " + plain(cold.most_degC())
                            + " °C or colder.",
                    "Wait until it is cold enough; the clock runs meanwhile.");
        }
        if (clocks.stop(
                        act,
                        head.travellerId(),
                        List.of(settings.text("cold.store.clocks").strip().split("\\s+")))
                .isEmpty()) {
            throw Refusal.state(
                    deed,
                    "No clock of " + head.mark() + " runs that the cold store stops.",
                    "Leave it where it is. The QA lead keeps the setting that names such clocks.");
        }
        return moved(act, found, true, cold);
    }

    /** Takes a frame out; its clocks run on, and where it was too warm its windows have run all the time. */
    @Transactional
    public Move takeOut(Act act, String tag, @Nullable BigDecimal degC, @Nullable String gauge) {
        String deed = "The frame was not taken out of the cold store.";
        ScannedFrames.Found found = frames.find(List.of(tag), deed).get(0);
        FrameSheet.Head head = found.head();
        if (!log.opens(act, "take-out-of-cold-store", "traveller:" + head.travellerId(), found.chain())) {
            return last(head.travellerId());
        }
        requireWorks(act, deed);
        if (!lies(head.travellerId())) {
            throw Refusal.state(deed, head.mark() + " does not lie in it.", "Read its tag again.");
        }
        Cold cold = cold(degC, gauge, deed);
        clocks.goOn(act, head.travellerId(), cold.enough());
        return moved(act, found, false, cold);
    }

    /** What is in work is not left lying: its next steps ask no clock any more. */
    private void requireBetween(FrameSheet.Head head, String deed) {
        if (head.currentOperationId() != null) {
            FrameSheet.OperationLine line =
                    travellers.operation(head.currentOperationId()).line();
            if (line.state() != OperationState.WAITING) {
                throw Refusal.state(
                        deed,
                        "Operation " + line.code() + " of " + head.mark() + " is "
                                + line.state().word() + ".",
                        "Finish that operation first; a frame lies cold between two of them.");
            }
        }
    }

    private Move moved(Act act, ScannedFrames.Found found, boolean wentIn, Cold cold) {
        Move move = rows.saveAndFlush(new ColdStoreMoveRow(found.head(), wentIn, cold, act))
                .move();
        log.event(
                found.chain(),
                wentIn ? "put-into-cold-store" : "taken-out-of-cold-store",
                Map.of("traveller", move.travellerId(), "degC", move.degC().toPlainString(), "counts", move.counts()));
        return move;
    }

    private void requireWorks(Act act, String deed) {
        if (!crew.byId(act.by()).mayWork()) {
            throw Refusal.person(deed, "A reader changes nothing.", "Somebody who works here does it.");
        }
    }

    private boolean lies(long travellerId) {
        return rows.findFirstByTravellerIdOrderByIdDesc(travellerId)
                .filter(row -> row.move().wentIn())
                .isPresent();
    }

    private Move last(long travellerId) {
        return rows.findFirstByTravellerIdOrderByIdDesc(travellerId)
                .orElseThrow()
                .move();
    }

    private Cold cold(@Nullable BigDecimal degC, @Nullable String gauge, String deed) {
        if (degC == null || degC.compareTo(COLDEST) < 0 || degC.compareTo(WARMEST) > 0) {
            throw Refusal.input(
                    "degC",
                    deed,
                    degC == null
                            ? "The temperature of the store is missing."
                            : plain(degC) + " °C is not " + COLDEST + " to " + WARMEST + " °C.",
                    "Read it inside, beside the frames, in °C.");
        }
        if (gauge == null || gauge.isBlank()) {
            throw Refusal.input(
                    "gauge", deed, "It is not said what it was read with.", "Choose the thermometer in your hand.");
        }
        List<String> own = gauges.byCode(gauge).map(Gauge::ranges).orElse(List.of()).stream()
                .map(GaugeRange::kind)
                .toList();
        String kind = KINDS.stream().filter(own::contains).findFirst().orElse(KINDS.get(0));
        gauges.keep(List.of(gauge));
        Means means = gauges.require(gauge, kind, "°C", List.of(degC), settings.today());
        return new Cold(degC, settings.number("cold.store"), means.code());
    }

    /** Thermometers in date, by their codes. */
    Map<String, String> usable() {
        Map<String, String> usable = new java.util.LinkedHashMap<>();
        usable.put("", "choose the one in your hand");
        KINDS.forEach(kind -> gauges.usableFor(kind, "°C", settings.today())
                .forEach(means -> usable.putIfAbsent(means.code(), means.code() + ", " + means.what())));
        return usable;
    }

    private static String plain(BigDecimal figure) {
        return figure.stripTrailingZeros().toPlainString().replace('-', '−').replace('.', ',');
    }
}
