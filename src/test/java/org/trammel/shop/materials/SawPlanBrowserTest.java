package org.trammel.shop.materials;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Media;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.BrowserTest;
import org.trammel.shop.Chromium;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.FirstStart;
import org.trammel.shop.people.Role;

/** The saw plan in a real browser: an empty rack, bars laid on it by hand, the plan on desk, tablet, phone and paper. */
@BrowserTest("trammel.test.database=saw_screens")
class SawPlanBrowserTest {

    private static final String PASSWORD = "quiet lathe under rain";

    @LocalServerPort
    private int port;

    @Autowired
    private FirstStart firstStart;

    @Autowired
    private ApplicationContext beans;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private LotRegister register;

    @Test
    void barsAreLaidByHandAndThePlanIsLookedAtOnEveryScreenAndOnPaper() {
        firstStart.make(
                UUID.randomUUID(),
                firstStart.newCode(),
                "127.0.0.9",
                new FirstStart.Entry("OB", "Odd Builder", PASSWORD, "402817"));
        WholeShop shop = new WholeShop(beans);
        WaitingForTheSaw.frame(shop, jdbc, "030");
        WaitingForTheSaw.frame(shop, jdbc, "030");
        String lot = WaitingForTheSaw.lot(register, shop, shop.hire(Role.QA_LEAD), "AL6061", true);
        try (Page page = Chromium.desk("http://localhost:" + port, "OB", PASSWORD)) {
            page.navigate("http://localhost:" + port + "/shop/saw-plan");
            assertThat(page.content()).contains("Not on the rack", "42 × 1,4 mm");
            for (String[] bar :
                    new String[][] {{"42", "1,4", "3000"}, {"34,9", "1,35", "1500"}, {"22", "1,6", "2000"}}) {
                page.locator("[name=lot]").fill(lot);
                page.locator("[name=outside]").fill(bar[0]);
                page.locator("[name=wall]").fill(bar[1]);
                page.locator("[name=length]").fill(bar[2]);
                page.locator("[name=count]").fill("3");
                page.locator("button:has-text('Lay them on the rack')").click();
                page.locator("tr:has-text('" + bar[0] + " × " + bar[1] + "')").waitFor();
            }
            assertThat(page.locator("main").innerText()).contains("741,2", "back to the rack, " + lot);
            Chromium.look(page, "saw-plan");
            for (int[] size : new int[][] {{1280, 800}, {390, 844}}) {
                page.setViewportSize(size[0], size[1]);
                assertThat(page.evaluate("document.documentElement.scrollWidth <= innerWidth"))
                        .as("as wide as the screen at " + size[0])
                        .isEqualTo(true);
                Chromium.look(page, "saw-plan-" + size[0]);
            }
            page.setViewportSize(794, 1123);
            page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
            assertThat(page.locator("button:has-text('Lay them on the rack')").isVisible())
                    .isFalse();
            assertThat(page.getByText("741,2").first().isVisible()).isTrue();
            Chromium.picture(page, "saw-plan-print");
        }
    }
}
