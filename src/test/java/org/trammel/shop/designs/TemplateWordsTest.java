package org.trammel.shop.designs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import java.math.BigDecimal;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What a template says, and when there is none. */
class TemplateWordsTest extends AtTheTemplates {

    @Test
    void theSheetSaysWhatItIsAndHowItIsUsedInLettersThatAreInTheFile() throws Exception {
        for (PrintedLines.Page page : PrintedLines.of(file(slim(), "tube=TOP_TUBE"))) {
            assertThat(page.words())
                    .contains(
                            "revision A",
                            "Top tube",
                            "no scaling",
                            "Measure both bars before anything is cut",
                            "printed side out",
                            "cut end up",
                            "not released",
                            "of 2");
            assertThat(page.fontsInside()).isNotEmpty().doesNotContain(false);
        }
    }

    @Test
    void aReleasedRevisionIsNotMarkedAcross() throws Exception {
        long id = frame.begin();
        Map<GeometryInput, BigDecimal> given = slimmed();
        given.put(GeometryInput.DOWN_TUBE_AT_HEAD, new BigDecimal("40"));
        office.change(hands.act(frame.owner), id, null, frame.draft(given));
        frame.checked(frame.approved(frame.sent(frame.withNominals(id))));
        assertThat(PrintedLines.of(file(id, "tube=TOP_TUBE")).get(0).words()).contains("not released");
        designs.release(hands.act(frame.owner), id, routes.revision(frame.route));
        assertThat(PrintedLines.of(file(id, "tube=TOP_TUBE")).get(0).words())
                .doesNotContain("not released")
                .contains("State of the revision: released");
    }

    @Test
    void aWithdrawnRevisionHasNoTemplates() throws Exception {
        long id = slim();
        office.withdraw(hands.act(frame.owner), id, "drawn again");
        refused(id, "", "Revision A of ", " is withdrawn.", "Print the templates of the revision that is in force.");
    }

    @Test
    void aFrameThatCannotBeComputedHasNoTemplates() throws Exception {
        refused(frame.begin(), "", "Head angle is not given.", "Complete the inputs of a draft");
    }

    @Test
    void aTubeThatIsNotCutSaysWhy() throws Exception {
        long id = revision(Map.of(GeometryInput.TOP_TUBE_OUTSIDE, "38", GeometryInput.TOP_TUBE_WALL, "1"));
        refused(id, "tube=TOP_TUBE", "its sides meet nothing", "Look at the cut list");
        assertThat(PrintedLines.of(file(id, "tube=DOWN_TUBE"))).isNotEmpty();
    }

    @Test
    void unknownPaperTubeOrEndIsNamed() throws Exception {
        long id = slim();
        refused(id, "paper=A3", "“A3” is no paper", "Choose A4 or US_LETTER.");
        refused(id, "tube=HEAD_TUBE", "A frame has no tube “HEAD_TUBE”.", "Choose one of DOWN_TUBE");
        refused(id, "tube=TOP_TUBE&end=3", "A tube has no end “3”.", "Ask for end 1, end 2");
        refused(id, "tube=SEAT_TUBE&end=2", "second end is not mitred", "Look at the cut list");
        refused(id, "tube=SEATSTAY", "The seatstay", "ends are not mitred");
    }

    @Test
    void aJointThatAnotherFrameHasIsNotThisFrames() throws Exception {
        long id = revision(Map.of(
                GeometryInput.PIVOT_AHEAD, "22",
                GeometryInput.PIVOT_ABOVE, "72"));
        refused(id, "tube=CHAINSTAY", "cut list has no chainstay", "Look at the cut list");
    }

    @Test
    void nobodyGetsItWithoutSigningOn() throws Exception {
        assertThat(mvc.perform(get("/designs/{id}/templates", slim()))
                        .andReturn()
                        .getResponse()
                        .getStatus())
                .isIn(302, 303, 401, 403);
    }
}
