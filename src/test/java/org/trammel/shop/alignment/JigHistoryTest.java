package org.trammel.shop.alignment;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.drift.JigUses;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Role;
import org.trammel.shop.stations.Station;
import org.trammel.shop.stations.Stations;

/** What a sheet shows of earlier frames on the same axis: those of the frame's own jig, and no other. */
class JigHistoryTest extends OnThePlate {

    private static final AtomicInteger NUMBER = new AtomicInteger();

    @Autowired
    private TableSheets sheets;

    @Autowired
    private JigUses uses;

    @Autowired
    private Stations stations;

    private long welder;
    private String code;
    private String one;
    private String two;

    @BeforeEach
    void twoJigs() {
        welder = shop.hire(Role.WELDER, Role.STATION_WORKER);
        int number = NUMBER.incrementAndGet();
        code = "HJ" + number + "-9";
        String station = "HJ" + number;
        long owner = shop.hire(Role.OWNER);
        stations.add(shop.act(owner), new Station(station, "Jigs " + station, 3, new BigDecimal("30"), false));
        one = jig(owner, "HA" + number, station);
        two = jig(owner, "HB" + number, station);
    }

    private String jig(long owner, String jig, String station) {
        stations.addJig(shop.act(owner), jig, station, LocalDate.parse("2026-01-01"), LocalDate.parse("2027-01-01"));
        return jig;
    }

    /** A frame whose seat tube leans so far over the 300 mm between its stations; at which operation it was read. */
    private Read read(String jig, String high) {
        WholeShop.Frame frame = frame(characteristic(code, "Lean of seat tube", "°", "0.30", "100 to 400"));
        if (!jig.isEmpty()) {
            uses.setUp(shop.act(welder), frame.serial(), "", jig, null);
        }
        long operation = operation(frame);
        seatTube(frame, "150.00", high);
        reduce(frame);
        return new Read(frame, operation);
    }

    private record Read(WholeShop.Frame frame, long operation) {}

    private TableSheet.History history(Read read) {
        return sheets.of(read.operation(), null).history();
    }

    /** A lean is the angle whose tangent is rise over length. */
    private static double lean(double rise) {
        return Math.toDegrees(Math.atan(rise / 300));
    }

    @Test
    void aSheetShowsTheFramesOfItsOwnJigOldestFirst() {
        Read first = read(one, "150.20");
        assertThat(history(first)).as("one alone is no history").isNull();
        Read elsewhere = read(two, "150.90");
        Read second = read(one, "150.40");
        TableSheet.History told = history(second);
        assertThat(told.of()).isEqualTo("Jig " + one + ", Lean of seat tube, last 2");
        assertThat(told.chart().values()).hasSize(2);
        assertThat(told.chart().values().get(0)).isCloseTo(lean(0.2), org.assertj.core.data.Offset.offset(0.001));
        assertThat(told.chart().values().get(1)).isCloseTo(lean(0.4), org.assertj.core.data.Offset.offset(0.001));
        assertThat(history(elsewhere)).isNull();
        // said again, the jig is another: its frames are, too
        uses.setUp(shop.act(welder), elsewhere.frame().serial(), "", one, null);
        assertThat(history(second).chart().values()).hasSize(3);
    }

    @Test
    void aFrameWithoutAJigShowsAllOfItsAxisAndSaysThatNoneIsNoted() {
        read(one, "150.20");
        read(two, "150.30");
        Read none = read("", "150.10");
        TableSheet sheet = sheets.of(none.operation(), null);
        assertThat(sheet.history().of()).isEqualTo("Lean of seat tube, last 3");
        assertThat(sheet.notes()).anyMatch(note -> note.startsWith("No jig is noted for this frame"));
        uses.setUp(shop.act(welder), none.frame().serial(), "", one, null);
        assertThat(sheets.of(none.operation(), null).notes()).noneMatch(note -> note.startsWith("No jig"));
        assertThat(history(none).of()).isEqualTo("Jig " + one + ", Lean of seat tube, last 2");
    }
}
