package org.trammel.shop.bench;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.trammel.shop.BrowserTest;
import org.trammel.shop.Chromium;
import org.trammel.shop.TestCrew;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.FirstStart;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Roster;
import org.trammel.shop.routes.CharacteristicSheet;
import org.trammel.shop.routes.OperationSheet;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.routes.Rule;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.stations.Station;
import org.trammel.shop.stations.Stations;

/** On an upright tablet a reading of many places is keyed without moving the sheet. */
@BrowserTest("trammel.test.database=enter_in_sight")
class EnterInSightBrowserTest {

    private static final String PASSWORD = "quiet lathe under rain";

    @LocalServerPort
    private int port;

    @Autowired
    private FirstStart firstStart;

    @Autowired
    private Roster roster;

    @Autowired
    private Stations stations;

    @Autowired
    private TestCrew crew;

    @Autowired
    private ApplicationContext beans;

    private WholeShop shop;

    @BeforeAll
    void opens() {
        long keeper = firstStart
                .make(
                        UUID.randomUUID(),
                        firstStart.newCode(),
                        "127.0.0.9",
                        new FirstStart.Entry("QL", "Quinn Lead", PASSWORD, "402817"))
                .id();
        roster.giveRoles(crew.act(keeper), keeper, EnumSet.of(Role.OWNER, Role.QA_LEAD));
        stations.add(crew.act(keeper), new Station("6", "Ream, face, bore", 3, new BigDecimal("30"), false));
        shop = new WholeShop(beans);
        shop.gauge("BORE", "mm", "0.004", LocalDate.of(2027, 1, 1));
        shop.gauge("BORE", "mm", "0.004", LocalDate.of(2027, 1, 1));
    }

    /** A frame with as long a way as the shop's hardtails have, at the reading of its bores. */
    private WholeShop.Frame frame(int places) {
        List<String> points = new ArrayList<>();
        for (int i = 1; i <= places; i++) {
            points.add((i % 2 == 1 ? "upper " : "lower ") + (i + 1) / 2 + " across");
        }
        CharacteristicSheet bore = new CharacteristicSheet(
                "130-1",
                "Head tube seats",
                "mm",
                3,
                false,
                new BigDecimal("44.000"),
                BigDecimal.ZERO,
                new BigDecimal("0.03"),
                "BORE",
                points,
                Reduction.WORST,
                Rule.GUARDED,
                List.of(Signer.WORKER, Signer.SECOND),
                false,
                false,
                false,
                true,
                null,
                0,
                null,
                null,
                "test");
        OperationSheet plain = SmallRoute.op("130")
                .at("6")
                .step("Head tube seats reamed and faced")
                .characteristic(bore)
                .sheet();
        OperationSheet ream = new OperationSheet(
                plain.code(),
                "Ream, face, tap",
                plain.station(),
                plain.point(),
                plain.signers(),
                null,
                false,
                false,
                true,
                false,
                null,
                "Swarf is sharp. Clamp at lugs, never mid-tube.",
                plain.steps(),
                plain.characteristics());
        List<OperationSheet> way = new ArrayList<>();
        way.add(ream);
        for (int code = 140; code < 280; code += 10) {
            way.add(SmallRoute.op(String.valueOf(code)).at("6").step("next").sheet());
        }
        return shop.frame(SmallRoute.of(way.toArray(OperationSheet[]::new)).sheet());
    }

    @ParameterizedTest
    @ValueSource(ints = {6, 8, 10, 12})
    void enterAndEveryFieldAreInSightOnAnUprightTablet(int places) {
        Page page = Chromium.desk("http://localhost:" + port, "QL", PASSWORD);
        try {
            page.setViewportSize(800, 1280);
            page.navigate(
                    "http://localhost:" + port + "/station/" + frame(places).serial());
            page.getByText("Head tube seats", new Page.GetByTextOptions().setExact(true))
                    .first()
                    .click();
            page.locator(".key.enter").waitFor();
            Chromium.picture(page, "upright-" + places + "-places");
            page.evaluate("window.scrollTo(0, 0)");
            double foot = box(page.locator(".tb")).y;
            BoundingBox enter = box(page.locator(".key.enter"));
            assertThat(enter.y + enter.height)
                    .as("Enter ends above the foot of the sheet, which begins at %s", foot)
                    .isLessThanOrEqualTo(foot);
            double keys = box(page.locator(".keypad")).y;
            for (Locator field : page.locator(".points input").all()) {
                BoundingBox one = box(field);
                assertThat(one.y + one.height).as("a field above the keys").isLessThanOrEqualTo(keys);
                assertThat(one.height).as("height of a field").isGreaterThanOrEqualTo(64);
            }
            for (Locator key : page.locator(".keypad .key").all()) {
                assertThat(box(key).height).as("height of a key").isGreaterThanOrEqualTo(64);
            }
        } finally {
            page.context().close();
        }
    }

    private static BoundingBox box(Locator one) {
        return Objects.requireNonNull(one.boundingBox());
    }
}
