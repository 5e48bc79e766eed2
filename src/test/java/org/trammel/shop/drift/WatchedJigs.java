package org.trammel.shop.drift;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.trammel.shop.ShopTest;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.stations.Station;
import org.trammel.shop.stations.Stations;

/** Two jigs of a station nobody else uses, and an axis nobody else watches. */
@ShopTest
abstract class WatchedJigs {

    private static final AtomicInteger NUMBER = new AtomicInteger();

    @Autowired
    DriftBook book;

    @Autowired
    DriftCharts charts;

    @Autowired
    Stations stations;

    @Autowired
    TestCrew hands;

    @Autowired
    Crew crew;

    @Autowired
    MockMvc mvc;

    long qa;
    long owner;
    String code;
    String one;
    String two;

    @BeforeEach
    void twoJigs() {
        qa = hands.hire(Role.QA_LEAD);
        owner = hands.hire(Role.OWNER);
        int number = NUMBER.incrementAndGet();
        code = "W" + number + "-3";
        String station = "WJ" + number;
        stations.add(hands.act(owner), new Station(station, "Jigs " + number, 3, new BigDecimal("30"), false));
        one = jig("A" + number, station);
        two = jig("B" + number, station);
    }

    private String jig(String jig, String station) {
        stations.addJig(hands.act(owner), jig, station, LocalDate.parse("2026-01-01"), LocalDate.parse("2027-01-01"));
        return jig;
    }

    Series watch(String jig) {
        return book.watch(hands.act(qa), NewSeries.onJig(jig, code, "Rear axle centre offset", "mm", false));
    }

    /** A reading of mm over 0 ± 1. */
    static EarlierReading read(
            String day, String frame, String value, @Nullable String welder, @Nullable String tubes) {
        return new EarlierReading(
                LocalDate.parse(day),
                frame,
                new BigDecimal(value),
                BigDecimal.ZERO,
                new BigDecimal("-1"),
                BigDecimal.ONE,
                welder,
                tubes);
    }

    void takeOver(Series series, EarlierReading... readings) {
        book.takeOver(hands.act(qa), series.id(), List.of(readings), "notebook of the table");
    }

    /** One reading a day from the first of January on. */
    static List<EarlierReading> daily(List<String> values) {
        List<EarlierReading> lines = new ArrayList<>();
        for (String value : values) {
            lines.add(read(
                    LocalDate.parse("2026-01-01").plusDays(lines.size()).toString(),
                    "frame " + (lines.size() + 1),
                    value,
                    null,
                    null));
        }
        return lines;
    }
}
