package org.trammel.shop.welding;

import java.math.BigDecimal;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.units.Answer;
import org.trammel.calc.welding.Purge;
import org.trammel.shop.gauges.Means;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;

/** Records the oxygen inside a frame. One above the limit is recorded too, and no arc is struck on it. */
@Service
public class Purges {

    /** There is no more oxygen than everything. */
    private static final BigDecimal ALL_OXYGEN_PPM = BigDecimal.valueOf(1_000_000);

    private static final BigDecimal MOST_ROOM_L = BigDecimal.valueOf(1000);
    private static final BigDecimal MOST_FLOW_L_PER_MIN = BigDecimal.valueOf(200);

    private final PurgeRepository rows;
    private final WeldTurn turn;
    private final WeldGauges gauges;
    private final ActLog log;

    Purges(PurgeRepository rows, WeldTurn turn, WeldGauges gauges, ActLog log) {
        this.rows = rows;
        this.turn = turn;
        this.gauges = gauges;
        this.log = log;
    }

    /**
     * What was read.
     *
     * @param room_L volume inside, with the flow for the time it takes; both may be left out
     */
    public record Reading(
            @Nullable BigDecimal oxygen_ppm,
            String gauge,
            @Nullable BigDecimal room_L,
            @Nullable BigDecimal flow_L_per_min) {}

    @Transactional
    public PurgeRecord read(Act act, long operationId, Reading entry) {
        String deed = "The purge was not recorded.";
        if (!turn.opens(act, "read-purge", operationId)) {
            return rows.findByOperationIdInOrderById(java.util.List.of(operationId)).stream()
                    .reduce((before, after) -> after)
                    .orElseThrow()
                    .purge();
        }
        WeldTurn.At at = turn.atHand(act, operationId, deed);
        BigDecimal most = at.procedure().content().nodes().mostPurge_ppm();
        if (most == null || !at.joins()) {
            throw Refusal.state(
                    deed,
                    "Procedure " + at.procedure().called() + " asks for no purge at operation "
                            + at.line().code() + ".",
                    "Leave a note on the frame instead.");
        }
        BigDecimal oxygen = entry.oxygen_ppm();
        if (oxygen == null || oxygen.signum() < 0 || oxygen.compareTo(ALL_OXYGEN_PPM) > 0 || oxygen.scale() > 2) {
            throw Refusal.input(
                    "oxygen",
                    deed,
                    oxygen == null
                            ? "The oxygen is missing."
                            : oxygen.toPlainString() + " ppm is no such figure: it is 0 to "
                                    + ALL_OXYGEN_PPM.toPlainString() + " ppm, with two decimals at most.",
                    "Read the meter at the outlet, in ppm.");
        }
        Means meter = gauges.read(entry.gauge(), "gauge", WeldGauges.OXYGEN, "ppm", oxygen, deed);
        BigDecimal guard = gauges.guard(meter);
        Purge purge = value(Purge.to(most), deed);
        BigDecimal room = inside("room", "The volume inside", entry.room_L(), MOST_ROOM_L, "L", deed);
        BigDecimal flow = inside("flow", "The flow", entry.flow_L_per_min(), MOST_FLOW_L_PER_MIN, "L/min", deed);
        BigDecimal minutes = room == null || flow == null ? null : value(purge.minutes(room, flow), deed);
        PurgeRecord record = new PurgeRecord(
                oxygen, guard, most, room, flow, purge.volumes(), minutes, meter.code(), act.by(), act.at());
        rows.saveAndFlush(new PurgeRow(operationId, record, act));
        log.event(
                Chains.bearing(at.head().serial()),
                "purge-read",
                Map.of("operation", operationId, "procedure", at.procedure().id(), "enough", record.enough()));
        turn.come(act, operationId);
        return record;
    }

    private static @Nullable BigDecimal inside(
            String field, String what, @Nullable BigDecimal figure, BigDecimal most, String unit, String deed) {
        if (figure != null && (figure.signum() <= 0 || figure.compareTo(most) > 0 || figure.scale() > 2)) {
            throw Refusal.input(
                    field,
                    deed,
                    what + ", " + figure.toPlainString() + " " + unit + ", is not above 0 and at most "
                            + most.toPlainString() + " " + unit + ", with two decimals at most.",
                    "Enter it in " + unit + ", or leave it out.");
        }
        return figure;
    }

    private static <T> T value(Answer<T> answer, String deed) {
        if (answer instanceof Answer.Determined<T> there) {
            return there.value();
        }
        Answer.NotDeterminable<T> gap = (Answer.NotDeterminable<T>) answer;
        throw Refusal.input(
                gap.gaps().get(0).input(),
                deed,
                gap.gaps().stream().map(Answer.Gap::words).collect(Collectors.joining(" ")),
                "Enter litres and litres a minute.");
    }
}
