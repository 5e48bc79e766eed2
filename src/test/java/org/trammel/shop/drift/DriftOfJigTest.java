package org.trammel.shop.drift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.calc.statistics.ControlChart.Alarm;
import org.trammel.calc.statistics.ControlChart.Plotted;
import org.trammel.shop.ShopTest;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.stations.Station;
import org.trammel.shop.stations.Stations;
import org.trammel.shop.travellers.Travellers;

@ShopTest
class DriftOfJigTest {

    private static final AtomicInteger NUMBER = new AtomicInteger();

    /** Rear axles set up in a jig that moves, mm; invented, no single one beyond a tolerance of ±1. */
    private static final List<String> MOVES =
            List.of("0.3", "-0.1", "0.2", "0.4", "0.1", "0.6", "0.5", "0.8", "0.7", "0.9", "0.8", "1.0");

    /** The same on a jig that stands still. */
    private static final List<String> STANDS = List.of(
            "0.3", "-0.1", "0.2", "0.4", "0.1", "0.6", "0.5", "-0.3", "0.0", "0.2", "-0.2", "0.4", "0.3", "0.1", "-0.1",
            "0.5", "0.2", "0.0", "0.3", "-0.2", "0.1", "0.4", "0.2", "0.3", "0.0");

    @Autowired
    private DriftBook book;

    @Autowired
    private DriftCharts charts;

    @Autowired
    private Stations stations;

    @Autowired
    private Travellers travellers;

    @Autowired
    private TestCrew hands;

    private long qa;
    private String jig;
    private Series series;

    @BeforeEach
    void watch() {
        qa = hands.hire(Role.QA_LEAD);
        long owner = hands.hire(Role.OWNER);
        String code = "D" + NUMBER.incrementAndGet();
        stations.add(hands.act(owner), new Station(code, "Jigs " + code, 3, new BigDecimal("30"), false));
        jig = "DJ" + NUMBER.incrementAndGet();
        stations.addJig(hands.act(owner), jig, code, LocalDate.parse("2026-01-01"), LocalDate.parse("2027-01-01"));
        series = book.watch(hands.act(qa), NewSeries.onJig(jig, "080-3", "Rear axle centre offset", "mm", false));
    }

    @Test
    void aJigThatMovesCallsOnceAtTheEighthFrameThoughNoFrameIsBeyondItsTolerance() {
        book.base(hands.act(qa), series.id(), given(null, false));
        book.takeOver(hands.act(qa), series.id(), lines(MOVES.subList(0, 7), 1), "notebook");
        assertThat(charts.of(series.id()).stand()).isEqualTo(Standing.Stand.STILL);
        assertThat(calls()).isEmpty();
        book.takeOver(hands.act(qa), series.id(), lines(MOVES.subList(7, 8), 8), "notebook");
        Charted now = charts.of(series.id());
        assertThat(now.stand()).isEqualTo(Standing.Stand.DRIFTS);
        assertThat(now.driftsSince()).isEqualTo(7);
        Alarm alarm = now.alarms().stream()
                .filter(a -> a.plotted() == Plotted.WEIGHTED_MEAN)
                .findFirst()
                .orElseThrow();
        // The recursion and its opening limits as S. W. Roberts (1959) has them, reckoned here by hand.
        double z = 0;
        for (String value : MOVES.subList(0, 8)) {
            z = 0.2 * Double.parseDouble(value) + 0.8 * z;
        }
        assertThat(alarm.value()).isCloseTo(z, within(1e-12));
        assertThat(alarm.bound()).isCloseTo(2.7 * 0.35 * Math.sqrt(0.2 / 1.8 * (1 - Math.pow(0.8, 16))), within(1e-12));
        assertThat(calls()).singleElement().asString().contains("Check jig " + jig + " before the next tack");
        book.takeOver(hands.act(qa), series.id(), lines(MOVES.subList(8, 12), 9), "notebook");
        assertThat(charts.of(series.id()).driftsSince()).isEqualTo(7);
        assertThat(calls()).hasSize(1);
        assertThat(stations.jig(jig).orElseThrow().stopped()).isFalse();
    }

    @Test
    void theJigIsStoppedWhereTheRuleSaysSo() {
        book.base(hands.act(qa), series.id(), given(null, true));
        book.takeOver(hands.act(qa), series.id(), lines(MOVES, 1), "notebook");
        assertThat(stations.jig(jig).orElseThrow().stopped()).isTrue();
        assertThat(calls()).hasSize(1);
    }

    @Test
    void limitsComeFromTheFirstTwentyAndLaterReadingsLeaveThemAlone() {
        book.takeOver(hands.act(qa), series.id(), lines(STANDS.subList(0, 20), 1), "notebook");
        assertThat(charts.of(series.id()).stand()).isEqualTo(Standing.Stand.NO_BASE);
        book.base(hands.act(qa), series.id(), first(20, null));
        Base frozen = charts.of(series.id()).base();
        // Mean, and mean step over d2 = 1.128, the constant of pairs in every published table of control charts.
        double sum = 0;
        double steps = 0;
        for (int i = 0; i < 20; i++) {
            sum += Double.parseDouble(STANDS.get(i));
            steps += i == 0 ? 0 : Math.abs(Double.parseDouble(STANDS.get(i)) - Double.parseDouble(STANDS.get(i - 1)));
        }
        assertThat(frozen.centre().doubleValue()).isCloseTo(sum / 20, within(1e-9));
        assertThat(frozen.sigma().doubleValue()).isCloseTo(steps / 19 / 1.128, within(1e-3));
        book.takeOver(hands.act(qa), series.id(), lines(STANDS.subList(20, 25), 21), "notebook");
        Charted now = charts.of(series.id());
        assertThat(now.base()).isEqualTo(frozen);
        assertThat(now.inBase()).isEqualTo(20);
        assertThat(now.points()).hasSize(25);
        assertThat(now.stand()).isEqualTo(Standing.Stand.STILL);
    }

    @Test
    void afterACheckAnotherBaseBeginsWithItsReasonAndMayCallAgain() {
        book.base(hands.act(qa), series.id(), given(null, false));
        book.takeOver(hands.act(qa), series.id(), lines(MOVES, 1), "notebook");
        Long seen = charts.of(series.id()).base().id();
        NewBase since = new NewBase(
                Base.Kind.GIVEN,
                null,
                LocalDate.parse("2026-02-01"),
                null,
                BigDecimal.ZERO,
                new BigDecimal("0.35"),
                new BigDecimal("0.2"),
                new BigDecimal("2.7"),
                new BigDecimal("0.5"),
                new BigDecimal("4.77"),
                false,
                "last base",
                "jig checked, left stop moved back",
                seen);
        book.base(hands.act(qa), series.id(), since);
        Charted now = charts.of(series.id());
        assertThat(now.points()).isEmpty();
        assertThat(now.standing().kept().before()).isEqualTo(12);
        assertThat(charts.bases(series.id())).hasSize(2);
        assertThatThrownBy(() -> book.base(hands.act(qa), series.id(), since))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.kind()).isEqualTo(Refusal.Kind.STALE));
    }

    @Test
    void sharesOfTheToleranceLetDifferentFramesStandOnOneChart() {
        Series scaled = book.watch(
                hands.act(qa), NewSeries.onJig(jig, "080-1", "Twist, head tube against seat tube", "°", true));
        book.takeOver(
                hands.act(qa),
                scaled.id(),
                List.of(
                        earlier("2026-01-05", "one", "0.15", "0", "-0.3", "0.3"),
                        earlier("2026-01-06", "two", "10.25", "10", "9.5", "10.5")),
                "notebook");
        assertThat(charts.of(scaled.id()).values()).containsExactly(0.5, 0.5);
    }

    @Test
    void anActSentTwiceIsDoneOnce() {
        Act act = hands.act(qa);
        book.takeOver(act, series.id(), lines(MOVES.subList(0, 3), 1), "notebook");
        book.takeOver(act, series.id(), lines(MOVES.subList(0, 3), 1), "notebook");
        assertThat(charts.of(series.id()).points()).hasSize(3);
    }

    @Test
    void whatCannotBeIsRefusedWithItsField() {
        refused("first", () -> book.base(hands.act(qa), series.id(), first(20, null)));
        refused(
                "weight",
                () -> book.base(
                        hands.act(qa),
                        series.id(),
                        new NewBase(
                                Base.Kind.GIVEN,
                                null,
                                null,
                                null,
                                BigDecimal.ZERO,
                                BigDecimal.ONE,
                                new BigDecimal("1.2"),
                                BigDecimal.ONE,
                                BigDecimal.ONE,
                                BigDecimal.ONE,
                                false,
                                "trial",
                                "begin",
                                null)));
        refused(
                "sigma",
                () -> book.base(
                        hands.act(qa),
                        series.id(),
                        new NewBase(
                                Base.Kind.GIVEN,
                                null,
                                null,
                                null,
                                BigDecimal.ZERO,
                                BigDecimal.ZERO,
                                new BigDecimal("0.2"),
                                BigDecimal.ONE,
                                BigDecimal.ONE,
                                BigDecimal.ONE,
                                false,
                                "trial",
                                "begin",
                                null)));
        refused("lines", () -> book.takeOver(hands.act(qa), series.id(), List.of(), "notebook"));
        refused(
                "lines",
                () -> book.takeOver(
                        hands.act(qa),
                        series.id(),
                        List.of(earlier("2026-01-05", "one", "0.1", "2", "-1", "1")),
                        "notebook"));
        refused(
                "lines",
                () -> book.takeOver(
                        hands.act(qa),
                        series.id(),
                        List.of(earlier("2026-03-19", "one", "0.1", "0", "-1", "1")),
                        "notebook"));
        refused("code", () -> book.watch(hands.act(qa), NewSeries.onJig(jig, "080-3", "Again", "mm", true)));
        assertThatThrownBy(() -> book.base(hands.act(hands.hire(Role.WELDER)), series.id(), given(null, false)))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.kind()).isEqualTo(Refusal.Kind.PERSON));
        assertThat(charts.bases(series.id())).isEmpty();
        assertThat(charts.of(series.id()).points()).isEmpty();
    }

    private static void refused(String field, org.assertj.core.api.ThrowableAssert.ThrowingCallable deed) {
        assertThatThrownBy(deed)
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.field()).isEqualTo(field));
    }

    private List<String> calls() {
        return travellers.openCalls().stream()
                .map(Travellers.CallLine::words)
                .filter(words -> words.contains("jig " + jig + " "))
                .toList();
    }

    static List<EarlierReading> lines(List<String> values, int firstDay) {
        List<EarlierReading> lines = new ArrayList<>();
        for (String value : values) {
            int day = firstDay + lines.size();
            lines.add(earlier("2026-01-" + (day < 10 ? "0" : "") + day, "frame " + day, value, "0", "-1", "1"));
        }
        return lines;
    }

    private static EarlierReading earlier(
            String day, String frame, String value, String nominal, String lower, String upper) {
        return new EarlierReading(
                LocalDate.parse(day),
                frame,
                new BigDecimal(value),
                new BigDecimal(nominal),
                new BigDecimal(lower),
                new BigDecimal(upper),
                null,
                null);
    }

    static NewBase given(@Nullable Long seen, boolean stops) {
        return new NewBase(
                Base.Kind.GIVEN,
                null,
                null,
                null,
                BigDecimal.ZERO,
                new BigDecimal("0.35"),
                new BigDecimal("0.2"),
                new BigDecimal("2.7"),
                new BigDecimal("0.5"),
                new BigDecimal("4.77"),
                stops,
                "trial of the jig",
                "begin",
                seen);
    }

    private static NewBase first(int readings, @Nullable Long seen) {
        return new NewBase(
                Base.Kind.FIRST,
                readings,
                null,
                null,
                null,
                null,
                new BigDecimal("0.2"),
                new BigDecimal("2.7"),
                new BigDecimal("0.5"),
                new BigDecimal("4.77"),
                false,
                "readings of the shop",
                "begin",
                seen);
    }
}
