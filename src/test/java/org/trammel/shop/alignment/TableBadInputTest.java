package org.trammel.shop.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import java.time.LocalDate;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpSession;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.MvcResult;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Signed;

/** What is wrong at the table is a sentence on its page, and nothing is kept or judged. */
class TableBadInputTest extends OnThePlate {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Crew crew;

    /** Sends a form and gives the page that its sender sees then. */
    private String answered(WholeShop.Frame frame, String path, String from, String... params) throws Exception {
        String here = "/alignment/" + operation(frame) + from;
        MockHttpServletRequestBuilder form = post("/alignment/" + operation(frame) + path)
                .with(Signed.on(crew.byId(aligner)))
                .with(csrf())
                .header("Referer", "http://localhost" + here)
                .param("actId", UUID.randomUUID().toString());
        for (int i = 0; i < params.length; i += 2) {
            form.param(params[i], params[i + 1]);
        }
        MvcResult sent = mvc.perform(form).andReturn();
        MockHttpSession session = (MockHttpSession) sent.getRequest().getSession();
        return mvc.perform(get(here)
                        .with(Signed.on(crew.byId(aligner)))
                        .session(java.util.Objects.requireNonNull(session)))
                .andReturn()
                .getResponse()
                .getContentAsString();
    }

    private String keyed(WholeShop.Frame frame, String spot, String value, String gauge) throws Exception {
        return answered(frame, "/read", "/read?spot=" + spot, "spot", spot, "value", value, "gauge", gauge);
    }

    private void nothingIsJudged(WholeShop.Frame frame) {
        assertThat(shop.at(frame).characteristics())
                .allSatisfy(line -> assertThat(line.readingId()).isNull());
    }

    @Test
    void aHeightInInchesIsAskedAboutAndStaysInItsField() throws Exception {
        WholeShop.Frame frame = frame();
        assertThat(keyed(frame, "SEAT_LOW", "5,91", heightGauge))
                .contains("As inches it would be 150,114 mm", "Set the gauge to millimetres", "value=\"5,91\"");
        assertThat(sheet(frame).figures()).isEmpty();
    }

    /** What cannot be a gap is refused where it is keyed, not when all the rest is read. */
    @Test
    void aDifferenceIsNoGap() throws Exception {
        WholeShop.Frame frame = frame();
        assertThat(keyed(frame, "GAP_FORE", "0,1", calliper))
                .contains("0,1 mm is not between 40 and 300.", "whole distance between both dropouts");
        assertThat(keyed(frame, "STAY_DRIVE", "43,2", calliper)).contains("43,2 mm is not between 200 and 900.");
        assertThat(sheet(frame).figures()).isEmpty();
    }

    @Test
    void aHeightOutsideTheGaugesRangeIsRefused() throws Exception {
        WholeShop.Frame frame = frame();
        assertThat(keyed(frame, "AXLE_DRIVE", "2240,3", heightGauge)).contains("2000");
        assertThat(sheet(frame).figures()).isEmpty();
    }

    @Test
    void aGaugePastItsDateReadsNothing() throws Exception {
        WholeShop.Frame frame = frame();
        String old = shop.gauge("HEIGHT", "mm", "0.012", LocalDate.of(2026, 1, 31));
        assertThat(keyed(frame, "SEAT_LOW", "150,12", old)).contains("was due");
        assertThat(sheet(frame).figures()).isEmpty();
    }

    @Test
    void aGaugeTooCoarseForTheToleranceGivesNoVerdict() throws Exception {
        // A difference of two lengths of one calliper keeps their repeatability, 0,010 √2: more than ±0,01 can take.
        WholeShop.Frame frame =
                frame(characteristic("100-6", "Chainstays, drive less non-drive", "mm", "0.01", "pin to pin"));
        read(frame, Spot.STAY_DRIVE, "432.0");
        read(frame, Spot.STAY_OTHER, "432.1");
        assertThat(answered(frame, "/reduce", "/read")).contains("Gauge unfit", "Chainstays, drive less non-drive");
        nothingIsJudged(frame);
    }

    @Test
    void aDroppedReadingIsMissedInWords() throws Exception {
        WholeShop.Frame frame = frame();
        read(frame, Spot.AXLE_DRIVE, "224.3");
        assertThat(answered(frame, "/reduce", "/read")).contains("Nothing was reduced or judged");
        nothingIsJudged(frame);
    }

    @Test
    void aReadingThatIsDoubledOnAnotherTabletIsTold() throws Exception {
        WholeShop.Frame frame = frame();
        read(other, frame, Spot.SEAT_LOW, "150.12", null, null);
        assertThat(keyed(frame, "SEAT_LOW", "150,12", heightGauge)).contains("Meanwhile", "150,12");
        assertThat(sheet(frame).figures()).hasSize(1);
    }

    @Test
    void pointsOfAFaceOnALineMakeNoDatum() throws Exception {
        WholeShop.Frame frame = drawn(frame());
        String arm = shop.gauge("ARM", "mm", "0.020", NEXT_YEAR);
        answered(frame, "/set-up", "/set-up", "datum", "POINTS", "base", "TUBE", "up", "DRIVE");
        answered(frame, "/points", "/read", "gauge", arm, "points", """
                drive face;1;-18;0;36,5
                drive face;2;0;0,001;36,5
                drive face;3;18;0;36,5
                non-drive face;1;-18;0;-36,5
                non-drive face;2;0;0;-36,5
                non-drive face;3;18;0,001;-36,5
                seat tube;1;-26;97;0
                seat tube;2;-104;386;0,2""");
        assertThat(sheet(frame).standing()).hasSize(8);
        assertThat(answered(frame, "/reduce", "/read")).contains("line");
        nothingIsJudged(frame);
    }

    @Test
    void aPointThatIsThereTwiceAndOneOfNoFeatureAreTold() throws Exception {
        WholeShop.Frame frame = drawn(frame());
        String arm = shop.gauge("ARM", "mm", "0.020", NEXT_YEAR);
        answered(frame, "/set-up", "/set-up", "datum", "POINTS", "base", "TUBE", "up", "DRIVE");
        assertThat(answered(frame, "/points", "/read", "gauge", arm, "points", """
                drive face;1;-18;0;36,5
                drive face;1;0;18;36,5"""))
                .contains("twice");
        assertThat(answered(frame, "/points", "/read", "gauge", arm, "points", "fork crown;1;0;18;36,5"))
                .contains("names no feature of a frame");
        assertThat(answered(frame, "/points", "/read", "gauge", arm, "points", "drive face;1;0;18"))
                .contains("4 columns");
        assertThat(sheet(frame).figures()).isEmpty();
    }

    @Test
    void whatNoSheetCanLieOnIsRefused() throws Exception {
        WholeShop.Frame frame = frame();
        assertThat(answered(
                        frame, "/set-up", "/set-up", "datum", "POST", "base", "TUBE", "up", "DRIVE", "seatHigh", "104"))
                .contains("a lean wants 10 or more");
        assertThat(answered(frame, "/set-up", "/set-up", "datum", "FLOOR", "base", "TUBE", "up", "DRIVE"))
                .contains("POST, FACES, POINTS");
    }
}
