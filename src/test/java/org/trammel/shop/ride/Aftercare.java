package org.trammel.shop.ride;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.trammel.shop.ride.BadFirst.Way;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/** What becomes of a frame after a bad reading: it is set straight, or the desks decide on its nonconformance. */
final class Aftercare {

    private static final Pattern NUMBER = Pattern.compile("NC-\\d+");

    private final Desk qa;
    private final Desk owner;
    private final Travellers travellers;

    /** Numbers of the nonconformances that were decided. */
    final Set<String> nonconformances = new LinkedHashSet<>();

    Aftercare(Desk qa, Desk owner, Travellers travellers) {
        this.qa = qa;
        this.owner = owner;
        this.travellers = travellers;
    }

    static void coldSet(BadFirst bad, Tablet tablet) {
        assertThat(tablet.shows(".banner"))
                .as("no nonconformance while it may be set")
                .isFalse();
        assertThat(tablet.page().locator(".plate .btn.main").innerText()).isEqualTo("Set it straight, cold");
        tablet.press(".plate .btn.main");
        tablet.page().locator("#f-amount").fill(bad.words().replace('.', ','));
        tablet.press(".keypad .enter");
        assertThat(tablet.refusal()).isEmpty();
    }

    void decide(FrameSheet sheet, FrameSheet.OperationSheetOfFrame at, BadFirst bad, Tablet tablet) {
        tablet.open(sheet.head().tag());
        String banner = tablet.page().locator(".banner").last().innerText();
        Matcher found = NUMBER.matcher(banner);
        assertThat(found.find()).as(banner).isTrue();
        String number = found.group();
        nonconformances.add(number);
        if (at.irreversible()) {
            assertThat(tablet.page().locator(".plate button.shut").innerText())
                    .as("held at %s", at.line().code())
                    .contains("cannot");
        }
        Kept.look(tablet, sheet, at, "held");
        assertThat(qa.decides(number, bad))
                .as("who read it does not decide: %s", bad)
                .isEqualTo(bad.way() != Way.REWORK_BY_OWNER);
        switch (bad.way()) {
            case REWORK_BY_OWNER -> assertThat(owner.decides(number, bad)).isTrue();
            case REPAIR, CONCESSION -> owner.agrees(number);
            default -> {
                // the QA lead alone
            }
        }
        assertThat(travellers.sheet(sheet.head().travellerId()).holds())
                .as("freed by the decision on %s", number)
                .isEmpty();
    }
}
