package org.trammel.shop.demo;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.SelectOption;
import org.junit.jupiter.api.Test;
import org.trammel.shop.Chromium;

/** What is left of the torques of the titanium hardtail, bolt by bolt in a real browser, up to the second person's signature. */
abstract class DemoWrench extends DemoHands {

    private static final double SMALL_WRENCH_ENDS_Nm = 14;

    /** More taps than its bolts and passes can take. */
    private static final int ENOUGH = 80;

    /** Where the face plate went wrong in a scene before, it is loosened, and all its bolts begin again. */
    @Test
    void allTwentyTwoAreTorquedAndThenWitnessed() {
        Page page = at("T-WRENCH", "DO");
        hands.open(page, "/station/AV26110F");
        page.locator("a[href^='/torques/']").first().click();
        Locator again = page.locator("details:has-text('Loosen it and begin again')");
        if (again.count() > 0) {
            if (again.getAttribute("open") == null) {
                again.locator("summary").click();
            }
            again.locator("input[name='words']").fill("Wrench checked; from the first bolt.");
            Chromium.send(page, again.locator("button"));
        }
        int taps = 0;
        while (page.locator(".clicked").count() > 0) {
            assertThat(++taps).isLessThan(ENOUGH);
            double set = Double.parseDouble(page.locator(".set b").innerText().replace(',', '.'));
            page.locator("#f-bolt-gauge").selectOption(set > SMALL_WRENCH_ENDS_Nm ? "TW-2" : "TW-1");
            Chromium.send(page, page.locator(".clicked .btn.main"));
            assertThat(page.locator(".refusal")).hasCount(0);
        }
        assertThat(page.locator("#h-witness")).containsText("To be witnessed");
        hands.look(page, "torques-to-witness");
        page.locator("input[name^='seen-']").all().forEach(Locator::check);
        DemoCast.Member second = DemoCast.ALL.stream()
                .filter(one -> one.initials().equals("JA"))
                .findFirst()
                .orElseThrow();
        page.locator("#f-signer").selectOption(new SelectOption().setLabel(second.name()));
        page.locator("#f-pin").fill(second.pin());
        Chromium.send(page, page.locator("button:has-text('Sign as witness')"));
        assertThat(page.locator(".torque-head")).containsText("22 of 22");
        hands.look(page, "torques-whole");
    }
}
