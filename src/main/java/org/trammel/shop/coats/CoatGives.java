package org.trammel.shop.coats;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import org.springframework.stereotype.Component;
import org.trammel.shop.gauges.Means;
import org.trammel.shop.inspection.GivenByRecord;
import org.trammel.shop.inspection.RecordedReadings;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/**
 * Gives the characteristics that a finish names what is recorded of surface and coat, as it is recorded. A margin over the
 * dew point that is too small is no verdict on the frame, on which nothing was sprayed: one waits, and only the margin that
 * opens the coat is given.
 */
@Component
class CoatGives implements GivenByRecord {

    private static final String RECORD = "the sheet of the coat";

    private final Finishes finishes;
    private final Travellers travellers;
    private final RecordedReadings readings;

    CoatGives(Finishes finishes, Travellers travellers, RecordedReadings readings) {
        this.finishes = finishes;
        this.travellers = travellers;
        this.readings = readings;
    }

    @Override
    public Map<String, Source> at(long operationId, String operationCode) {
        if (!finishes.gives(operationCode)) {
            return Map.of();
        }
        FrameSheet.OperationSheetOfFrame at = travellers.operation(operationId);
        Optional<Finish> finish = at.outside()
                ? Optional.empty()
                : finishes.guarding(
                        operationCode,
                        travellers.headOf(operationId).metal(),
                        at.line().startedAt());
        Map<String, Source> sources = new HashMap<>();
        finish.ifPresent(one -> one.content().gives().forEach((figure, codes) -> {
            if (recorded(one, figure, operationCode)) {
                codes.forEach(code -> sources.put(code, source(code, operationId, one)));
            }
        }));
        return sources;
    }

    /** Whether a figure is recorded at that operation at all. */
    private static boolean recorded(Finish finish, CoatFigure figure, String operationCode) {
        return switch (figure) {
            case PRESSURE -> finish.blasts(operationCode);
            case MARGIN -> finish.blasts(operationCode) || finish.coats(operationCode);
            case EARTH -> finish.coats(operationCode) && finish.content().mostEarth_MOhm() != null;
            case FILM -> finish.readsFilm(operationCode);
            case LINE -> finish.lays(operationCode);
            case BLEED -> finish.draws(operationCode);
        };
    }

    private static Source source(String code, long operationId, Finish finish) {
        return new Source(
                Refusal.state(
                        code + " is not keyed.",
                        "The sheet of the coat gives it: finish " + finish.called() + ".",
                        "Record it there."),
                "/coats/" + operationId,
                "Surface and coat");
    }

    /** @param from what it was read with; with several it is computed from their figures */
    void give(Act act, CoatTurn.At at, CoatFigure figure, BigDecimal value, List<Means> from) {
        give(act, at, figure, List.of(value), from);
    }

    /** The margin is too small now, whatever it was before. */
    void tooSmall(Act act, CoatTurn.At at) {
        readings.takeBack(
                act,
                RECORD,
                at.line().operationId(),
                at.finish().content().gives().getOrDefault(CoatFigure.MARGIN, List.of()));
    }

    void film(Act act, CoatTurn.At at, List<BigDecimal> readings_um, Means means) {
        give(act, at, CoatFigure.FILM, readings_um, List.of(means));
    }

    /** @param place of the line among those of the finish; its codes stand at that place, over and over */
    void line(Act act, CoatTurn.At at, CoatFigure figure, int place, List<BigDecimal> raw_mm, Means means) {
        List<String> codes = at.finish().content().gives().getOrDefault(figure, List.of());
        int lines = Objects.requireNonNull(at.finish().content().secondColour())
                .lines()
                .size();
        give(
                act,
                at,
                figure,
                IntStream.range(0, codes.size())
                        .filter(i -> i % lines == place)
                        .mapToObj(codes::get)
                        .toList(),
                raw_mm,
                List.of(means));
    }

    private void give(Act act, CoatTurn.At at, CoatFigure figure, List<BigDecimal> raw, List<Means> from) {
        give(act, at, figure, at.finish().content().gives().getOrDefault(figure, List.of()), raw, from);
    }

    private void give(
            Act act, CoatTurn.At at, CoatFigure figure, List<String> codes, List<BigDecimal> raw, List<Means> from) {
        List<RecordedReadings.Value> values = codes.stream()
                .map(code -> from.size() == 1
                        ? RecordedReadings.Value.with(from.get(0), code, raw, figure.unit())
                        : RecordedReadings.Value.computed(from, code, raw, figure.unit()))
                .toList();
        if (!values.isEmpty() && recorded(at.finish(), figure, at.line().code())) {
            readings.give(act, act.by(), RECORD, at.line().operationId(), values);
        }
    }
}
