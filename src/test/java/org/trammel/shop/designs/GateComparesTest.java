package org.trammel.shop.designs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;
import org.trammel.shop.records.Refusal;

/** What the gate compares a drawing with from outside it: the order with its rider, and the family it was tested in. */
class GateComparesTest extends AtTheDrawingDesk {

    @Autowired
    private TestFamilies families;

    @Autowired
    private GateLimits limits;

    @Autowired
    private SawDrawer saws;

    @Test
    void whatTheOrderTellsIsComparedAndNothingOfTheRiderIsKeptWithTheAnswer() {
        long id = frame.trail("");
        Map<GateCheck, CheckFigures> tall = told(id, "SE", "left", "780");
        assertThat(tall.get(GateCheck.STANDOVER).red()).isFalse();
        assertThat(tall.get(GateCheck.COUNTRY).red()).isFalse();
        Map<GateCheck, CheckFigures> small = told(id, "GB", "left", "770");
        assertThat(small.get(GateCheck.STANDOVER).whyRed())
                .isEqualTo("over the top tube, 20 ahead 752,7 mm, limit 745,0 mm or less, margin −7,7 mm");
        assertThat(small.get(GateCheck.COUNTRY).whyRed()).isEqualTo("front brake lever for GB left, wanted right");
        assertThat(told(id, "XX", "left", "770").get(GateCheck.COUNTRY).lacking())
                .containsExactly("No list of the shop names the lever side of XX.");
        assertThat(small.get(GateCheck.STANDOVER).givenOn())
                .isNotEqualTo(
                        told(id, "SE", "left", "780").get(GateCheck.RIDER_DATA).givenOn());
        CheckFigure kept = small.get(GateCheck.STANDOVER).figures().get(0).withoutTheRider();
        assertThat(kept.words()).isEqualTo("over the top tube, 20 ahead not kept");
        assertThat(kept.toString()).doesNotContain("745", "752");
    }

    /** Fork 541 and stack 643,06 of the frame; the rider weighs 90 kg. */
    @Test
    void aFrameIsComparedWithWhatItsFamilyWasTestedUpTo() {
        long id = frame.trail("");
        CheckFigures family = told(id, "SE", "left", "780", "540").get(GateCheck.TEST_FAMILY);
        assertThat(family.whyRed())
                .contains(
                        "fork 541,0 mm, limit 540,0 mm or less, margin −1,0 mm",
                        "stack 643,1 mm, limit 640,0 mm or less, margin −3,1 mm",
                        "rider 90,0 kg, limit 85,0 kg or less, margin −5,0 kg");
        assertThat(family.figures()).extracting(CheckFigure::source).containsOnly("report 7");
        assertThat(family.figures().get(3).withoutTheRider().toString()).doesNotContain("90", "85");

        assertThat(line(id, GateCheck.TEST_FAMILY).lacking())
                .containsExactly("No test family HT-AL-A is kept, so nothing is compared.");
        gate.answer(hands.act(frame.qa), id, GateCheck.TEST_FAMILY, GateAnswer.DECIDED, "test of its own booked");
    }

    /** The trail of this frame is 120,3: (370 cos 65,5° − 44) / sin 65,5°. */
    @Test
    void theTrailIsJudgedByTheBandOfTheCategoryThatWasOrdered() {
        long id = frame.trail("");
        CheckFigures mountain = trail(id, "MOUNTAIN");
        assertThat(mountain.red()).isFalse();
        assertThat(mountain.figures()).extracting(CheckFigure::source).containsOnly("common practice, from memory");
        CheckFigures racing = trail(id, "RACING");
        assertThat(racing.whyRed()).isEqualTo("trail 120,3 mm, limit 75,0 mm or less, margin −45,3 mm");
        assertThat(racing.givenOn()).isNotEqualTo(mountain.givenOn());
        CheckFigures other = trail(id, "OTHER");
        assertThat(other.red()).isFalse();
        assertThat(other.figures()).extracting(CheckFigure::words).containsExactly("trail 120,3 mm");
        assertThat(other.lacking())
                .containsExactly("The shop keeps no band of trail for the category of use that was ordered.");
    }

    /** Clamp (748 sin 74,5° − 45) / sin 74,5° = 701,30, so 271,30 stand out of a post of 400. */
    @Test
    void theSeatpostIsJudgedByTheFitSheetWhateverClampWasTyped() {
        String fit = "SADDLE_HEIGHT 748 SADDLE_STACK 45 SEATPOST 360 SEATPOST_MARK 100";
        CheckFigures post = told(frame.trail(fit), "SE", "left", "780").get(GateCheck.SEATPOST);
        assertThat(post.whyRed())
                .isEqualTo("inserted by the fit sheet, to the mark 88,7 mm, limit 100,0 mm or more, margin −11,3 mm");
        assertThat(post.figures())
                .extracting(CheckFigure::source)
                .containsExactly(
                        "input of this drawing: least insertion by the seatpost's mark",
                        "input of this drawing: top tube below the top of the seat tube");
        CheckFigures both = told(frame.trail(fit + " SADDLE_CLAMP 680"), "SE", "left", "780")
                .get(GateCheck.SEATPOST);
        assertThat(both.whyRed())
                .as("what was typed before the fit sheet hides nothing of it")
                .isEqualTo(post.whyRed());
        assertThat(both.figures())
                .extracting(CheckFigure::words)
                .contains("inserted, to the mark 110,0 mm, limit 100,0 mm or more, margin 10,0 mm");
        assertThat(told(frame.trail("SADDLE_HEIGHT 748 SEATPOST 360 SEATPOST_MARK 100"), "SE", "left", "780")
                        .get(GateCheck.SEATPOST)
                        .lacking())
                .containsExactly("Saddle's top above its clamp is not given.");
    }

    /**
     * By hand: from the seat tube's axis (−102,89; 371) to 20 ahead of the shell the top tube's axis runs 122,89 × 623,35 /
     * 573,33 = 133,6 along; formed 40 high it stands (40 − 31,8) / 2 × 623,35 / 573,33 = 4,46 higher there than round.
     */
    @Test
    void whoStandsOverAnEndThatIsFormedHigherStandsOverThat() {
        assertThat(standover("")).isEqualTo("752.7");
        assertThat(standover("FORMED_TOP_TUBE_SEAT 40 FORMED_TOP_TUBE_SEAT_ZONE 150"))
                .isEqualTo("757.2");
        assertThat(standover("FORMED_TOP_TUBE_SEAT 40 FORMED_TOP_TUBE_SEAT_ZONE 100"))
                .as("round again before it")
                .isEqualTo("752.7");
        assertThat(standover("FORMED_TOP_TUBE_SEAT 25 FORMED_TOP_TUBE_SEAT_ZONE 150"))
                .as("pressed lower, and growing round again")
                .isEqualTo("752.7");
    }

    private String standover(String inputs) {
        return told(frame.trail(inputs), "SE", "left", "780")
                .get(GateCheck.STANDOVER)
                .figures()
                .get(0)
                .value()
                .setScale(1, RoundingMode.HALF_EVEN)
                .toPlainString();
    }

    private CheckFigures trail(long id, String category) {
        return told(id, "SE", "left", "780", "551", category).get(GateCheck.TRAIL);
    }

    @Test
    void aFamilyIsEnteredByQaLeadOrOwnerAndItsNewestNumbersAreComparedAtTheGate() throws Exception {
        String code = "F-" + UUID.randomUUID().toString().substring(0, 8);
        TestFamilies.Covered covered = new TestFamilies.Covered(
                code, "hardtail", new BigDecimal("551"), null, null, null, "report 7, invented");
        Refusal refused = DrawnFrame.refusal(() -> families.enter(hands.act(hands.hire(Role.WELDER)), covered, null));
        assertThat(refused.kind()).isEqualTo(Refusal.Kind.PERSON);
        assertThat(DrawnFrame.refusal(() -> families.enter(
                                hands.act(frame.qa),
                                new TestFamilies.Covered(
                                        code, "x", null, null, new BigDecimal("600"), new BigDecimal("500"), "r"),
                                null))
                        .field())
                .isEqualTo("mostStack");
        assertThat(DrawnFrame.refusal(() -> families.enter(
                                hands.act(frame.qa),
                                new TestFamilies.Covered(code, "x", new BigDecimal("5510"), null, null, null, "r"),
                                null))
                        .field())
                .isEqualTo("longestFork");
        TestFamily first = families.enter(hands.act(frame.qa), covered, null);
        long id = frame.begin();
        DesignDraft plain = frame.draft(TrailFrame.nothingRed(""));
        office.change(
                hands.act(frame.owner),
                id,
                null,
                new DesignDraft(
                        plain.description(),
                        plain.metal(),
                        plain.kind(),
                        plain.routeRevisionId(),
                        code,
                        plain.components(),
                        plain.geometry(),
                        true));
        gate.answer(hands.act(frame.qa), id, GateCheck.TEST_FAMILY, GateAnswer.MEETS, null);
        assertThat(line(id, GateCheck.TEST_FAMILY).counts()).isTrue();
        mvc.perform(post("/shop/test-families")
                        .param("actId", UUID.randomUUID().toString())
                        .param("seen", Long.toString(first.id()))
                        .param("code", code)
                        .param("covers", "hardtail <b>")
                        .param("longestFork", "531")
                        .param("source", "report 8")
                        .with(csrf())
                        .with(Signed.on(crew.byId(frame.qa))))
                .andExpect(status().is3xxRedirection());
        assertThat(line(id, GateCheck.TEST_FAMILY).red()).isTrue();
        assertThat(line(id, GateCheck.TEST_FAMILY).counts()).isFalse();
        assertThat(DrawnFrame.refusal(() -> families.enter(hands.act(frame.qa), covered, first.id()))
                        .kind())
                .isEqualTo(Refusal.Kind.STALE);
        assertThat(mvc.perform(get("/shop/test-families/one")
                                .param("code", code)
                                .with(Signed.on(crew.byId(frame.qa))))
                        .andReturn()
                        .getResponse()
                        .getContentAsString())
                .contains("report 7, invented", "report 8", "hardtail &lt;b&gt;", "Put it in force");
        for (String path : new String[] {"/shop/test-families", "/shop/test-families/one?code=" + code}) {
            assertThat(mvc.perform(get(path).with(Signed.on(crew.byId(hands.hire(Role.AUDITOR)))))
                            .andReturn()
                            .getResponse()
                            .getContentAsString())
                    .as("the auditor at %s", path)
                    .contains("report 8")
                    .doesNotContain("Put it in force");
        }
    }

    private Map<GateCheck, CheckFigures> told(long id, String country, String lever, String inseam_mm) {
        return told(id, country, lever, inseam_mm, "551");
    }

    private Map<GateCheck, CheckFigures> told(
            long id, String country, String lever, String inseam_mm, String longestFork_mm) {
        return told(id, country, lever, inseam_mm, longestFork_mm, "MOUNTAIN");
    }

    private Map<GateCheck, CheckFigures> told(
            long id, String country, String lever, String inseam_mm, String longestFork_mm, String category) {
        DesignSheet sheet = designs.revision(id);
        return GateFigures.of(
                sheet,
                ComputedFrame.of(sheet.geometry(), saws.rules()),
                limits,
                new OrderTells.Told(country, category, lever, new BigDecimal(inseam_mm), new BigDecimal("90"), 3),
                List.of(),
                Optional.of(new TestFamily(
                        1,
                        "HT-AL-A",
                        "hardtail",
                        new BigDecimal(longestFork_mm),
                        new BigDecimal("85"),
                        new BigDecimal("560"),
                        new BigDecimal("640"),
                        "report 7",
                        Instant.EPOCH,
                        1)));
    }

    private RevisionStory.CheckLine line(long id, GateCheck check) {
        return reading.story(id, true).checks().stream()
                .filter(line -> line.check() == check)
                .findFirst()
                .orElseThrow();
    }
}
