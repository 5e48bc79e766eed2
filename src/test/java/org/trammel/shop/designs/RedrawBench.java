package org.trammel.shop.designs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.trammel.shop.ShopTest;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Signed;

/**
 * How long the service takes for a design's sheet with drawing and cut list, from the request to the whole page: read,
 * computed and drawn anew each time, another reach each time. Started by {@code ops/bench/frames}, not with the tests.
 */
@ShopTest
class RedrawBench {

    private static final int WARM_UP = 200;
    private static final int TIMES = 300;

    /** Changes of one draft, whose sheet also shows who changed it. */
    private static final int EACH = 20;

    private static final ThreadMXBean WORK = ManagementFactory.getThreadMXBean();

    @Autowired
    private DrawnFrame.DesignDesk desk;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private TestCrew hands;

    @Autowired
    private Crew crew;

    @Autowired
    private DrawingOffice office;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private Designs designs;

    private DrawnFrame frame;
    private long id;

    @BeforeEach
    void aDraft() {
        frame = new DrawnFrame(desk);
        id = frame.begin();
    }

    @Test
    void aDesignIsRecomputedAndRedrawn() throws Exception {
        long[] nanos = new long[TIMES];
        long[] works = new long[TIMES];
        for (int i = -WARM_UP; i < TIMES; i++) {
            if ((i + WARM_UP) % EACH == 0) {
                id = frame.begin();
            }
            redraw(450 + (i + WARM_UP) % 20);
            Person reader = crew.byId(frame.owner);
            long work = WORK.getCurrentThreadCpuTime();
            long began = System.nanoTime();
            String page = mvc.perform(get("/designs/{id}/frame", id).with(Signed.on(reader)))
                    .andReturn()
                    .getResponse()
                    .getContentAsString();
            if (i >= 0) {
                nanos[i] = System.nanoTime() - began;
                works[i] = WORK.getCurrentThreadCpuTime() - work;
            }
            assertThat(page).contains("class=\"frame-sheet\"");
        }
        PrintStream out = System.out;
        print(out, "by the clock", nanos);
        print(out, "of its thread's own work", works);
    }

    private static void print(PrintStream out, String what, long[] nanos) {
        Arrays.sort(nanos);
        out.printf(
                Locale.ROOT,
                "design sheet computed and drawn, %d times, %s: least %.1f ms, median %.1f ms, p99 %.1f ms%n",
                TIMES,
                what,
                nanos[0] / 1e6,
                nanos[TIMES / 2] / 1e6,
                nanos[TIMES * 99 / 100] / 1e6);
    }

    private void redraw(int reach) {
        Map<GeometryInput, BigDecimal> given = TrailFrame.inputs();
        given.put(GeometryInput.REACH, BigDecimal.valueOf(reach));
        office.change(
                hands.act(frame.owner),
                id,
                null,
                new DesignDraft("Trail frame", "AL6061", "HARDTAIL", null, null, List.of(), given, true));
    }
}
