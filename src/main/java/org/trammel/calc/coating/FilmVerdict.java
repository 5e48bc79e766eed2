package org.trammel.calc.coating;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.units.Answer;

/**
 * The film of a frame, or of one of its layers, judged by a rule.
 *
 * <p>Means are compared without rounding: a mean of n readings lies on the right side of a limit exactly if their sum lies on
 * that side of n times the limit.
 *
 * @param areas each with its mean, in the order they were given
 * @param readings how many there are
 * @param mean_um of all readings, to a thousandth
 * @param deviation_um standard deviation of all readings (n − 1), to a thousandth; null for a single one
 * @param least_um the thinnest reading
 * @param most_um the thickest
 * @param below how many readings lie below the thickness asked for
 * @param findings one for each part of the rule, at least one
 */
public record FilmVerdict(
        List<AreaMean> areas,
        int readings,
        BigDecimal mean_um,
        @Nullable BigDecimal deviation_um,
        BigDecimal least_um,
        BigDecimal most_um,
        int below,
        List<FilmFinding> findings) {

    /** Thickest film that a gauge for these films shows; beyond stands a slip of the hand. */
    public static final BigDecimal GREATEST_UM = BigDecimal.valueOf(1500);

    private static final int MOST_READINGS = 5000;
    private static final int SPOT_READINGS = 3;
    private static final BigDecimal FLOOR = new BigDecimal("0.8");

    public FilmVerdict {
        areas = List.copyOf(areas);
        findings = List.copyOf(findings);
    }

    /**
     * Mean of an area.
     *
     * @param mean_um to a thousandth; of the means of its spots where the rule goes by spots
     * @param spots_um means of its spots, to a thousandth
     */
    public record AreaMean(String name, BigDecimal mean_um, List<BigDecimal> spots_um) {

        public AreaMean {
            spots_um = List.copyOf(spots_um);
        }
    }

    /** Whether every part of the rule is met. */
    public boolean conforming() {
        return findings.stream().allMatch(FilmFinding::conforming);
    }

    /** Judges; without an answer where a reading or a limit is none or there are too few. */
    public static Answer<FilmVerdict> of(List<FilmArea> areas, FilmRule rule) {
        List<Answer.Gap> gaps = new ArrayList<>();
        readings(areas, gaps);
        limits(rule, gaps);
        if (rule instanceof FilmRule.SpotsAndAreas) {
            spots(areas, gaps);
        }
        if (!gaps.isEmpty()) {
            return new Answer.NotDeterminable<>(gaps);
        }
        return Answer.of(judged(areas, rule));
    }

    private static void readings(List<FilmArea> areas, List<Answer.Gap> gaps) {
        int count = 0;
        for (FilmArea area : areas) {
            if (area.readings_um().isEmpty()) {
                gaps.add(new Answer.Gap("areas", "The area " + area.name() + " has no reading."));
            }
            for (BigDecimal reading : area.readings_um()) {
                count++;
                if (reading.signum() <= 0 || reading.compareTo(GREATEST_UM) > 0) {
                    gaps.add(new Answer.Gap(
                            "areas",
                            "The reading of " + said(reading) + " µm on " + area.name()
                                    + " is no film: a film lies above 0" + " and up to " + said(GREATEST_UM) + " µm."));
                }
            }
        }
        if (count == 0 && gaps.isEmpty()) {
            gaps.add(new Answer.Gap("areas", "There is no reading."));
        }
        if (count > MOST_READINGS) {
            gaps.add(new Answer.Gap("areas", "There are more than " + MOST_READINGS + " readings."));
        }
    }

    private static void limits(FilmRule rule, List<Answer.Gap> gaps) {
        if (rule instanceof FilmRule.EightyTwenty eighty) {
            limit("nominal", "thickness asked for", eighty.nominal_um(), gaps);
            most(eighty.nominal_um(), eighty.most_um(), gaps);
        } else if (rule instanceof FilmRule.SpotsAndAreas spots) {
            limit("least", "least thickness", spots.least_um(), gaps);
            most(spots.least_um(), spots.most_um(), gaps);
        } else if (rule instanceof FilmRule.MeanOfAreas mean) {
            limit("least", "least thickness", mean.least_um(), gaps);
        }
    }

    private static void limit(String input, String what, BigDecimal limit, List<Answer.Gap> gaps) {
        if (limit.signum() <= 0 || limit.compareTo(GREATEST_UM) > 0) {
            gaps.add(new Answer.Gap(
                    input,
                    "The " + what + ", " + said(limit) + " µm, does not lie above 0 and up to " + said(GREATEST_UM)
                            + " µm."));
        }
    }

    private static void most(BigDecimal least, @Nullable BigDecimal most, List<Answer.Gap> gaps) {
        if (most != null && most.compareTo(least) < 0) {
            gaps.add(new Answer.Gap(
                    "most", "The most, " + said(most) + " µm, is less than the least, " + said(least) + " µm."));
        }
    }

    private static void spots(List<FilmArea> areas, List<Answer.Gap> gaps) {
        for (FilmArea area : areas) {
            for (int spot = 0; spot < area.spots().size(); spot++) {
                if (area.spots().get(spot).size() < SPOT_READINGS) {
                    gaps.add(new Answer.Gap(
                            "areas",
                            "Spot " + (spot + 1) + " of " + area.name() + " has "
                                    + area.spots().get(spot).size() + " readings; the mean of a spot needs "
                                    + SPOT_READINGS + " or more."));
                }
            }
        }
    }

    private static FilmVerdict judged(List<FilmArea> areas, FilmRule rule) {
        List<BigDecimal> all =
                areas.stream().flatMap(area -> area.readings_um().stream()).toList();
        List<FilmFinding> findings = new ArrayList<>();
        BigDecimal asked;
        if (rule instanceof FilmRule.EightyTwenty eighty) {
            asked = eighty.nominal_um();
            eightyTwenty(all, eighty, findings);
        } else if (rule instanceof FilmRule.SpotsAndAreas spots) {
            asked = spots.least_um();
            spotsAndAreas(areas, spots, findings);
        } else {
            asked = ((FilmRule.MeanOfAreas) rule).least_um();
            meanOfAreas(areas, asked, findings);
        }
        boolean bySpots = rule instanceof FilmRule.SpotsAndAreas;
        return new FilmVerdict(
                areas.stream().map(area -> mean(area, bySpots)).toList(),
                all.size(),
                Exact.mean(all).rounded(),
                deviation(all),
                Collections.min(all),
                Collections.max(all),
                below(all, asked),
                findings);
    }

    private static AreaMean mean(FilmArea area, boolean bySpots) {
        List<Exact> spots = area.spots().stream().map(Exact::mean).toList();
        Exact mean = bySpots ? Exact.meanOf(spots) : Exact.mean(area.readings_um());
        return new AreaMean(
                area.name(), mean.rounded(), spots.stream().map(Exact::rounded).toList());
    }

    private static int below(List<BigDecimal> readings, BigDecimal limit) {
        return (int) readings.stream()
                .filter(reading -> reading.compareTo(limit) < 0)
                .count();
    }

    private static @Nullable BigDecimal deviation(List<BigDecimal> all) {
        if (all.size() < 2) {
            return null;
        }
        BigDecimal n = BigDecimal.valueOf(all.size());
        BigDecimal sum = all.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal squares =
                all.stream().map(reading -> reading.multiply(reading)).reduce(BigDecimal.ZERO, BigDecimal::add);
        BigDecimal variance = n.multiply(squares)
                .subtract(sum.multiply(sum))
                .divide(n.multiply(n.subtract(BigDecimal.ONE)), MathContext.DECIMAL64);
        return variance.sqrt(MathContext.DECIMAL64).setScale(3, RoundingMode.HALF_UP);
    }

    private static void eightyTwenty(List<BigDecimal> all, FilmRule.EightyTwenty rule, List<FilmFinding> findings) {
        Exact mean = Exact.mean(all);
        findings.add(new FilmFinding(
                mean.compareTo(rule.nominal_um()) >= 0,
                "The mean of " + all.size() + " readings is " + mean.said() + " µm; at least " + said(rule.nominal_um())
                        + " µm are asked for."));
        BigDecimal floor = rule.nominal_um().multiply(FLOOR);
        BigDecimal least = Collections.min(all);
        findings.add(new FilmFinding(
                least.compareTo(floor) >= 0,
                "The thinnest reading is " + said(least) + " µm; none may lie below " + said(floor)
                        + " µm, 80 % of it."));
        int below = below(all, rule.nominal_um());
        findings.add(new FilmFinding(
                rule.strict() ? 5 * below < all.size() : 5 * below <= all.size(),
                below + " of " + all.size() + " readings lie below " + said(rule.nominal_um()) + " µm; "
                        + (rule.strict() ? "fewer than" : "at most") + " 20 % may."));
        if (rule.most_um() != null) {
            BigDecimal most = Collections.max(all);
            findings.add(new FilmFinding(
                    most.compareTo(rule.most_um()) <= 0,
                    "The thickest reading is " + said(most) + " µm; none may pass " + said(rule.most_um()) + " µm."));
        }
    }

    private static void spotsAndAreas(List<FilmArea> areas, FilmRule.SpotsAndAreas rule, List<FilmFinding> findings) {
        BigDecimal least = rule.level().leastOfSpot_um(rule.least_um());
        BigDecimal most = rule.level().mostOfSpot_um(rule.most_um());
        for (FilmArea area : areas) {
            List<Exact> spots = area.spots().stream().map(Exact::mean).toList();
            for (int spot = 0; spot < spots.size(); spot++) {
                findings.add(
                        within("The mean of spot " + (spot + 1) + " of " + area.name(), spots.get(spot), least, most));
            }
            findings.add(within(
                    "The mean of " + area.name(),
                    Exact.meanOf(spots),
                    rule.least_um(),
                    rule.level() == FilmRule.Level.FIVE ? null : rule.most_um()));
        }
    }

    private static FilmFinding within(String what, Exact mean, BigDecimal least, @Nullable BigDecimal most) {
        boolean holds = mean.compareTo(least) >= 0 && (most == null || mean.compareTo(most) <= 0);
        return new FilmFinding(
                holds,
                what + " is " + mean.said() + " µm; "
                        + (most == null
                                ? "at least " + said(least) + " µm are asked for."
                                : said(least) + " to " + said(most) + " µm are allowed."));
    }

    private static void meanOfAreas(List<FilmArea> areas, BigDecimal least, List<FilmFinding> findings) {
        List<Exact> means =
                areas.stream().map(area -> Exact.mean(area.readings_um())).toList();
        Exact mean = Exact.meanOf(means);
        findings.add(new FilmFinding(
                mean.compareTo(least) >= 0,
                "The mean of " + means.size() + " areas is " + mean.said() + " µm; at least " + said(least)
                        + " µm are asked for."));
        BigDecimal floor = least.multiply(FLOOR);
        for (int area = 0; area < means.size(); area++) {
            findings.add(new FilmFinding(
                    means.get(area).compareTo(floor) >= 0,
                    "The mean of " + areas.get(area).name() + " is "
                            + means.get(area).said() + " µm; none may lie below " + said(floor)
                            + " µm, 80 % of the least."));
        }
    }

    static String said(BigDecimal figure) {
        return figure.signum() == 0
                ? "0"
                : figure.stripTrailingZeros().toPlainString().replace('-', '\u2212');
    }
}
