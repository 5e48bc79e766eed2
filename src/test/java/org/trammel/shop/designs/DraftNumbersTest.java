package org.trammel.shop.designs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.trammel.shop.designs.DrawnFrame.refusal;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.trammel.shop.records.Refusal;

/** Numbers of a draft beside each other: what cannot be together, and what is asked about once. */
class DraftNumbersTest extends AtTheDrawingDesk {

    @Test
    void everyUnusualNumberIsAskedAboutAtOnceSoThatNoneIsConfirmedUnread() {
        long id = frame.begin();
        Refusal asked = refusal(() -> change(id, TrailFrame.inputs("HEAD_ANGLE 58 CHAINSTAY 600"), false));
        assertThat(asked.kind()).isEqualTo(Refusal.Kind.ASK);
        assertThat(asked.why()).contains("Head angle 58° is unusual", "Chainstay, shell to axle 600 mm is unusual");
        assertThat(asked.instead()).contains("confirm if all 2 are meant");
        assertThat(designs.revision(id).geometry()).isEmpty();
    }

    @Test
    void aConfirmedNumberIsNotAskedAboutAgainUntilItIsChanged() {
        long id = frame.begin();
        change(id, TrailFrame.inputs("HEAD_ANGLE 58"), true);
        change(id, TrailFrame.inputs("HEAD_ANGLE 58.0 REACH 460"), false);
        Refusal asked = refusal(() -> change(id, TrailFrame.inputs("HEAD_ANGLE 57 REACH 460"), false));
        assertThat(asked.why()).contains("Head angle 57° is unusual");
        assertThat(designs.revision(id).geometry()).containsEntry("HEAD_ANGLE", "58");
    }

    @ParameterizedTest(name = "{0} {1} in {2} {3}")
    @CsvSource({
        "SHELL_BORE, 45, SHELL_OUTSIDE, 42, Shell bore 45 mm, Shell outside 42 mm",
        "HEAD_TUBE_BORE, 60, HEAD_TUBE_OUTSIDE, 54, Head tube bore 60 mm, Head tube outside 54 mm",
        "SHELL_BORE, 42, SHELL_OUTSIDE, 42, Shell bore 42 mm, Shell outside 42 mm",
        "ARM_BORE, 45, ARM_BOSS, 40, 'Swing arm, bore of its pivot bosses 45 mm', "
                + "'Swing arm, outside of its pivot bosses 40 mm'"
    })
    void aBoreThatLeavesNoMetalIsRefusedWithBothFields(
            String bore, String wide, String outside, String narrow, String one, String other) {
        long id = frame.begin();
        Refusal refused =
                refusal(() -> change(id, TrailFrame.inputs(bore + " " + wide + " " + outside + " " + narrow), true));
        assertThat(refused.field()).isEqualTo("geometry." + bore);
        assertThat(refused.why()).contains(one, other);
    }

    @Test
    void aShockIsMoreThanTwiceAsLongAsItsStroke() {
        long id = frame.begin();
        Refusal refused = refusal(() -> change(id, TrailFrame.inputs("SHOCK_LENGTH 100 SHOCK_STROKE 55"), true));
        assertThat(refused.why()).contains("Shock, eye to eye 100 mm", "Shock stroke 55 mm");
        change(id, TrailFrame.inputs("SHOCK_LENGTH 210 SHOCK_STROKE 55"), true);
    }

    @Test
    void aFrameWhoseRearEndSwingsIsNotBuiltOnAHardtailsRoute() {
        long id = frame.begin();
        Refusal refused =
                refusal(() -> office.change(hands.act(frame.owner), id, null, draft("AL6061", "FULL_SUSPENSION")));
        assertThat(refused.field()).isEqualTo("route");
        assertThat(refused.why()).contains("hardtail or rigid, welded", "full suspension");
        assertThat(refusal(() -> office.change(hands.act(frame.owner), id, null, draft("TI", "HARDTAIL")))
                        .why())
                .contains("aluminium 6061", "titanium Ti-3Al-2.5V");
    }

    @Test
    void limitsFarWiderThanTheRoutesAreAskedAboutOnce() {
        long id = frame.draft();
        Map<String, Nominal> wide =
                Map.of("080-7", new Nominal(new BigDecimal("65.5"), new BigDecimal("-60"), new BigDecimal("66"), true));
        Refusal asked = refusal(() -> office.give(hands.act(frame.owner), id, null, wide, Set.of()));
        assertThat(asked.kind()).isEqualTo(Refusal.Kind.ASK);
        assertThat(asked.why())
                .contains("080-7 Head angle as built", "-60°", "66°", "10 times that of the route, 0.3°");
        office.give(hands.act(frame.owner), id, null, wide, Set.of(), true);
        office.give(hands.act(frame.owner), id, null, wide, Set.of());
    }

    private void change(long id, Map<GeometryInput, BigDecimal> geometry, boolean confirmed) {
        office.change(
                hands.act(frame.owner),
                id,
                null,
                new DesignDraft(
                        "Hardtail 29", "AL6061", "HARDTAIL", frame.route, null, List.of(), geometry, confirmed));
    }

    private DesignDraft draft(String metal, String kind) {
        return new DesignDraft("A frame", metal, kind, frame.route, null, List.of(), Map.of(), false);
    }
}
