package org.trammel.shop.ride;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.trammel.shop.routes.CharacteristicSheet;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.travellers.Evidence;

/** What a gauge may show of a part that is as drawn, and of one that is not. */
final class Values {

    private static final BigDecimal TWO = BigDecimal.valueOf(2);

    private Values() {}

    /** Well inside the limits, and not alike at every point. */
    static List<BigDecimal> asDrawn(Evidence.Wanted w) {
        if (CharacteristicSheet.isAnswered(w.unit())) {
            return Collections.nCopies(w.points().size(), BigDecimal.ONE);
        }
        BigDecimal lower = w.lowerLimit();
        BigDecimal upper = w.upperLimit();
        BigDecimal middle;
        if (lower != null && upper != null) {
            middle = w.sided()
                    ? upper.multiply(new BigDecimal("0.2"))
                    : lower.add(upper).divide(TWO);
        } else if (upper != null) {
            middle = upper.multiply(new BigDecimal(w.reduction() == Reduction.COAXIAL ? "0.1" : "0.5"));
        } else {
            middle = lower.multiply(new BigDecimal("1.2"));
        }
        BigDecimal step = step(w);
        List<BigDecimal> values = new ArrayList<>();
        for (int i = 0; i < w.points().size(); i++) {
            values.add(middle.setScale(w.decimals(), RoundingMode.HALF_EVEN)
                    .add(step.multiply(BigDecimal.valueOf(i % 2))));
        }
        return values;
    }

    /** A value as the table says it, and a little more at every further point. */
    static List<BigDecimal> misread(Evidence.Wanted w, String said) {
        BigDecimal value =
                said.startsWith("n") ? w.nominal().add(new BigDecimal(said.substring(1))) : new BigDecimal(said);
        return IntStream.range(0, w.points().size())
                .mapToObj(i -> value.add(step(w).multiply(BigDecimal.valueOf(i))))
                .toList();
    }

    private static BigDecimal step(Evidence.Wanted w) {
        return BigDecimal.ONE.movePointLeft(w.decimals());
    }
}
