package org.trammel.shop.ride;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.imageio.ImageIO;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.TestClock;
import org.trammel.shop.routes.CharacteristicSheet;
import org.trammel.shop.travellers.Evidence;
import org.trammel.shop.travellers.FrameSheet;

/** The tablet of one station, worked by hand. */
final class Tablet {

    /** A little under the time after which a tablet locks. */
    private static final Duration OPEN = Duration.ofMinutes(9);

    private final Sheets sheets;
    private final TestClock clock;
    private final String token;
    private final Set<Hand> tapped = new HashSet<>();
    private Page page;
    private @Nullable Hand doer;
    private @Nullable Hand second;
    private Instant used = Instant.MIN;

    Tablet(Sheets sheets, TestClock clock, String token) {
        this.sheets = sheets;
        this.clock = clock;
        this.token = token;
        this.page = sheets.tablet(token);
    }

    Page page() {
        return page;
    }

    /** Puts somebody to work here, who keys the PIN if they are not signed on. */
    void worksHere(Hand who) {
        forgetTheLocked();
        if (!who.equals(doer)) {
            if (who.equals(second)) {
                changePlaces();
            } else {
                signOn(who, "DOER");
                doer = who;
            }
        }
        used = clock.instant();
    }

    /** Two people at one tablet, without anybody signing off. */
    void workHere(Hand who, Hand beside) {
        worksHere(who);
        if (!beside.equals(second)) {
            signOn(beside, "SECOND");
            second = beside;
        }
    }

    private void forgetTheLocked() {
        if (clock.instant().isAfter(used.plus(OPEN))) {
            doer = null;
            second = null;
        }
    }

    /** The first time by tapping their name and the keys; after that the name is opened and the PIN is typed. */
    private void signOn(Hand who, String place) {
        if (tapped.add(who)) {
            sheets.open(page, "/sign-on?all=true&place=" + place);
            Sheets.send(
                    page,
                    () -> page.locator(".crew li a", new Page.LocatorOptions().setHasText(who.name()))
                            .click());
            page.locator("#f-pin[inputmode='none']").waitFor();
            tap(Hand.PIN);
        } else {
            sheets.open(page, "/sign-on?all=true&place=" + place + "&person=" + who.id());
            page.locator("#f-pin").fill(Hand.PIN);
        }
        Sheets.send(page, () -> page.locator(".key.enter").click());
    }

    private void changePlaces() {
        sheets.open(page, "/sign-on");
        Sheets.send(page, () -> page.getByText("Change places").click());
        Hand before = doer;
        doer = second;
        second = before;
    }

    void tap(String keys) {
        for (String key : keys.split("")) {
            page.locator(".key[data-key='" + key + "']").click();
        }
    }

    void open(String path) {
        sheets.open(page, "/station/" + path);
        used = clock.instant();
    }

    /** Opens what a sheet of the frame leads to. */
    void sheet(String path) {
        sheets.open(page, path);
        used = clock.instant();
    }

    /** A second sheet at the same tablet; what was open on the first one stays as it was. */
    Page leavesOpen() {
        Page old = page;
        page = old.context().newPage();
        return old;
    }

    /** What the plate asks for now; empty where the page has none. */
    String heading() {
        Locator heading = page.locator(".plate h2");
        return heading.count() == 0 ? "" : heading.first().innerText();
    }

    boolean shows(String selector) {
        return page.locator(selector).count() > 0;
    }

    /** What was refused, which nobody has to look for. */
    String refusal() {
        Locator said = page.locator(".refusal");
        if (said.count() == 0) {
            return "";
        }
        assertThat(said.boundingBox().y).as("the refusal is in sight").isNotNegative();
        return said.innerText();
    }

    void press(String selector) {
        Sheets.send(page, () -> page.locator(selector).first().click());
    }

    void photograph() {
        page.locator(".plate input[type='file']").setInputFiles(new FilePayload("step.png", "image/png", PICTURE));
        press(".plate .btn.main");
    }

    /** Keys a reading on the sheet of its characteristic and enters it. */
    void key(Evidence.Wanted wanted, List<BigDecimal> raw, String gauge) {
        if (CharacteristicSheet.isAnswered(wanted.unit())) {
            for (int i = 0; i < raw.size(); i++) {
                page.locator("input[name='value" + i + "'][value='" + raw.get(i) + "']")
                        .check();
            }
            page.locator("#f-gauge").selectOption(gauge);
            press(".keypad .enter");
            return;
        }
        boolean alone = raw.size() == 1;
        for (int i = 0; i < raw.size(); i++) {
            BigDecimal value = wanted.sided() ? raw.get(i).abs() : raw.get(i);
            String text = value.toPlainString().replace('.', ',');
            if (alone) {
                page.locator("#f-value0[inputmode='none']").waitFor();
                page.locator(".key[data-key='" + text.charAt(0) + "']").click();
                page.locator("#f-value0").fill(text);
            } else {
                page.locator("#f-value" + i).fill(text);
            }
            if (wanted.sided() && raw.get(i).signum() != 0) {
                String side = raw.get(i).signum() > 0 ? "DRIVE" : "NON_DRIVE";
                String named = alone ? "side" : "side" + i;
                page.locator("label:has(input[name='" + named + "'][value='" + side + "'])")
                        .click();
            }
        }
        page.locator("#f-gauge").selectOption(gauge);
        press(".keypad .enter");
    }

    /** Chooses somebody on the sheet of a point, who keys their own PIN. */
    void sign(Hand who) {
        page.locator("input[name='signer'][value='" + who.id() + "']").check();
        page.locator("#f-pin").fill(Hand.PIN);
        press(".keypad .enter");
    }

    /** Sends the sheet of a point with somebody who is not offered on it. */
    void signsThoughNotOffered(Hand who) {
        page.evaluate(
                "id => { const one = document.querySelector(\"input[name='signer']\"); one.value = id; one.checked = true; }",
                String.valueOf(who.id()));
        page.locator("#f-pin").fill(Hand.PIN);
        press(".keypad .enter");
    }

    static final byte[] PICTURE = picture();

    private static byte[] picture() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(new BufferedImage(48, 32, BufferedImage.TYPE_INT_RGB), "png", out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    /** Ships a frame; first with the serial of another one in the box. */
    void ships(FrameSheet.Head head, String otherSerial) {
        open(head.tag());
        page().locator("#f-scanned").fill(otherSerial);
        press(".plate .btn.main");
        assertThat(refusal()).contains("The serial read from the frame in the box is another one");
        Sheets.look(page(), head.kind() + "-other-serial");
        page().locator("#f-scanned").fill(head.serial());
        press(".plate .btn.main");
        assertThat(page().locator(".plate h2").innerText()).isEqualTo(head.mark() + " is shipped");
        Sheets.look(page(), head.kind() + "-shipped");
    }
}
