package org.trammel.calc.metrology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.trammel.calc.units.Answer;

/** Against all errors tried, group by group. */
class ReadingSpanTest {

    private static final Limits LIMITS = Limits.between(new BigDecimal("-1000"), new BigDecimal("1000"));
    private static final ReadingError ERROR =
            new ReadingError("HG-2", new BigDecimal("-0.06"), new BigDecimal("0.18"), new BigDecimal("20"));

    @ParameterizedTest
    @EnumSource(Reduction.class)
    void theBoundsAreThoseOfAllErrorsTried(Reduction reduction) {
        Random random = new Random(reduction.ordinal());
        for (int turn = 0; turn < 8; turn++) {
            // Three clusters 50 mm apart, each a few tenths wide, or all in one.
            double apart = turn % 2 == 0 ? 50 : 0;
            List<BigDecimal> raw = new ArrayList<>();
            List<Integer> group = new ArrayList<>();
            int count = reduction == Reduction.SINGLE ? 1 : reduction == Reduction.COAXIAL ? 2 : 6;
            for (int i = 0; i < count; i++) {
                group.add(apart == 0 ? 0 : i % 3);
                raw.add(BigDecimal.valueOf(Math.round(1000 * (apart * (i % 3) + random.nextDouble())), 3));
            }
            double least = Double.MAX_VALUE;
            double greatest = -Double.MAX_VALUE;
            for (int way = 0; way < 7 * 7 * 7; way++) {
                int[] steps = {way % 7, way / 7 % 7, way / 49};
                List<BigDecimal> freed = new ArrayList<>();
                for (int i = 0; i < count; i++) {
                    freed.add(raw.get(i).subtract(BigDecimal.valueOf(-60 + 40L * steps[group.get(i)], 3)));
                }
                Reduction.Result.Reduced reduced = (Reduction.Result.Reduced) reduction.of(freed, LIMITS);
                least = Math.min(least, reduced.value().doubleValue());
                greatest = Math.max(greatest, reduced.value().doubleValue());
            }
            ReadingSpan span = ((Answer.Determined<ReadingSpan>) ReadingSpan.of(reduction, raw, LIMITS, ERROR)).value();
            if (reduction == Reduction.WORST || reduction == Reduction.COAXIAL) {
                // bounds of all readings, of which the worst is one; of both distances, as if their errors were apart
                assertThat(span.least().doubleValue()).isLessThanOrEqualTo(least);
                assertThat(span.greatest().doubleValue()).isGreaterThanOrEqualTo(greatest);
            } else {
                assertThat(span.least().doubleValue()).isCloseTo(least, within(1e-9));
                assertThat(span.greatest().doubleValue()).isCloseTo(greatest, within(1e-9));
            }
        }
    }

    /** A difference of two heights near each other stands; of two far apart it may be off by all of the error. */
    @Test
    void aSpanOfNearHeightsStands() {
        ReadingSpan near = span("150.10", "150.35");
        assertThat(near.least()).isEqualByComparingTo("0.25");
        assertThat(near.greatest()).isEqualByComparingTo("0.25");
        ReadingSpan far = span("150.10", "180.35");
        assertThat(far.least()).isEqualByComparingTo("30.01");
        assertThat(far.greatest()).isEqualByComparingTo("30.49");
    }

    @Test
    void withoutReadingsThereIsNone() {
        assertThat(ReadingSpan.of(Reduction.MEAN, List.of(), LIMITS, ERROR)).isInstanceOf(Answer.NotDeterminable.class);
    }

    /** Heights 150, 165 and 180: either of the pairs may share the error, and both ways are tried. */
    @Test
    void aChainIsCutEveryWay() {
        assertThat(groups("150", "165", "180"))
                .containsExactlyInAnyOrder(List.of(List.of(0), List.of(1, 2)), List.of(List.of(0, 1), List.of(2)));
        assertThat(groups("150", "165", "170")).containsExactly(List.of(List.of(0, 1, 2)));
        assertThat(groups("170", "150", "165")).containsExactly(List.of(List.of(1, 2, 0)));
        assertThat(groups("150", "170.001")).containsExactly(List.of(List.of(0), List.of(1)));
        assertThat(groups("150", "170")).containsExactly(List.of(List.of(0, 1)));
        assertThat(groups("150", "150", "165", "180", "180"))
                .allSatisfy(way ->
                        assertThat(way.stream().flatMap(List::stream).sorted()).containsExactly(0, 1, 2, 3, 4))
                .allSatisfy(way -> assertThat(way).anyMatch(group -> group.containsAll(List.of(0, 1))));
        assertThat(groups()).containsExactly(List.of());
        // heights a tenth of that apart are the same place: no cut between 170 and 171
        assertThat(groups("150", "170", "171", "185")).containsExactlyInAnyOrder(List.of(List.of(0), List.of(1, 2, 3)));
    }

    @Test
    void aChainWithTooManyWaysIsCutAtEveryHeight() {
        String[] heights =
                Stream.iterate(100, h -> h + 5).limit(60).map(String::valueOf).toArray(String[]::new);
        List<List<List<Integer>>> ways = groups(heights);
        assertThat(ways).hasSize(1);
        assertThat(ways.get(0)).hasSize(60);
    }

    private static List<List<List<Integer>>> groups(String... heights) {
        return ErrorGroups.of(Stream.of(heights).map(BigDecimal::new).toList(), new BigDecimal("20"));
    }

    private static ReadingSpan span(String... raw) {
        return ((Answer.Determined<ReadingSpan>) ReadingSpan.of(
                        Reduction.SPAN, Stream.of(raw).map(BigDecimal::new).toList(), LIMITS, ERROR))
                .value();
    }

    /** By hand: −0,9 ± 0,1 and 0,2 ± 0,3 are 0,8 to 1,0 and 0 to 0,5 in size, so the greatest of them is 0,8 to 1,0. */
    @Test
    void theSpanOfASizeKnowsNoSide() {
        Limits upper = Limits.atMost(new BigDecimal("0.3"));
        List<BigDecimal> least = List.of(new BigDecimal("-1.0"), new BigDecimal("-0.1"));
        List<BigDecimal> greatest = List.of(new BigDecimal("-0.8"), new BigDecimal("0.5"));
        for (Reduction one : List.of(Reduction.GREATEST, Reduction.WORST)) {
            ReadingSpan span =
                    ((Answer.Determined<ReadingSpan>) ReadingSpan.overSizes(one, least, greatest, upper)).value();
            assertThat(span.least()).isEqualByComparingTo("0.8");
            assertThat(span.greatest()).isEqualByComparingTo("1.0");
        }
        // the mean lies between −0,55 and −0,15
        ReadingSpan mean = ((Answer.Determined<ReadingSpan>)
                        ReadingSpan.overSizes(Reduction.MEAN, least, greatest, upper))
                .value();
        assertThat(mean.least()).isEqualByComparingTo("0.15");
        assertThat(mean.greatest()).isEqualByComparingTo("0.55");
    }
}
