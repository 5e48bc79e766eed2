package org.trammel.shop.designs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.trammel.shop.people.Signed;

/**
 * The sheet with drawing and cut list. Its figures are those that a script written apart from this project computes for
 * the first frame of the invented workshop.
 */
class FramePageTest extends AtTheDrawingDesk {

    @Test
    void theFrameIsDrawnAndItsTubesAreListedAsTheyAreCut() throws Exception {
        String page = page(given -> given);
        assertThat(page).contains("class=\"frame-sheet\"", "643,1", "1201,1", "775,2", "120,3", "312,0");
        assertThat(page).contains("741,2", "608,8", "421,3", "432,9");
        assertThat(page).contains("saw 54,0, 114,7°", "saw 54,0, 91,4°", "17,0 to 39,4", "20,6 to 27,4");
        assertThat(page).contains("tube of 34,9 mm ends where").doesNotContain("Not computed");
        assertThat(page)
                .as("what can be printed: the seatstay is mitred nowhere")
                .contains("value=\"DOWN_TUBE\"", "value=\"CHAINSTAY\"", "value=\"US_LETTER\"")
                .doesNotContain("value=\"SEATSTAY\"");
    }

    /** Cut at 741,2, formed to 35 by 48,46, trimmed to 729,6: the script's; perimeter 42 π; what is cut off by hand. */
    @Test
    void buttsFormedEndsBendsAndSlotsStandInTheCutListWithWhatIsLeft() throws Exception {
        String page = page(given -> {
            Map<GeometryInput, BigDecimal> more =
                    TrailFrame.inputs("FORMED_DOWN_TUBE_SHELL 35 FORMED_DOWN_TUBE_SHELL_ZONE 60 TOP_TUBE_LENGTH 620"
                            + " TOP_TUBE_BUTT_AT_HEAD 100 TOP_TUBE_MIDDLE_WALL 0.8 TOP_TUBE_BUTT_AT_SEAT 70"
                            + " CHAINSTAY_BEND_1 120 CHAINSTAY_BEND_1_OUT 8 CHAINSTAY_BEND_1_RADIUS 100");
            given.putAll(more);
            return given;
        });
        assertThat(page)
                .contains("34,9 × 1,15 / 0,80 / 1,15", "Butted, 620,0\u00a0mm as bought.")
                .contains(
                        "The longer butt, 100,0\u00a0mm, goes to the head tube, the shorter, 70,0\u00a0mm, to the seat")
                .contains("At the shell formed to 35,0\u00a0mm upright and 48,46\u00a0mm across over 60,0\u00a0mm")
                .contains("its perimeter stays 131,95\u00a0mm", "741,2\u00a0mm, form, then trim to 729,6\u00a0mm")
                .contains("of the straight tube, from its front end:", "inward on a radius of 100,0\u00a0mm")
                .contains("Slot 6,1 wide, 25,0\u00a0mm deep")
                .contains("of the top tube&#39;s butt is left behind the weld, less than 60 mm");
        assertThat(page).as("the oval has no feather edge on the shell").doesNotContain("tube of 42 mm ends where");
    }

    /** The same hand-worked figures as for the computation alone. */
    @Test
    void theFitSheetStandsBesideWhatFrameAndPartsAllowAndSaysNothingOfTheRider() throws Exception {
        String page = page(given -> TrailFrame.inputs("SADDLE_HEIGHT 748 SADDLE_SETBACK 45 SADDLE_TO_BAR 560"
                + " SADDLE_OVER_BAR 40 SADDLE_STACK 45 SEATPOST 400 UPPER_STACK 12 STEM_HEIGHT 40 STEM_LENGTH 70"
                + " STEM_RISE -17"));
        assertThat(page)
                .contains("Fit sheet</h2>", "748,0", "560,5", "+0,5", "271,3\u00a0mm", "128,7\u00a0mm", "66,2\u00a0mm")
                .contains("decided by builder and rider")
                .doesNotContain("comfort", "healthy", "injury");
        assertThat(page(given -> given)).doesNotContain("Fit sheet</h2>");
    }

    @Test
    void theFormKeepsWhatIsGivenAndFoldsAwayWhatMostFramesDoWithout() throws Exception {
        String edit = page(
                given -> {
                    given.put(GeometryInput.FORMED_DOWN_TUBE_SHELL, new BigDecimal("35"));
                    given.put(GeometryInput.FORMED_DOWN_TUBE_SHELL_ZONE, new BigDecimal("60"));
                    return given;
                },
                "/designs/{id}/edit");
        assertThat(edit).contains("<details open=\"open\"><summary>Formed ends");
        assertThat(edit).contains("<details><summary>Butted tubes", "name=\"geometry.SEATSTAY_BUTT_AT_DROPOUT\"");
    }

    /** 1678 g and 15,6 g are the worked example of this frame; its parts are those of the same script. */
    @Test
    void theExpectedMassStandsPartByPartWithItsUncertaintyAndTheFormulaInWords() throws Exception {
        String page = page(given -> {
            given.putAll(TrailFrame.masses());
            return given;
        });
        assertThat(page).contains("Expected mass of the frame, uncoated", "1678\u00a0g", "u 15,6\u00a0g");
        assertThat(page)
                .contains("228,6", "357,4", "200,4", "161,9", "99,3", "219,7", "170,7", "150,0", "1678,0")
                .contains("chainstay pair", "dropouts", "weld", "off together", "Density <span>2700</span>")
                .contains("handbook value, from memory");
        assertThat(page(given -> given))
                .contains("Expected mass of the frame, uncoated", "Mass of the dropouts is not given.")
                .doesNotContain("1678\u00a0g");
    }

    @Test
    void whatIsMissingIsNamedAndTheRestIsComputed() throws Exception {
        String page = page(given -> {
            given.remove(GeometryInput.SEATSTAY_AT_SEAT);
            return given;
        });
        assertThat(page).contains("Seatstay below the top of the seat tube is not given.", "643,1", "1201,1");
        assertThat(page).doesNotContain("class=\"frame-sheet\"", "741,2");
    }

    @Test
    void aChainstayThatDoesNotReachItsAxleIsSaidInWords() throws Exception {
        String page = page(given -> {
            given.put(GeometryInput.CHAINSTAY, new BigDecimal("300"));
            given.put(GeometryInput.SHELL_DROP, new BigDecimal("150"));
            given.put(GeometryInput.REAR_WHEEL_RADIUS, new BigDecimal("500"));
            given.put(GeometryInput.FRONT_WHEEL_RADIUS, new BigDecimal("300"));
            return given;
        });
        assertThat(page)
                .contains("The chainstay of 300 mm does not reach the rear axle, which lies 350 mm above the shell.");
    }

    @Test
    void aTubeWiderThanItsMateIsNotCutAndSaysSo() throws Exception {
        String page = page(given -> {
            given.put(GeometryInput.TOP_TUBE_OUTSIDE, new BigDecimal("38"));
            return given;
        });
        assertThat(page).contains("its sides meet nothing").contains("741,2").doesNotContain("608,8");
    }

    @Test
    void anEmptyDraftSaysWhatItNeeds() throws Exception {
        String page = page(given -> {
            given.clear();
            return given;
        });
        assertThat(page)
                .contains("Head angle is not given.", "Reach is not given.")
                .doesNotContain("Cut list</h2>");
    }

    /**
     * The tyre's room is that of the same script; the room between the nodes by hand between the tubes' edges on the head
     * tube: 81 + 12,41 − 23,11 − (30 − 0,65 + 17,46) = 23,5.
     */
    @Test
    void theGateShowsWhatTheInputsSayToItsChecks() throws Exception {
        String sheet = sheet(given -> {
            given.put(GeometryInput.STACK_ASKED, new BigDecimal("640"));
            return given;
        });
        assertThat(sheet).contains("9,6\u00a0mm", "3,6 to spare", "235,2\u00a0mm", "23,5\u00a0mm", "754,4\u00a0mm");
        assertThat(sheet.split("not met", -1))
                .as("the stack asked for, the down tube's edge and the feather edges")
                .hasSize(4);
    }

    private String sheet(UnaryOperator<Map<GeometryInput, BigDecimal>> change) throws Exception {
        return page(change, "/designs/{id}");
    }

    private String page(UnaryOperator<Map<GeometryInput, BigDecimal>> change) throws Exception {
        return page(change, "/designs/{id}/frame");
    }

    private String page(UnaryOperator<Map<GeometryInput, BigDecimal>> change, String address) throws Exception {
        Map<GeometryInput, BigDecimal> given = TrailFrame.inputs();
        long id = frame.begin();
        office.change(
                hands.act(frame.owner),
                id,
                null,
                new DesignDraft("Trail frame", "AL6061", "HARDTAIL", null, null, List.of(), change.apply(given), true));
        return Objects.requireNonNull(mvc.perform(get(address, id).with(Signed.on(crew.byId(frame.owner))))
                .andReturn()
                .getResponse()
                .getContentAsString());
    }
}
