package org.trammel.shop.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.travellers.HoldScope;
import org.trammel.shop.travellers.Holds;
import org.trammel.shop.travellers.Remarks;

class PapersTest extends AtTheTablet {

    @Autowired
    private Holds holds;

    @Autowired
    private Remarks remarks;

    @Test
    void theTravellerCarriesTheSerialWithItsRevisionInWordsAndAsACode() throws Exception {
        Floor.Frame frame = floor.frame(BenchRoute.route());
        String serial = frame.serial();
        String shown = serial.substring(0, 4) + "-" + serial.substring(4, 7) + "-" + serial.substring(7) + "/A";
        assertThat(page("/frames/" + serial + "/traveller")).contains(shown).contains("Code of " + shown);
        assertThat(page("/frames/" + serial + "/tag")).contains(shown).contains("revision A");
    }

    @Test
    void holdPointsHaveHeavyBoxesAndWhereNoSecondIsAskedForTheBoxIsHatched() throws Exception {
        Floor.Frame frame = floor.frame(BenchRoute.route());
        String page = page("/frames/" + frame.serial() + "/traveller");
        assertThat(page.split("class=\"gate", -1)).hasSize(3);
        assertThat(page.split("class=\"box off\"", -1)).hasSize(4);
        assertThat(page).contains("±0,30° +3");
    }

    @Test
    void whatIsReadBackBlindIsNotPrinted() throws Exception {
        Floor.Frame frame = floor.frame(SmallRoute.of(SmallRoute.op("060")
                        .step("set")
                        .readBack("060-1", "0.3")
                        .sheet())
                .sheet());
        assertThat(page("/frames/" + frame.serial() + "/traveller"))
                .contains("read blind")
                .doesNotContain("±0,3");
    }

    @Test
    void whatWasDoneIsPrintedWithInitialsAndDay() throws Exception {
        Floor.Frame frame = floor.frame(BenchRoute.route());
        floor.tickAll(frame, worker);
        remarks.note(floor.act(worker), frame.travellerId(), null, "<b>left</b> port");
        assertThat(page("/frames/" + frame.serial() + "/traveller"))
                .contains(">18 Mar<")
                .contains("&lt;b&gt;left&lt;/b&gt; port");
    }

    @Test
    void theHoldTagSaysWhyAndWhoLiftsItAndIsNotPrintedWithoutAHold() throws Exception {
        Floor.Frame frame = floor.frame(BenchRoute.route());
        String path = "/frames/" + frame.serial() + "/hold-tag";
        assertThat(answer(get(path), worker).getStatus()).isEqualTo(409);
        holds.place(
                floor.act(worker),
                new Holds.Request(
                        frame.travellerId(),
                        HoldScope.FRAME,
                        null,
                        HoldReason.SAFETY,
                        "Cracked dropout.",
                        "by hand",
                        Set.of()));
        assertThat(page(path)).contains("On hold").contains("Cracked dropout.").contains("the QA lead and the owner");
    }
}
