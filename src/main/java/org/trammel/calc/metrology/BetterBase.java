package org.trammel.calc.metrology;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.Answer;
import org.trammel.calc.units.DecimalSign;

/**
 * Which other way to measure would decide what the present readings leave undecided, told from the budget before anybody
 * measures: the uncertainty of a measurement hangs on where and with what it is read, not on what is read.
 *
 * <p>A base decides if the same value, read on it, would be conforming or not conforming. How likely it decides whatever
 * it reads follows from what is known now:
 *
 * <pre>
 * y' is normal about y with variance u² + u'² − 2 cov(y, y'),   cov by what both have in common
 * chance = P(y' conforming) + P(y' not conforming)
 * </pre>
 *
 * <p>Bases are told by their budgets, whatever uncertainty the shop has set for the present way.
 *
 * <p>Source: JCGM 100:2008, 5.2.2; a-priori knowledge taken as weak, as in JCGM 106:2012, 6.4.2 (from memory).
 *
 * @param now as measured
 * @param decision on it
 * @param prospects one for each base, in the order given
 */
public record BetterBase(MeasuredDeviation now, ConformityDecision decision, List<Prospect> prospects) {

    public BetterBase {
        prospects = List.copyOf(prospects);
    }

    /** A tube whose axis is read at two ends of a base. */
    public enum Tube {
        HEAD_TUBE,
        SEAT_TUBE
    }

    /**
     * Another way to read a tube: at two centres, so far apart about the middle of the present ones.
     *
     * @param name as a sentence has it, such as "the mandrel over 300 mm"
     * @param length_mm between the two, along the tube
     * @param gauge id of the gauge
     * @param contributions causes of doubt about each reading on it
     */
    public record Base(String name, Tube tube, double length_mm, String gauge, List<Contribution> contributions) {

        public Base {
            contributions = List.copyOf(contributions);
        }
    }

    /**
     * What a base would do.
     *
     * @param u standard uncertainty on it, mm or degrees
     * @param decision on the present value with that uncertainty
     * @param decides whether it is one of the two
     * @param chance that a reading on it decides, 0 to 1
     */
    public record Prospect(Base base, BigDecimal u, ConformityDecision decision, boolean decides, double chance) {}

    /** The first base in the given order, which is that of effort, that would decide the present value. */
    public Optional<Prospect> proposed() {
        return decision instanceof ConformityDecision.Undecided
                ? prospects.stream().filter(Prospect::decides).findFirst()
                : Optional.empty();
    }

    /** One sentence. */
    public String words(DecimalSign sign) {
        String unit = now.what().unit().equals("mm") ? " mm" : "°";
        String value = "The " + now.what().words() + ", "
                + sign.write(Figure.rounded(decision.basis().value().doubleValue(), 3)) + unit + ", is "
                + decision.word();
        if (!(decision instanceof ConformityDecision.Undecided)) {
            return value + ".";
        }
        return proposed()
                .map(best -> value + ". Measure with " + best.base().name() + " to decide: u falls from "
                        + sign.write(now.judgedUncertainty()) + " to " + sign.write(best.u()) + unit
                        + ", and the same value would be " + best.decision().word() + ".")
                .orElse(value + ", and would be "
                        + (prospects.size() == 1
                                ? "with " + prospects.get(0).base().name()
                                : "with each base looked at")
                        + " as well: it lies too near its limit.");
    }

    /**
     * Looks ahead.
     *
     * @param readings as taken
     * @param what deviation to decide on
     * @param judging of it
     * @param bases other ways to measure, the least effort first
     */
    public static Answer<BetterBase> of(PlateReadings readings, Deviation what, Judging judging, List<Base> bases) {
        return Alignment.of(readings).then(alignment -> alignment.of(what)).then(now -> {
            List<Prospect> prospects = new ArrayList<>();
            for (Base base : bases) {
                Answer<Prospect> prospect = prospect(readings, now, judging, base);
                if (prospect instanceof Answer.NotDeterminable<Prospect> none) {
                    return new Answer.NotDeterminable<>(none.gaps());
                }
                prospects.add(((Answer.Determined<Prospect>) prospect).value());
            }
            return Answer.of(new BetterBase(now, judging.judge(now), prospects));
        });
    }

    private static Answer<Prospect> prospect(
            PlateReadings readings, MeasuredDeviation now, Judging judging, Base base) {
        List<AxisStation> present = base.tube() == Tube.HEAD_TUBE ? readings.headTube() : readings.seatTube();
        if (present.size() < 2) {
            return Answer.none(
                    "bases", "The tube of " + base.name() + " was not read, so nothing is known of its axis.");
        }
        if (!(Double.isFinite(base.length_mm()) && base.length_mm() > 0)) {
            return Answer.none(
                    "bases",
                    "The length of " + base.name() + ", " + Figure.written(base.length_mm()) + " mm, is not above 0.");
        }
        List<AxisStation> planned = stations(present, base);
        PlateReadings other =
                base.tube() == Tube.HEAD_TUBE ? readings.withHeadTube(planned) : readings.withSeatTube(planned);
        return prospect(readings, other, now, judging, base);
    }

    private static Answer<Prospect> prospect(
            PlateReadings readings, PlateReadings planned, MeasuredDeviation now, Judging judging, Base base) {
        return Alignment.model(readings)
                .then(first -> Alignment.model(planned)
                        .then(second -> Answer.of(together(first, second, now, judging, base))));
    }

    /**
     * Looks ahead at one base whose readings are known as they would be taken.
     *
     * @param planned the readings with those on the base in the place of the present ones
     */
    public static Answer<Prospect> of(
            PlateReadings readings, PlateReadings planned, Deviation what, Judging judging, Base base) {
        return Alignment.of(readings)
                .then(alignment -> alignment.of(what))
                .then(now -> prospect(readings, planned, now, judging, base));
    }

    /** Two centres on the present axis, as far apart as the base. */
    private static List<AxisStation> stations(List<AxisStation> present, Base base) {
        List<Vec> points = present.stream()
                .map(s -> new Vec(s.x_mm(), s.y_mm(), s.height().height_mm()))
                .toList();
        Vec lower = points.get(0);
        Vec upper = points.get(points.size() - 1);
        Vec middle = lower.plus(upper).times(0.5);
        Vec half = upper.minus(lower).unit().times(base.length_mm() / 2);
        return List.of(
                station(middle.minus(half), "lower end of " + base.name(), base),
                station(middle.plus(half), "upper end of " + base.name(), base));
    }

    private static AxisStation station(Vec at, String name, Base base) {
        return new AxisStation(
                at.x(), at.y(), CentreHeight.at(new RawReading(name, at.z(), base.gauge(), base.contributions())));
    }

    /** Both measurements as functions of all quantities of both; what they have in common stands there once. */
    private static Prospect together(
            FrameModel first, FrameModel second, MeasuredDeviation now, Judging judging, Base base) {
        List<Quantity> all = new ArrayList<>(first.quantities());
        int[] places = new int[second.quantities().size()];
        for (int i = 0; i < places.length; i++) {
            int at = all.indexOf(second.quantities().get(i));
            places[i] = at < 0 ? all.size() : at;
            if (at < 0) {
                all.add(second.quantities().get(i));
            }
        }
        int inFirst = first.told().indexOf(now.what());
        int inSecond = second.told().indexOf(now.what());
        UnaryOperator<double[]> both = q -> {
            double[] own = new double[first.quantities().size()];
            System.arraycopy(q, 0, own, 0, own.length);
            double[] other = new double[places.length];
            for (int i = 0; i < places.length; i++) {
                other[i] = q[places[i]];
            }
            return new double[] {first.apply(own)[inFirst], second.apply(other)[inSecond]};
        };
        Propagation propagation = Propagation.of(all, both);
        MeasuredDeviation planned = new MeasuredDeviation(now.what(), now.value(), propagation.budget(1));
        ConformityDecision decision = judging.judge(planned.judgedValue(), planned.judgedUncertainty());
        double variance =
                propagation.covariance(0, 0) + propagation.covariance(1, 1) - 2 * propagation.covariance(0, 1);
        double spread = Math.sqrt(Math.max(0, variance)) * (now.what().angle() ? Math.toDegrees(1) : 1);
        return new Prospect(base, planned.judgedUncertainty(), decision, decides(decision), chance(decision, spread));
    }

    private static boolean decides(ConformityDecision decision) {
        return decision instanceof ConformityDecision.Conforming
                || decision instanceof ConformityDecision.NotConforming;
    }

    private static double chance(ConformityDecision decision, double spread) {
        if (decision instanceof ConformityDecision.GaugeUnfit) {
            return 0;
        }
        if (!(spread > 0)) {
            return decides(decision) ? 1 : 0;
        }
        DecisionBasis basis = decision.basis();
        NormalDistribution next = new NormalDistribution(basis.value().doubleValue(), spread);
        double from = bound(basis.conformingFrom(), Double.NEGATIVE_INFINITY);
        double to = bound(basis.conformingTo(), Double.POSITIVE_INFINITY);
        double below = bound(basis.notConformingBelow(), Double.NEGATIVE_INFINITY);
        double above = bound(basis.notConformingAbove(), Double.POSITIVE_INFINITY);
        double conforming = next.cumulativeProbability(to) - next.cumulativeProbability(from);
        double not = next.cumulativeProbability(below) + 1 - next.cumulativeProbability(above);
        return Math.min(1, Math.max(0, conforming) + not);
    }

    private static double bound(@Nullable BigDecimal bound, double open) {
        return bound == null ? open : bound.doubleValue();
    }
}
