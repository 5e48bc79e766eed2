package org.trammel.shop.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import jakarta.servlet.http.Cookie;
import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.people.Role;
import org.trammel.shop.travellers.FrameSheet;

class ReadingSheetTest extends AtTheTablet {

    private static final int TWIST = 0;
    private static final int OFFSET = 1;
    private static final int WIDTH = 2;
    private static final int REACH = 3;

    @Test
    void theReadingSheetComesUpWhenEveryStepIsTickedAndShowsNoVerdict() throws Exception {
        Floor.Frame frame = onTheTable();
        floor.gauge("TWIST", "°", "0.020");
        assertThat(page(address(frame)))
                .contains("Twist, head tube to seat tube")
                .contains("±0,30°")
                .contains("Enter")
                .doesNotContain("class=\"ans\"")
                .doesNotContain("conforming</span></span><p");
    }

    @Test
    void theVerdictStandsWithItsBandAndTheSentenceWhyAfterEnter() throws Exception {
        Floor.Frame frame = onTheTable();
        String gauge = floor.gauge("TWIST", "°", "0.020");
        assertThat(sent(read(frame, TWIST, gauge, "0,053").param("side", "NON_DRIVE")))
                .contains("0,053")
                .contains("to non-drive")
                .contains("m-conforming")
                .contains("0,053 lies within −0,267 to 0,267")
                .contains("guard band 0,033°")
                .contains("Go on: Head tube centre offset");
    }

    @Test
    void aDecimalPointIsReadLikeACommaAndTwoSignsAreRefusedWithWhatWasKeyed() throws Exception {
        Floor.Frame frame = onTheTable();
        String gauge = floor.gauge("TWIST", "°", "0.020");
        String refused = sent(read(frame, TWIST, gauge, "1.234,5").param("side", "DRIVE"));
        assertThat(refused)
                .contains("can be read two ways")
                .contains("value=\"1.234,5\"")
                .contains("checked");
        assertThat(sent(read(frame, TWIST, gauge, "0.053").param("side", "DRIVE")))
                .contains("to drive")
                .contains("m-conforming");
    }

    @Test
    void aSideIsAWordAndMustBeChosen() throws Exception {
        Floor.Frame frame = onTheTable();
        String gauge = floor.gauge("TWIST", "°", "0.020");
        assertThat(sent(read(frame, TWIST, gauge, "0,1"))).contains("The side was not chosen");
        assertThat(sent(read(frame, TWIST, gauge, "\u22120,1").param("side", "DRIVE")))
                .contains("not a minus sign");
        assertThat(sent(read(frame, TWIST, gauge, "0"))).contains("m-conforming");
    }

    @Test
    void aValueInTheBandIsUndecidedAndTheBetterGaugeIsNamed() throws Exception {
        Floor.Frame frame = onTheTable();
        String coarse = floor.gauge("TWIST", "°", "0.045");
        String fine = floor.gauge("TWIST", "°", "0.001");
        String page = sent(read(frame, TWIST, coarse, "0,331").param("side", "DRIVE"));
        assertThat(page)
                .contains("m-undecided")
                .contains("lies in the uncertainty band")
                .contains("Measure with G");
        assertThat(sent(read(frame, TWIST, fine, "0,300").param("side", "DRIVE")))
                .contains("m-undecided");
        assertThat(sent(read(frame, TWIST, fine, "0,298").param("side", "DRIVE")))
                .contains("m-conforming");
    }

    @Test
    void anUnlikelyValueIsAskedAboutAndTakenWhenItIsSaidAgain() throws Exception {
        Floor.Frame frame = onTheTable();
        String gauge = floor.gauge("TWIST", "°", "0.020");
        assertThat(sent(read(frame, TWIST, gauge, "3,4").param("side", "DRIVE")))
                .contains("is not taken yet")
                .contains("name=\"confirm\" value=\"true\"")
                .contains("name=\"value0\" value=\"3,4\"");
        assertThat(sent(read(frame, TWIST, gauge, "3,4").param("side", "DRIVE").param("confirm", "true")))
                .contains("m-not-conforming");
    }

    @Test
    void aNotConformingTwistInItsWindowLeadsTheAlignerToTheColdSet() throws Exception {
        Floor.Frame frame = onTheTable();
        String gauge = floor.gauge("TWIST", "°", "0.020");
        long aligner = floor.hire(Role.ALIGNER);
        String page = sent(read(frame, TWIST, gauge, "0,444").param("side", "NON_DRIVE"), aligner);
        assertThat(page).contains("Set it straight, cold").contains("0 of 2 attempts used");
        String form = page(address(frame) + "/cold-set?characteristic=" + id(frame, TWIST), aligner);
        assertThat(form).contains("Set aimed at").contains("closes in");
        assertThat(sent(
                        form(address(frame) + "/cold-set", address(frame) + "/cold-set")
                                .param("characteristic", "" + id(frame, TWIST))
                                .param("amount", "0,4"),
                        aligner))
                .contains("Before it was set straight: 0,444")
                .contains("Enter");
    }

    @Test
    void ofSeveralPointsEachHasItsFieldAndItsSide() throws Exception {
        Floor.Frame frame = onTheTable();
        String dial = floor.gauge("DIAL", "mm", "0.010");
        assertThat(page(address(frame) + "?read=" + id(frame, OFFSET)))
                .contains("mandrel low")
                .contains("name=\"side1\"");
        assertThat(sent(form(address(frame) + "/read", address(frame) + "?read=" + id(frame, OFFSET))
                        .param("characteristic", "" + id(frame, OFFSET))
                        .param("gauge", dial)
                        .param("value0", "0,40")
                        .param("side0", "DRIVE")
                        .param("value1", "0,20")
                        .param("side1", "NON_DRIVE")))
                .contains("Mean of 0,40; −0,20")
                .contains("to drive");
    }

    @Test
    void ofSeveralPointsOnlyTheOneAtFaultIsMarked() throws Exception {
        Floor.Frame frame = onTheTable();
        String dial = floor.gauge("DIAL", "mm", "0.010");
        String asked = sent(form(address(frame) + "/read", address(frame) + "?read=" + id(frame, OFFSET))
                .param("characteristic", "" + id(frame, OFFSET))
                .param("gauge", dial)
                .param("value0", "0,40")
                .param("side0", "DRIVE")
                .param("value1", "55")
                .param("side1", "DRIVE"));
        assertThat(asked).contains("is not taken yet").containsOnlyOnce("aria-invalid=\"true\"");
        assertThat(asked.indexOf("aria-invalid=\"true\"")).isGreaterThan(asked.indexOf("name=\"value1\""));
    }

    @Test
    void anEmptyPlaceAmongSeveralIsNamed() throws Exception {
        Floor.Frame frame = onTheTable();
        String dial = floor.gauge("DIAL", "mm", "0.010");
        String empty = floor.at(frame).characteristics().get(OFFSET).points().get(1);
        assertThat(sent(form(address(frame) + "/read", address(frame) + "?read=" + id(frame, OFFSET))
                        .param("characteristic", "" + id(frame, OFFSET))
                        .param("gauge", dial)
                        .param("value0", "0,40")
                        .param("side0", "DRIVE")
                        .param("value1", "")))
                .contains("Nothing is entered at " + empty + ".")
                .doesNotContain("Nothing was typed");
    }

    @Test
    void whatIsReadBackBlindIsNotShownBeforeNorTheFirstFigureToTheSecondPerson() throws Exception {
        Floor.Frame frame = onTheTable();
        String calliper = floor.gauge("CALLIPER", "mm", "0.005");
        assertThat(page(address(frame) + "?read=" + id(frame, REACH)))
                .contains("Read blind")
                .doesNotContainPattern("\\b458,");
        assertThat(sent(read(frame, REACH, calliper, "458,1")))
                .contains("You read it first")
                .doesNotContain("458,1");
        assertThat(sent(read(frame, REACH, calliper, "458,0")))
                .contains("is not read a second time by the same person");
        long second = floor.hire(Role.STATION_WORKER);
        assertThat(page(address(frame) + "?read=" + id(frame, REACH), second))
                .contains("Read blind by a second person")
                .doesNotContainPattern("\\b458,");
        assertThat(sent(read(frame, REACH, calliper, "458,0"), second))
                .contains("m-conforming")
                .contains("458,0");
    }

    @Test
    void withoutAGaugeInDateThereIsNothingToChooseAndNothingIsRead() throws Exception {
        Floor.Frame frame = onTheTable();
        assertThat(sent(read(frame, WIDTH, "", "73"))).contains("No gauge was chosen");
        assertThat(sent(read(frame, WIDTH, "NO-SUCH", "73", "73", "73", "73")))
                .contains("No gauge carries the number NO-SUCH");
    }

    @Test
    void theGaugeUsedLastAtThisTabletIsChosenTheNextTime() throws Exception {
        Floor.Frame frame = onTheTable();
        floor.gauge("TWIST", "°", "0.015");
        String used = floor.gauge("TWIST", "°", "0.020");
        MockHttpServletResponse answer = answer(read(frame, TWIST, used, "0,05").param("side", "DRIVE"), worker);
        Cookie kept = answer.getCookie("trammel-gauge-TWIST");
        assertThat(kept).isNotNull();
        assertThat(answer(
                                get(address(frame) + "?read=" + id(frame, TWIST) + "&again=true")
                                        .cookie(kept),
                                worker)
                        .getContentAsString())
                .contains("<option value=\"" + used + "\" selected=\"selected\">");
    }

    @Test
    void aMistypedReadingIsCorrectedWithAReasonAndStays() throws Exception {
        Floor.Frame frame = onTheTable();
        String gauge = floor.gauge("TWIST", "°", "0.020");
        sent(read(frame, TWIST, gauge, "0,153").param("side", "DRIVE"));
        long reading = floor.at(frame).characteristics().get(TWIST).readingId();
        assertThat(page(address(frame) + "?read=" + id(frame, TWIST) + "&correct=" + reading))
                .contains("What was wrong with the reading");
        assertThat(sent(read(frame, TWIST, gauge, "0,135")
                        .param("side", "DRIVE")
                        .param("replaces", "" + reading)
                        .param("reason", "Digits swapped.")))
                .contains("0,135");
    }

    @Test
    void theTagReadIntoAPlaceOfAFigureIsSaidToBeATag() throws Exception {
        Floor.Frame frame = onTheTable();
        String gauge = floor.gauge("TWIST", "°", "0.020");
        assertThat(sent(read(frame, TWIST, gauge, frame.serial()).param("side", "DRIVE")))
                .contains("was scanned into the place of a figure");
    }

    private Floor.Frame onTheTable() {
        Floor.Frame frame = floor.frame(BenchRoute.route());
        floor.tickAll(frame, worker);
        floor.tickAll(frame, worker);
        floor.tickAll(frame, worker);
        return frame;
    }

    private long id(Floor.Frame frame, int characteristic) {
        FrameSheet.OperationSheetOfFrame at = floor.at(frame);
        return at.characteristics().get(characteristic).characteristicId();
    }

    private MockHttpServletRequestBuilder read(Floor.Frame frame, int characteristic, String gauge, String... values) {
        MockHttpServletRequestBuilder form = form(
                        address(frame) + "/read", address(frame) + "?read=" + id(frame, characteristic))
                .param("characteristic", "" + id(frame, characteristic))
                .param("gauge", gauge);
        for (int i = 0; i < values.length; i++) {
            form.param("value" + i, values[i]);
        }
        return form;
    }
}
