package org.trammel.calc.metrology;

import java.util.List;

/**
 * Uncertainty budget of one result, in the unit of the result.
 *
 * <p>Two sums stand beside each other: the full one, in which a cause that readings share acts on them together, and
 * that of independent components, in which every reading has all its causes for itself. The full one counts.
 *
 * @param lines one for each kind of cause that acts, in the order of {@link ErrorKind}
 * @param u standard uncertainty with all that readings share
 * @param uIndependent standard uncertainty as if nothing were shared
 */
public record Budget(List<Line> lines, double u, double uIndependent) {

    public Budget {
        lines = List.copyOf(lines);
    }

    /**
     * What one kind of cause brings.
     *
     * @param u its part of the full sum, a root of a sum of squares like the whole
     * @param uIndependent its part as if nothing were shared
     * @param share of the full variance, 0 to 1
     */
    public record Line(ErrorKind kind, double u, double uIndependent, double share) {}

    /** In another unit. */
    Budget times(double factor) {
        return new Budget(
                lines.stream()
                        .map(line ->
                                new Line(line.kind(), line.u() * factor, line.uIndependent() * factor, line.share()))
                        .toList(),
                u * factor,
                uIndependent * factor);
    }
}
