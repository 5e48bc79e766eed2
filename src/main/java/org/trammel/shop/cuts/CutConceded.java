package org.trammel.shop.cuts;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.calc.metrology.ConformityDecision;
import org.trammel.calc.metrology.DecisionRule;
import org.trammel.calc.metrology.Limits;
import org.trammel.shop.inspection.RecordedReadings;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.FrameSheet;

/**
 * How far a concession reaches: to the figures of the tubes that stood in the reading that was conceded, each at its place
 * and no worse. Another tube, another place and a figure farther out were conceded by nobody.
 */
@Component
class CutConceded {

    /** Step to which a guard band is rounded up, as where readings are judged. */
    private static final BigDecimal KEPT = new BigDecimal("0.001");

    private final CutRecords records;
    private final RecordedReadings readings;
    private final Settings settings;

    CutConceded(CutRecords records, RecordedReadings readings, Settings settings) {
        this.records = records;
        this.readings = readings;
        this.settings = settings;
    }

    /** What a concession is to what stands now. */
    enum Reach {
        /** All that does not conform was conceded. */
        ALL,
        /** Something that does not conform was not. */
        NOT_ALL,
        /** Everything conforms. */
        NOT_NEEDED
    }

    /**
     * @param one a characteristic that was conceded
     * @param u doubt of what its figures were read with; null for an aid
     * @param all what stands of every piece
     */
    Reach reach(
            CutTurn.At at,
            FrameSheet.CharacteristicLine one,
            CutAsked asked,
            @Nullable BigDecimal u,
            Collection<Cut> all) {
        Map<String, Cut> stood = readings.actOf(one.readingId())
                .map(act -> records.asOf(at.head(), at.line().operationId(), act))
                .orElse(Map.of());
        Reach reach = Reach.NOT_NEEDED;
        for (Cut cut : all) {
            Cut conceded = stood.get(cut.piece());
            List<BigDecimal> now = asked.of(List.of(cut));
            List<BigDecimal> then = conceded == null ? List.of() : asked.of(List.of(conceded));
            for (int i = 0; i < now.size(); i++) {
                if (conforms(one, now.get(i), u)) {
                    continue;
                }
                if (i >= then.size() || worse(one, now.get(i), then.get(i))) {
                    return Reach.NOT_ALL;
                }
                reach = Reach.ALL;
            }
        }
        return reach;
    }

    private boolean conforms(FrameSheet.CharacteristicLine one, BigDecimal figure, @Nullable BigDecimal u) {
        return one.lowerLimit() == null && one.upperLimit() == null
                || ConformityDecision.of(
                                figure,
                                new Limits(one.lowerLimit(), one.upperLimit()),
                                one.nominal(),
                                DecisionRule.valueOf(one.rule().name()),
                                u,
                                settings.number("guard.factor"),
                                KEPT)
                        instanceof ConformityDecision.Conforming;
    }

    /** Farther out on the side on which it does not conform. */
    private static boolean worse(FrameSheet.CharacteristicLine one, BigDecimal now, BigDecimal then) {
        BigDecimal upper = one.upperLimit();
        BigDecimal lower = one.lowerLimit();
        boolean above = upper != null && (lower == null || upper.subtract(now).compareTo(now.subtract(lower)) < 0);
        return above ? now.compareTo(then) > 0 : now.compareTo(then) < 0;
    }
}
