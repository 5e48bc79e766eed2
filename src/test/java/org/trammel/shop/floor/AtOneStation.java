package org.trammel.shop.floor;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.trammel.shop.Chromium;
import org.trammel.shop.TestCrew;
import org.trammel.shop.gauges.GaugeRange;
import org.trammel.shop.gauges.GaugeRegister;
import org.trammel.shop.gauges.NewGauge;
import org.trammel.shop.materials.LotKind;
import org.trammel.shop.materials.LotRegister;
import org.trammel.shop.materials.NewLot;
import org.trammel.shop.people.FirstStart;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Roster;
import org.trammel.shop.stations.Station;
import org.trammel.shop.stations.Stations;

/** A shop of one station, kept by one person who is owner and QA lead, seen in a real browser in every size of screen. */
public abstract class AtOneStation {

    protected static final String PASSWORD = "quiet lathe under rain";
    protected static final String PIN = "402817";

    private static final LocalDate LAST_YEAR = LocalDate.of(2025, 12, 2);
    private static final LocalDate THIS_YEAR = LocalDate.of(2026, 1, 1);
    private static final LocalDate YEARS_END = LocalDate.of(2026, 12, 31);

    @LocalServerPort
    private int port;

    @Autowired
    private FirstStart firstStart;

    @Autowired
    private Roster roster;

    @Autowired
    private Stations stations;

    @Autowired
    private GaugeRegister register;

    @Autowired
    private LotRegister lots;

    @Autowired
    protected TestCrew crew;

    @Autowired
    protected ApplicationContext beans;

    private final String station;
    protected long keeper;
    protected Page page;

    /** @param station what the one station is called */
    protected AtOneStation(String station) {
        this.station = station;
    }

    @BeforeAll
    void opensTheShop() {
        keeper = firstStart
                .make(
                        UUID.randomUUID(),
                        firstStart.newCode(),
                        "127.0.0.9",
                        new FirstStart.Entry("QL", "Quinn Lead", PASSWORD, PIN))
                .id();
        roster.giveRoles(crew.act(keeper), keeper, EnumSet.of(Role.OWNER, Role.QA_LEAD));
        stations.add(crew.act(keeper), new Station("1", station, 3, new BigDecimal("30"), false));
        page = Chromium.desk(base(), "QL", PASSWORD);
    }

    @AfterAll
    void closesTheShop() {
        page.context().close();
    }

    protected String base() {
        return "http://localhost:" + port;
    }

    protected void lot(String code, LotKind kind, String materialClass, @Nullable LocalDate expires) {
        lots.receive(
                crew.act(keeper),
                new NewLot(
                        code,
                        kind,
                        "a lot",
                        null,
                        materialClass,
                        "",
                        "",
                        null,
                        "a supplier",
                        LAST_YEAR,
                        expires,
                        null,
                        ""));
        lots.certify(crew.act(keeper), code, "batch", "C-1", null);
        lots.release(crew.act(keeper), code);
    }

    protected void gauge(String code, GaugeRange... ranges) {
        register.register(
                crew.act(keeper), code, new NewGauge("gauge of a test", null, "stand", false, Arrays.asList(ranges)));
        register.calibrated(crew.act(keeper), code, THIS_YEAR, YEARS_END, "C-1", null, "as it should be");
    }

    /** The tablet both ways, a telephone and a desk, by day; the tablet upright and a telephone by night. */
    protected void sizes(String name) {
        for (int[] size : List.of(new int[] {1280, 800}, new int[] {800, 1280}, new int[] {390, 844})) {
            page.setViewportSize(size[0], size[1]);
            Chromium.look(page, name + "-" + size[0]);
            assertThat((Integer) page.evaluate("() => document.documentElement.scrollWidth"))
                    .isLessThanOrEqualTo(size[0]);
        }
        page.evaluate("() => document.documentElement.dataset.theme = 'night'");
        Chromium.picture(page, name + "-390-night");
        page.setViewportSize(800, 1280);
        Chromium.picture(page, name + "-800-night");
        page.evaluate("() => document.documentElement.dataset.theme = 'paper'");
        page.setViewportSize(1440, 900);
        Chromium.look(page, name + "-1440");
    }
}
