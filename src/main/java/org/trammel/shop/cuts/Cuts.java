package org.trammel.shop.cuts;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.designs.CutTubes;
import org.trammel.shop.gauges.Means;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;

/** Records the tubes of a frame as they are measured after saw and mitre. What is out of its limits is recorded too. */
@Service
public class Cuts {

    /** Places round an end at which the gap is felt. */
    public static final int PLACES = 8;

    private static final String DEED = "The cut was not recorded.";
    private static final BigDecimal WIDEST_MM = BigDecimal.TEN;

    private final CutRepository cuts;
    private final CutEndRepository ends;
    private final CutRecords records;
    private final CutTurn turn;
    private final CutGives gives;
    private final CutUnjudged unjudged;
    private final CutGauges gauges;
    private final HoleSaws saws;
    private final ActLog log;

    Cuts(
            CutRepository cuts,
            CutEndRepository ends,
            CutRecords records,
            CutTurn turn,
            CutGives gives,
            CutUnjudged unjudged,
            CutGauges gauges,
            HoleSaws saws,
            ActLog log) {
        this.cuts = cuts;
        this.ends = ends;
        this.records = records;
        this.turn = turn;
        this.gives = gives;
        this.unjudged = unjudged;
        this.gauges = gauges;
        this.saws = saws;
        this.log = log;
    }

    /**
     * A tube as it was measured.
     *
     * @param piece its code within the frame
     * @param phase_deg how far the second cut stands off its phase; not asked where one end is not mitred
     * @param ends by their place, those that are mitred
     */
    public record Entry(
            @Nullable String piece,
            @Nullable BigDecimal blank_mm,
            @Nullable BigDecimal phase_deg,
            Map<Integer, EndEntry> ends,
            Map<String, String> gauges) {

        String gauge(String field) {
            return gauges.getOrDefault(field, "");
        }
    }

    /** @param gaps_mm at eight places, in turn */
    public record EndEntry(
            @Nullable String saw,
            @Nullable BigDecimal angle_deg,
            @Nullable BigDecimal wall_mm,
            List<@Nullable BigDecimal> gaps_mm) {}

    /**
     * The pieces of the frame's own cut list, and what was recorded of each.
     *
     * @param unjudged by piece, those of its figures that no characteristic of the operation judges
     * @param beyond of these, what lies beyond what is allowed
     */
    public record Sheet(
            long operationId,
            List<CutTubes.Piece> pieces,
            Map<String, Cut> recorded,
            Map<String, List<String>> unjudged,
            Map<String, List<String>> beyond) {

        /** The first that is not recorded; null if all are. */
        public CutTubes.@Nullable Piece next() {
            return pieces.stream()
                    .filter(piece -> !recorded.containsKey(piece.code()))
                    .findFirst()
                    .orElse(null);
        }
    }

    @Transactional(readOnly = true)
    public Sheet of(long operationId) {
        CutTurn.At at = turn.of(operationId);
        return sheet(at, records.newest(at.head(), operationId));
    }

    @Transactional
    public Sheet record(Act act, long operationId, Entry entry) {
        if (!turn.opens(act, "record-cut", operationId)) {
            return of(operationId);
        }
        CutTurn.At at = turn.atHand(act, operationId, DEED);
        CutTubes.Piece piece = at.pieces().stream()
                .filter(one -> one.code().equals(entry.piece()))
                .findFirst()
                .orElseThrow(() -> Refusal.input(
                        "piece", DEED, "The cut list of this frame has no such tube.", "Choose one from its list."));
        Cut cut = measured(act, piece, entry);
        long id = cuts.saveAndFlush(new CutRow(operationId, cut, act)).id();
        cut.ends().forEach(end -> ends.saveAndFlush(new CutEndRow(id, end)));
        log.event(
                Chains.bearing(at.head().serial()),
                "cut-recorded",
                Map.of(
                        "operation",
                        operationId,
                        "piece",
                        piece.code(),
                        "blank",
                        cut.blank_mm().toPlainString(),
                        "gaps",
                        cut.ends().stream()
                                .map(end -> end.worst_mm().toPlainString())
                                .toList()));
        Map<String, Cut> all = new LinkedHashMap<>(records.newest(at.head(), operationId));
        all.keySet().retainAll(at.pieces().stream().map(CutTubes.Piece::code).toList());
        gives.give(act, at, cut, all.values());
        unjudged.found(act, at, cut);
        turn.come(act, operationId);
        return sheet(at, all);
    }

    private Sheet sheet(CutTurn.At at, Map<String, Cut> recorded) {
        Map<String, List<String>> names = new LinkedHashMap<>();
        Map<String, List<String>> beyond = new LinkedHashMap<>();
        unjudged.of(at.head(), at.line().operationId(), at.line().code(), recorded.values())
                .forEach((piece, told) -> {
                    names.put(piece, told.names());
                    if (!told.beyond().isEmpty()) {
                        beyond.put(piece, told.beyond());
                    }
                });
        return new Sheet(at.line().operationId(), at.pieces(), recorded, names, beyond);
    }

    private Cut measured(Act act, CutTubes.Piece piece, Entry entry) {
        BigDecimal blank = figure("blank", "Its length", entry.blank_mm(), "mm", 2);
        List<Cut.End> measured = new ArrayList<>();
        for (CutTubes.End end : piece.ends()) {
            measured.add(end(end, entry.ends().get(end.place())));
        }
        BigDecimal phase = piece.phased() ? figure("phase", "Its phase", entry.phase_deg(), "°", 2) : null;
        String length = gauges.length(entry.gauge("lengthGauge"), "lengthGauge", CutGauges.LENGTH, blank)
                .code();
        return new Cut(
                piece.code(),
                piece.called(),
                blank,
                piece.blank_mm(),
                phase,
                measured,
                measured.isEmpty()
                        ? new Cut.With(length, null, null, null, null)
                        : with(length, phase, measured, entry),
                act.by(),
                act.at());
    }

    private Cut.With with(String length, @Nullable BigDecimal phase, List<Cut.End> measured, Entry entry) {
        Means ofPhase = phase == null ? null : gauges.phase(entry.gauge("phaseGauge"), phase);
        return new Cut.With(
                length,
                gauges.angle(
                                entry.gauge("angleGauge"),
                                measured.stream().map(Cut.End::angle_deg).toList())
                        .code(),
                ofPhase == null ? null : ofPhase.code(),
                gauges.gap(
                                entry.gauge("gapGauge"),
                                measured.stream()
                                        .flatMap(end -> end.gaps_mm().stream())
                                        .toList())
                        .code(),
                gauges.wall(
                                entry.gauge("wallGauge"),
                                measured.stream().map(Cut.End::wall_mm).toList())
                        .code());
    }

    private Cut.End end(CutTubes.End end, @Nullable EndEntry entry) {
        String place = String.valueOf(end.place());
        if (entry == null) {
            throw Refusal.input(
                    "saw" + place, DEED, "The end at the " + end.mate() + " is missing.", "Measure both mitred ends.");
        }
        HoleSaw saw = saws.fit(entry.saw(), end, "saw" + place, DEED);
        return new Cut.End(
                end.place(),
                end.mate(),
                saw.code(),
                figure("angle" + place, "The angle at the " + end.mate(), entry.angle_deg(), "°", 2),
                end.angle_deg(),
                figure("wall" + place, "The wall at the lip of the " + end.mate(), entry.wall_mm(), "mm", 3),
                end.wall_mm(),
                gaps(end, entry));
    }

    private static List<BigDecimal> gaps(CutTubes.End end, EndEntry entry) {
        if (entry.gaps_mm().size() > PLACES) {
            throw Refusal.input(
                    "gap" + end.place() + "-" + (PLACES + 1),
                    DEED,
                    entry.gaps_mm().size() + " gaps came of the end at the " + end.mate() + "; it is felt at " + PLACES
                            + " places.",
                    "Give one gap for each place, in turn.");
        }
        List<BigDecimal> gaps = new ArrayList<>();
        for (int i = 0; i < PLACES; i++) {
            String field = "gap" + end.place() + "-" + (i + 1);
            BigDecimal gap = figure(
                    field,
                    "The gap at place " + (i + 1) + " of the " + end.mate(),
                    i < entry.gaps_mm().size() ? entry.gaps_mm().get(i) : null,
                    "mm; 0 where no leaf enters",
                    3);
            if (gap.signum() < 0 || gap.compareTo(WIDEST_MM) > 0) {
                throw Refusal.input(
                        field,
                        DEED,
                        "A gap of " + gap.toPlainString() + " mm does not lie within 0 and 10 mm.",
                        "Read the leaf again, in mm.");
            }
            gaps.add(gap);
        }
        return gaps;
    }

    /** @param decimals that are kept: what is judged is what is kept */
    private static BigDecimal figure(String field, String what, @Nullable BigDecimal value, String unit, int decimals) {
        if (value == null) {
            throw Refusal.input(field, DEED, what + " is missing.", "Measure it and enter it in " + unit + ".");
        }
        CutDigits.require(field, DEED, what, value, decimals);
        return Objects.requireNonNull(value);
    }
}
