package org.trammel.calc.metrology;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.trammel.calc.units.Answer;

/**
 * Least and greatest value that a characteristic with {@link Reduction} can have had, read with a gauge whose error is
 * unknown within a span; exact decimals.
 *
 * <pre>
 * single, mean, greatest, least, all but a fifth   y − high … y − low: none of them falls when a reading rises
 * worst                                            least reading − high … greatest reading − low
 * span                                             from the least to the greatest that independent groups can make it:
 *     greatest  max over readings i, j of  x_i − x_j (+ high − low if their errors are independent)
 *     least     every group pushed up as far as it goes under the lowest ceiling that all can keep
 * </pre>
 *
 * The worst reading conforms exactly if all do, which is what its bounds ask.
 *
 * @param least in the unit of the readings
 * @param greatest the same
 */
public record ReadingSpan(BigDecimal least, BigDecimal greatest) {

    /**
     * Finds it.
     *
     * @param raw values as stored, all read with the gauge
     * @param limits of the characteristic
     */
    public static Answer<ReadingSpan> of(Reduction reduction, List<BigDecimal> raw, Limits limits, ReadingError error) {
        if (!(reduction.of(raw, limits) instanceof Reduction.Result.Reduced reduced)) {
            return Answer.none("raw", ((Reduction.Result.NotReducible) reduction.of(raw, limits)).reason());
        }
        if (reduction == Reduction.SPAN) {
            return Answer.of(ofSpan(raw, error));
        }
        if (reduction == Reduction.COAXIAL) {
            return coaxial(
                    raw.stream().map(value -> value.subtract(error.high_mm())).toList(),
                    raw.stream().map(value -> value.subtract(error.low_mm())).toList(),
                    limits);
        }
        boolean worst = reduction == Reduction.WORST;
        BigDecimal low = worst ? Collections.min(raw) : reduced.value();
        BigDecimal high = worst ? Collections.max(raw) : reduced.value();
        return Answer.of(new ReadingSpan(low.subtract(error.high_mm()), high.subtract(error.low_mm())));
    }

    /**
     * The same of values whose own spans are known, such as deviations that were reduced from heights. What their errors
     * share is not known, so a greatest less least is allowed every one of them: the cautious side.
     *
     * @param least of each value, in the order of the sample points
     * @param greatest of each value, no less than its least
     */
    public static Answer<ReadingSpan> over(
            Reduction reduction, List<BigDecimal> least, List<BigDecimal> greatest, Limits limits) {
        if (!(reduction.of(least, limits) instanceof Reduction.Result.Reduced low)
                || !(reduction.of(greatest, limits) instanceof Reduction.Result.Reduced high)) {
            return Answer.none("raw", ((Reduction.Result.NotReducible) reduction.of(least, limits)).reason());
        }
        return switch (reduction) {
            case WORST -> Answer.of(new ReadingSpan(Collections.min(least), Collections.max(greatest)));
            case SPAN ->
                Answer.of(new ReadingSpan(
                        Collections.max(least)
                                .subtract(Collections.min(greatest))
                                .max(BigDecimal.ZERO),
                        Collections.max(greatest).subtract(Collections.min(least))));
            case COAXIAL -> coaxial(least, greatest, limits);
            default -> Answer.of(new ReadingSpan(low.value(), high.value()));
        };
    }

    /** The same of deviations whose size alone is limited. */
    public static Answer<ReadingSpan> overSizes(
            Reduction reduction, List<BigDecimal> least, List<BigDecimal> greatest, Limits limits) {
        return switch (reduction) {
            case SPAN, COAXIAL -> over(reduction, least, greatest, limits);
            case MEAN -> over(reduction, least, greatest, limits).then(mean -> Answer.of(mean.size()));
            default -> {
                List<ReadingSpan> sizes = sizes(least, greatest);
                // under an upper limit alone the worst is the greatest
                yield over(
                        reduction == Reduction.WORST ? Reduction.GREATEST : reduction,
                        sizes.stream().map(ReadingSpan::least).toList(),
                        sizes.stream().map(ReadingSpan::greatest).toList(),
                        limits);
            }
        };
    }

    /** Of a distance the sign does not matter: what may be on either side of zero may be none. */
    private ReadingSpan size() {
        return new ReadingSpan(
                least.signum() * greatest.signum() <= 0
                        ? BigDecimal.ZERO
                        : least.abs().min(greatest.abs()),
                least.abs().max(greatest.abs()));
    }

    private static List<ReadingSpan> sizes(List<BigDecimal> least, List<BigDecimal> greatest) {
        List<ReadingSpan> sizes = new ArrayList<>();
        for (int i = 0; i < least.size(); i++) {
            sizes.add(new ReadingSpan(least.get(i), greatest.get(i)).size());
        }
        return sizes;
    }

    private static Answer<ReadingSpan> coaxial(List<BigDecimal> least, List<BigDecimal> greatest, Limits limits) {
        List<ReadingSpan> sizes = sizes(least, greatest);
        List<BigDecimal> near = sizes.stream().map(ReadingSpan::least).toList();
        List<BigDecimal> far = sizes.stream().map(ReadingSpan::greatest).toList();
        return Reduction.COAXIAL.of(near, limits) instanceof Reduction.Result.Reduced from
                        && Reduction.COAXIAL.of(far, limits) instanceof Reduction.Result.Reduced to
                ? Answer.of(new ReadingSpan(from.value(), to.value()))
                : Answer.none("raw", "A coaxiality needs two readings, square to each other.");
    }

    private static ReadingSpan ofSpan(List<BigDecimal> raw, ReadingError error) {
        BigDecimal least = null;
        BigDecimal greatest = BigDecimal.ZERO;
        for (List<List<Integer>> way : ErrorGroups.of(raw, error.alike_mm())) {
            List<List<BigDecimal>> groups = way.stream()
                    .map(group -> group.stream().map(raw::get).toList())
                    .toList();
            greatest = greatest.max(widest(groups, error));
            BigDecimal narrowest = narrowest(groups, error);
            least = least == null ? narrowest : least.min(narrowest);
        }
        return new ReadingSpan(least == null ? BigDecimal.ZERO : least, greatest);
    }

    private static BigDecimal widest(List<List<BigDecimal>> groups, ReadingError error) {
        BigDecimal play = error.high_mm().subtract(error.low_mm());
        BigDecimal widest = BigDecimal.ZERO;
        for (List<BigDecimal> upper : groups) {
            for (List<BigDecimal> lower : groups) {
                BigDecimal apart = Collections.max(upper).subtract(Collections.min(lower));
                widest = widest.max(upper == lower ? apart : apart.add(play));
            }
        }
        return widest;
    }

    private static BigDecimal narrowest(List<List<BigDecimal>> groups, ReadingError error) {
        BigDecimal ceiling = groups.stream()
                .map(group -> Collections.max(group).subtract(error.high_mm()))
                .max(BigDecimal::compareTo)
                .orElseThrow();
        BigDecimal floor = groups.stream()
                .map(group -> Collections.min(group)
                        .add(error.low_mm().negate().min(ceiling.subtract(Collections.max(group)))))
                .min(BigDecimal::compareTo)
                .orElseThrow();
        return ceiling.subtract(floor);
    }
}
