package org.trammel.shop.cuts;

import static org.trammel.shop.routes.Reduction.SINGLE;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.trammel.calc.metrology.Limits;
import org.trammel.calc.metrology.Reduction;
import org.trammel.shop.designs.CutTubes;
import org.trammel.shop.gauges.Means;
import org.trammel.shop.inspection.GivenByRecord;
import org.trammel.shop.inspection.RecordedReadings;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Rule;
import org.trammel.shop.travellers.CharacteristicState;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/**
 * Gives the characteristics that ask by their name for the tubes of a frame what was measured of them: as soon as one piece
 * lies outside the limits, else when every piece is recorded, so that no part of a frame stands for the whole.
 */
@Component
class CutGives implements GivenByRecord {

    private static final String RECORD = "the sheet of cuts";
    private static final Set<CharacteristicState> VERDICTS = EnumSet.of(
            CharacteristicState.CONFORMING,
            CharacteristicState.NOT_CONFORMING,
            CharacteristicState.UNDECIDED,
            CharacteristicState.CONCESSION);

    private final CutTurn turn;
    private final Travellers travellers;
    private final RecordedReadings readings;
    private final CutGauges gauges;
    private final CutConceded conceded;

    CutGives(CutTurn turn, Travellers travellers, RecordedReadings readings, CutGauges gauges, CutConceded conceded) {
        this.turn = turn;
        this.travellers = travellers;
        this.readings = readings;
        this.gauges = gauges;
        this.conceded = conceded;
    }

    @Override
    public Map<String, Source> at(long operationId, String operationCode) {
        if (!turn.records(operationId, operationCode)) {
            return Map.of();
        }
        FrameSheet.OperationSheetOfFrame at = travellers.operation(operationId);
        if (at.outside()) {
            return Map.of();
        }
        CutTubes.Drawn drawn = turn.drawn(travellers.headOf(operationId), operationId, operationCode);
        Map<String, Source> sources = new HashMap<>();
        at.characteristics().stream()
                .filter(one -> CutAsked.of(one.name(), one.unit())
                        .filter(asked ->
                                given(asked, drawn) && drawn.pieces().stream().anyMatch(piece -> asked.asks(piece)))
                        .isPresent())
                .forEach(one -> sources.put(
                        one.code(),
                        new Source(
                                Refusal.state(
                                        one.code() + " is not keyed.",
                                        "The sheet of cuts gives it from the tubes of this frame.",
                                        "Record the tubes there, each by its own cut list."),
                                "/cuts/" + operationId,
                                "Cuts")));
        return sources;
    }

    /** What asks of every tube is keyed where the drawing does not compute every tube. */
    static boolean given(CutAsked asked, CutTubes.Drawn drawn) {
        return !asked.ofAll() || drawn.missing().isEmpty();
    }

    /** Characteristics of the operation that ask for its tubes and are keyed there, each by code and name. */
    List<String> keyed(long operationId, CutTubes.Drawn drawn) {
        return travellers.operation(operationId).characteristics().stream()
                .filter(one -> CutAsked.of(one.name(), one.unit())
                        .filter(asked ->
                                !given(asked, drawn) || drawn.pieces().stream().noneMatch(asked::asks))
                        .isPresent())
                .map(one -> one.code() + " " + one.name())
                .toList();
    }

    /** What the route judged of the tubes so far, in its order. */
    List<FrameSheet.CharacteristicLine> judged(long operationId) {
        return travellers.operation(operationId).characteristics().stream()
                .filter(one -> CutAsked.of(one.name(), one.unit()).isPresent())
                .filter(one -> VERDICTS.contains(one.state()))
                .toList();
    }

    /**
     * Hands on what stands.
     *
     * @param newest what was recorded just now
     * @param all the newest of every piece
     */
    void give(Act act, CutTurn.At at, Cut newest, Collection<Cut> all) {
        if (!turn.records(at.line().operationId(), at.line().code())) {
            return;
        }
        CutTubes.Drawn drawn =
                turn.drawn(at.head(), at.line().operationId(), at.line().code());
        boolean whole = all.size() >= at.pieces().size();
        List<RecordedReadings.Value> values = new ArrayList<>();
        for (FrameSheet.CharacteristicLine one :
                travellers.operation(at.line().operationId()).characteristics()) {
            CutAsked.of(one.name(), one.unit())
                    .filter(asked -> given(asked, drawn) && !asked.of(all).isEmpty())
                    .filter(asked -> one.state() == CharacteristicState.CONCESSION
                            ? beyondConcession(act, at, one, asked, all, whole)
                            : whole || outside(one, asked.of(List.of(newest))))
                    .ifPresent(asked -> values.add(value(one, asked, all)));
        }
        if (!values.isEmpty()) {
            readings.give(act, act.by(), RECORD, at.line().operationId(), values);
        }
    }

    /** Whether a concession does not speak for what stands now; then it stands no longer, and all of it is judged. */
    private boolean beyondConcession(
            Act act,
            CutTurn.At at,
            FrameSheet.CharacteristicLine one,
            CutAsked asked,
            Collection<Cut> all,
            boolean whole) {
        CutConceded.Reach reach =
                conceded.reach(at, one, asked, coarsest(readWith(asked, all)).u(), all);
        boolean beyond = reach == CutConceded.Reach.NOT_ALL || reach == CutConceded.Reach.NOT_NEEDED && whole;
        if (beyond) {
            readings.beyondConcession(act, at.line().operationId(), one.code());
        }
        return beyond;
    }

    private RecordedReadings.Value value(FrameSheet.CharacteristicLine one, CutAsked asked, Collection<Cut> all) {
        List<Means> readWith = readWith(asked, all);
        Means means = coarsest(readWith);
        if (one.rule() == Rule.GUARDED && means.u() == null) {
            throw Refusal.state(
                    "The cut was not recorded.",
                    one.code() + " is judged with the doubt of its gauge, and " + means.code() + " knows none.",
                    "Measure with a gauge whose doubt is in the register.");
        }
        List<BigDecimal> figures = asked.of(all);
        return new RecordedReadings.Value(
                one.code(),
                one.reduction() == SINGLE ? List.of(worst(one, figures)) : figures,
                asked.figure().unit(),
                readWith.stream().map(Means::code).collect(Collectors.joining(", ")),
                means,
                // The error of a gauge is no error of a difference, which is kept without its sign, nor of another
                // gauge's.
                asked.differs() || readWith.size() > 1 ? readWith : List.of());
    }

    /** The one with the least margin to the limits, as where every figure is kept; without limits the farthest off. */
    private static BigDecimal worst(FrameSheet.CharacteristicLine one, List<BigDecimal> figures) {
        if (one.lowerLimit() == null && one.upperLimit() == null) {
            BigDecimal nominal = one.nominal() == null ? BigDecimal.ZERO : one.nominal();
            return figures.stream()
                    .max(Comparator.comparing(value -> value.subtract(nominal).abs()))
                    .orElseThrow();
        }
        return Reduction.WORST.of(figures, new Limits(one.lowerLimit(), one.upperLimit()))
                        instanceof Reduction.Result.Reduced worst
                ? worst.value()
                : figures.get(0);
    }

    static boolean outside(FrameSheet.CharacteristicLine one, List<BigDecimal> figures) {
        return figures.stream()
                .anyMatch(value -> one.lowerLimit() != null && value.compareTo(one.lowerLimit()) < 0
                        || one.upperLimit() != null && value.compareTo(one.upperLimit()) > 0);
    }

    private List<Means> readWith(CutAsked asked, Collection<Cut> all) {
        Map<String, Means> readWith = new LinkedHashMap<>();
        for (Cut cut : asked.among(all)) {
            String code = asked.figure().readWith(cut);
            if (code != null) {
                readWith.computeIfAbsent(code, gauge -> gauges.of(asked.figure(), gauge, cut.at()));
            }
        }
        return List.copyOf(readWith.values());
    }

    /** Of several gauges the one with the greatest doubt stands for all; an aid, which knows none, before the others. */
    private static Means coarsest(List<Means> readWith) {
        return readWith.stream()
                .max(Comparator.comparing(means -> means.u() == null ? BigDecimal.valueOf(Long.MAX_VALUE) : means.u()))
                .orElseThrow();
    }
}
