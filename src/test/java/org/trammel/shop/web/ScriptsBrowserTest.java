package org.trammel.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.Cookie;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.trammel.shop.Chromium;

@Tag("browser")
class ScriptsBrowserTest {

    private static FaceServer server;

    private BrowserContext context;
    private Page page;
    private final List<String> complaints = new ArrayList<>();

    @BeforeAll
    static void opens() {
        server = new FaceServer(Samples.class);
    }

    @AfterAll
    static void closes() {
        server.close();
    }

    @BeforeEach
    void aFreshTablet() {
        server.reachable(true);
        server.sent().clear();
        context = Chromium.window(1280, 800);
        page = context.newPage();
        page.onConsoleMessage(message -> {
            if (message.type().equals("error") && !message.text().startsWith("Failed to load resource")) {
                complaints.add(message.text());
            }
        });
    }

    @AfterEach
    void nothingWasRefusedByThePolicy() {
        context.close();
        assertThat(complaints).isEmpty();
    }

    @Test
    void keysWriteAFigureAndEnterSendsIt() {
        page.navigate(server.at("/samples/key"));
        PlaywrightAssertions.assertThat(page.locator("#f-value")).hasAttribute("inputmode", "none");
        for (String key : List.of("1", "4", ",", ",", "5", "9", "rub out")) {
            page.locator(".key", new Page.LocatorOptions())
                    .getByText(key, exactly())
                    .click();
        }
        page.getByText("non-drive up", new Page.GetByTextOptions().setExact(true))
                .click();
        assertThat(page.inputValue("#f-value")).isEqualTo("14,5");
        page.locator(".key.enter").click();
        page.waitForURL("**/samples/key?done");
        assertThat(server.sent()).singleElement().satisfies(form -> {
            assertThat(form).containsEntry("value", "14,5").containsEntry("side", "NON_DRIVE");
            assertThat(form.get("actId")).matches("[0-9a-f-]{36}");
            assertThat(form.get("deviceAt")).matches("\\d{4}-\\d\\d-\\d\\dT.*Z");
        });
    }

    @Test
    void wordsThatTurnRightToLeftTurnNeitherNameNorTimeBesideThem() {
        page.navigate(server.at("/samples/key"));
        Object inOrder = page.evaluate("""
                () => {
                  const line = document.createElement('p');
                  line.append(document.createElement('b'), ' ', document.createElement('span'));
                  line.firstChild.textContent = 'left port \\u202eturned';
                  line.lastChild.textContent = '09:06';
                  document.querySelector('main').prepend(line);
                  const left = at => {
                    const one = document.createRange();
                    one.setStart(line.lastChild.firstChild, at);
                    one.setEnd(line.lastChild.firstChild, at + 1);
                    return one.getBoundingClientRect().left;
                  };
                  return left(0) < left(4);
                }""");
        assertThat(inOrder).isEqualTo(true);
    }

    @Test
    void aLostAnswerKeepsThePageAndTheSameActIsSentAgain() {
        page.navigate(server.at("/samples/key"));
        page.fill("#f-value", "0,3");
        server.reachable(false);
        page.locator(".key.enter").click();
        page.waitForSelector(".strip.unsent");
        assertThat(page.isEnabled(".key.enter")).isTrue();
        assertThat(page.inputValue("#f-value")).isEqualTo("0,3");
        server.reachable(true);
        page.locator(".key.enter").click();
        page.waitForURL("**/samples/key?done");
        List<String> ids =
                server.sent().stream().map(form -> form.get("actId")).distinct().toList();
        assertThat(ids).hasSize(1);
    }

    @Test
    void changedContentAfterALostAnswerIsAnotherAct() {
        page.navigate(server.at("/samples/key"));
        page.fill("#f-value", "0,3");
        server.reachable(false);
        page.locator(".key.enter").click();
        page.waitForSelector(".strip.unsent");
        server.reachable(true);
        page.fill("#f-value", "0,4");
        page.locator(".key.enter").click();
        page.waitForURL("**/samples/key?done");
        assertThat(server.sent().stream().map(form -> form.get("actId")).distinct())
                .hasSize(2);
    }

    @Test
    void aRefusedFormComesBackWithTheFocusOnItsRefusal() {
        page.navigate(server.at("/samples/key"));
        page.fill("#f-value", "refuse");
        page.locator(".key.enter").click();
        page.waitForSelector(".refusal");
        // The browser gives the focus when it first draws the page, which is after the element is there.
        PlaywrightAssertions.assertThat(page.locator(".refusal")).isFocused();
        assertThat(page.inputValue("#f-value")).isEqualTo("refuse");
    }

    @Test
    void everythingWorksWithoutScript() {
        try (BrowserContext bare = Chromium.withoutScripts()) {
            Page plain = bare.newPage();
            plain.navigate(server.at("/samples/key"));
            assertThat(plain.locator(".key.digit").first().isVisible()).isFalse();
            plain.fill("#f-value", "0,3");
            plain.getByText("drive up", new Page.GetByTextOptions().setExact(true))
                    .click();
            plain.locator(".key.enter").click();
            plain.waitForURL("**/samples/key?done");
            plain.getByText("Night sheet").click();
            plain.waitForSelector("html[data-theme=night]");
            assertThat(server.sent().get(0)).containsEntry("value", "0,3").containsEntry("side", "DRIVE");
        }
    }

    @Test
    void aReaderTypesIntoTheScanFieldWhereverTheFocusIs() {
        readerAtHand();
        page.keyboard().type("AV26-101-H");
        page.keyboard().press("Enter");
        page.waitForURL("**/samples/frames?code=AV26-101-H");
    }

    /** The page's clock stands, so that a slow machine types as fast as a reader. */
    private void readerAtHand() {
        page.clock().install();
        page.navigate(server.at("/samples/desk"));
        page.waitForLoadState();
        page.locator(".desk .tb a").first().focus();
        page.clock().pauseAt(System.currentTimeMillis() + 60_000);
    }

    @Test
    void aCodeStaysWholeWhenTheScanFieldTakesTheFocusInItsMiddle() {
        readerAtHand();
        page.evaluate("document.addEventListener('keyup', (event) => {"
                + " if (event.key === '6') document.querySelector('form.scan input[name=code]').focus() })");
        page.keyboard().type("AV26-101-H");
        page.keyboard().press("Enter");
        page.waitForURL("**/samples/frames?code=AV26-101-H");
    }

    @Test
    void theNightSheetComesAtOnceAndStays() {
        page.navigate(server.at("/samples/desk"));
        page.getByText("Night sheet").click();
        page.waitForSelector("html[data-theme=night]");
        page.reload();
        assertThat(page.getAttribute("html", "data-theme")).isEqualTo("night");
    }

    @Test
    void whileTheGlassIsWipedNothingCanBeTapped() {
        page.clock().install();
        page.navigate(server.at("/samples/key"));
        page.waitForSelector("[data-behaviour=wipe]:not([hidden])");
        page.click("[data-behaviour=wipe]");
        assertThat(page.evaluate("document.querySelector('.field').inert")).isEqualTo(true);
        page.clock().runFor(10_500);
        assertThat(page.evaluate("document.querySelector('.field').inert")).isEqualTo(false);
    }

    @Test
    void axeFindsNothingOnAnyPartOfTheSheet() {
        for (String theme : List.of("paper", "night")) {
            context.addCookies(List.of(new Cookie("trammel-theme", theme).setUrl(server.at("/"))));
            for (String sample : List.of("desk", "station", "weld", "key")) {
                page.navigate(server.at("/samples/" + sample));
                Chromium.requireNothingForAxe(page, sample + " on " + theme);
            }
        }
    }

    private static com.microsoft.playwright.Locator.GetByTextOptions exactly() {
        return new com.microsoft.playwright.Locator.GetByTextOptions().setExact(true);
    }
}
