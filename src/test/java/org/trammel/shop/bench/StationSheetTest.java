package org.trammel.shop.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.travellers.HoldScope;
import org.trammel.shop.travellers.Holds;
import org.trammel.shop.travellers.Revising;

class StationSheetTest extends AtTheTablet {

    @Autowired
    private Holds holds;

    @Autowired
    private Revising revising;

    @Test
    void theNextStepStandsOnThePlateAndOneTapTicksIt() throws Exception {
        Floor.Frame frame = floor.frame(BenchRoute.route());
        assertThat(page(address(frame))).contains("Wiped, brushed, bagged").contains("Tick step 1");
        assertThat(sent(tick(frame))).contains("Down tube to shell").contains("step 1 of 4");
    }

    @Test
    void aTickIsTakenBackByOneTapForTwoMinutesAndThenAsksWhy() throws Exception {
        Floor.Frame frame = washed();
        sent(tick(frame));
        long ticked = floor.at(frame).steps().get(0).stepId();
        assertThat(page(address(frame))).contains("Untick, until 08:32");
        clock.pass(Duration.ofMinutes(3));
        assertThat(page(address(frame))).doesNotContain("Untick, until").contains("/untick?step=" + ticked);
        String refused = sent(untick(frame, ticked, ""));
        assertThat(refused).contains("cannot be taken back without a reason");
        assertThat(sent(untick(frame, ticked, "wrong frame in hand"))).contains("step 1 of 4");
    }

    @Test
    void thePageThatTakesATickBackNeverNamesAnotherTickThanItSends() throws Exception {
        Floor.Frame frame = washed();
        sent(tick(frame));
        long first = floor.at(frame).steps().get(0).stepId();
        clock.pass(Duration.ofMinutes(3));
        assertThat(page(address(frame) + "/untick?step=" + first)).contains("value=\"" + first);
        sent(tick(frame));
        assertThat(page(address(frame) + "/untick?step=" + first)).contains("The tick made last on");
    }

    private MockHttpServletRequestBuilder untick(Floor.Frame frame, long step, String reason) {
        return form(address(frame) + "/untick", address(frame) + "/untick?step=" + step)
                .param("step", "" + step)
                .param("reason", reason);
    }

    @Test
    void aSheetThatIsOutOfDateIsToldWhoTickedAndWhen() throws Exception {
        Floor.Frame frame = floor.frame(BenchRoute.route());
        MockHttpServletRequestBuilder stale = tick(frame);
        long other = floor.hire(Role.STATION_WORKER);
        floor.tickAll(frame, other);
        assertThat(sent(stale))
                .contains("was not ticked again")
                .contains("It was ticked at 08:30 by " + person(other).name());
    }

    @Test
    void theSameFormSentTwiceTicksOnce() throws Exception {
        Floor.Frame frame = floor.frame(BenchRoute.route());
        MockHttpServletRequestBuilder once = tick(frame);
        sent(once);
        assertThat(sent(once)).contains("step 1 of 4").doesNotContain("was not ticked");
    }

    @Test
    void aTagOfAnotherFrameTakesThePlaceOfTheStep() throws Exception {
        Floor.Frame frame = floor.frame(BenchRoute.route());
        Floor.Frame other = floor.frame(BenchRoute.route());
        String page = scanned(other.serial() + "/A", frame.serial());
        assertThat(page)
                .contains("Wrong frame")
                .contains(floor.sheet(frame).head().mark())
                .contains(floor.sheet(other).head().mark())
                .doesNotContain("Tick step 1");
    }

    @Test
    void theTagOfTheFrameItselfIsSaidToBeIts() throws Exception {
        Floor.Frame frame = floor.frame(BenchRoute.route());
        assertThat(scanned(frame.serial().toLowerCase(java.util.Locale.ROOT), frame.serial()))
                .contains("The tag is that of this frame")
                .contains("Tick step 1");
    }

    @Test
    void aWrongCheckCharacterIsToldWhereItWasScanned() throws Exception {
        Floor.Frame frame = floor.frame(BenchRoute.route());
        String serial = frame.serial();
        char right = serial.charAt(serial.length() - 1);
        String wrong = serial.substring(0, serial.length() - 1) + (right == 'Z' ? 'Y' : 'Z');
        assertThat(scanned(wrong, serial)).contains("The check character").contains("Tick step 1");
        assertThat(scanned(wrong, "")).contains("No frame was opened").contains(wrong);
    }

    @Test
    void aTagOfASupersededRevisionSendsToTheNewOne() throws Exception {
        Floor.Frame frame = floor.frame(BenchRoute.route());
        MockHttpServletRequestBuilder stale = tick(frame);
        long qa = floor.hire(Role.QA_LEAD);
        revising.supersede(
                floor.act(qa),
                frame.orderId(),
                floor.drawing(frame.orderId(), "AL6061", "B", Map.of()),
                floor.book(BenchRoute.route()),
                Map.of(),
                null);
        assertThat(scanned(frame.serial() + "/A", ""))
                .contains("Superseded")
                .contains("Go to revision B")
                .doesNotContain("Tick step 1");
        assertThat(sent(stale)).contains("cannot be worked on").contains("withdrawn");
    }

    @Test
    void whatPeopleNoteIsNeverMarkup() throws Exception {
        Floor.Frame frame = floor.frame(BenchRoute.route());
        String words = "<script>alert(1)</script> \"left\" & =1+1 \u05d0";
        String page = sent(form(address(frame) + "/note", address(frame) + "/note")
                .param("traveller", "" + frame.travellerId())
                .param("words", words));
        assertThat(page).doesNotContain("<script>alert").contains("&lt;script&gt;alert(1)&lt;/script&gt;");
    }

    @Test
    void aNonconformanceIsOpenedFromTheStopSheetAndHoldsTheStep() throws Exception {
        Floor.Frame frame = floor.frame(BenchRoute.route());
        long operation = floor.at(frame).line().operationId();
        String page = sent(form("/nonconformances", address(frame) + "/stop")
                .param("travellerId", "" + frame.travellerId())
                .param("operationId", "" + operation)
                .param("back", frame.serial())
                .param("words", "a dent beside the weld"));
        assertThat(page).contains("is opened; the QA lead decides").contains("what was found stands on its sheet");
        assertThat(floor.sheet(frame).holds())
                .singleElement()
                .satisfies(hold -> assertThat(hold.source()).startsWith("NC-"));
        assertThat(sent(form("/nonconformances", address(frame) + "/stop")
                        .param("travellerId", "" + frame.travellerId())
                        .param("operationId", "" + operation)
                        .param("back", "//elsewhere.example")
                        .param("words", " ")))
                .contains("No nonconformance was opened");
    }

    @Test
    void ofManyNotesTheNewestStandOpenAndTheEarlierFold() throws Exception {
        Floor.Frame frame = floor.frame(BenchRoute.route());
        for (int i = 1; i <= 6; i++) {
            sent(form(address(frame) + "/note", address(frame) + "/note")
                    .param("traveller", "" + frame.travellerId())
                    .param("words", "note number " + i));
        }
        String notes = page(address(frame));
        assertThat(notes).contains("3 earlier notes");
        int folded = notes.indexOf("<details", notes.indexOf("Different on this one"));
        String inside = notes.substring(folded, notes.indexOf("</details>", folded));
        assertThat(inside).contains("note number 1", "note number 3").doesNotContain("note number 4");
        assertThat(notes).contains("note number 4", "note number 6");
    }

    @Test
    void dangerToPeopleIsTheFirstReasonOfAHold() throws Exception {
        String page = page(address(floor.frame(BenchRoute.route())) + "/stop");
        assertThat(page).contains("Hold: payment", "Hold: lot trace");
        assertThat(page.indexOf("Hold: ")).isEqualTo(page.indexOf("Hold: safety"));
    }

    @Test
    void anEmptyNoteIsRefused() throws Exception {
        Floor.Frame frame = floor.frame(BenchRoute.route());
        assertThat(sent(form(address(frame) + "/note", address(frame) + "/note")
                        .param("traveller", "" + frame.travellerId())
                        .param("words", "  ")))
                .contains("The note was not kept");
    }

    @Test
    void aFrameOfAnotherStationIsSentOnAndNotWorkedOnHere() throws Exception {
        Floor.Frame frame = washed();
        String page = tablet(address(frame), "2");
        assertThat(page).contains("Goes on to").doesNotContain("Tick step 1").contains("all the same");
        assertThat(tablet(address(frame), BenchRoute.WELD)).contains("Tick step 1");
    }

    private String tablet(String path, String... stations) throws Exception {
        return mvc.perform(get(path).session(browser).with(Signed.atTablet(person(worker), null, stations)))
                .andReturn()
                .getResponse()
                .getContentAsString();
    }

    @Test
    void aHoldStandsOverTheSheetAndKeepsTheOperationShut() throws Exception {
        Floor.Frame frame = floor.frame(BenchRoute.route());
        String page = sent(form(address(frame) + "/hold", address(frame) + "/stop")
                .param("traveller", "" + frame.travellerId())
                .param("reason", HoldReason.LOT_TRACE.name())
                .param("scope", HoldScope.FRAME.name()));
        assertThat(page)
                .contains("On hold: lot trace.")
                .contains("the QA lead, not by whoever caused it")
                .doesNotContain("Tick step 1")
                .contains("cannot begin");
    }

    @Test
    void ofSeveralHoldsEveryReasonIsToldAndTheWayToLiftOneIsOpenWhicheverItIs() throws Exception {
        Floor.Frame frame = floor.frame(BenchRoute.route());
        for (HoldReason reason : List.of(HoldReason.LOT_TRACE, HoldReason.OVEN_TRACE, HoldReason.MATERIAL)) {
            holds.place(
                    floor.act(worker),
                    new Holds.Request(
                            frame.travellerId(),
                            HoldScope.FRAME,
                            null,
                            reason,
                            "Said of " + reason.word() + ".",
                            "by hand",
                            Set.of()));
        }
        assertThat(page(address(frame)))
                .contains("On hold: lot trace.")
                .contains("2 more holds: oven trace, " + HoldReason.MATERIAL.word())
                .contains("Said of oven trace.")
                .contains("Lift or free");
    }

    @Test
    void aHoldOfALaterOperationSaysThatItDoesNotHoldTheWorkHere() throws Exception {
        Floor.Frame frame = floor.frame(BenchRoute.route());
        var later = floor.sheet(frame).operations().get(1);
        holds.place(
                floor.act(worker),
                new Holds.Request(
                        frame.travellerId(),
                        HoldScope.OPERATION,
                        later.operationId(),
                        HoldReason.MATERIAL,
                        "Tube is on its way.",
                        "by hand",
                        Set.of()));
        assertThat(page(address(frame)))
                .contains("it holds operation " + later.code() + ", not the work here; placed by");
    }

    @Test
    void anAuditorReadsTheSheetAndIsToldInitialsAndNoNames() throws Exception {
        Floor.Frame frame = washed();
        sent(tick(frame));
        sent(form(address(frame) + "/note", address(frame) + "/note")
                .param("traveller", "" + frame.travellerId())
                .param("words", "Left cable port."));
        holds.place(
                floor.act(worker),
                new Holds.Request(
                        frame.travellerId(),
                        HoldScope.FRAME,
                        null,
                        HoldReason.LOT_TRACE,
                        "Looked into.",
                        "by hand",
                        Set.of()));
        long auditor = floor.hire(Role.AUDITOR);
        String name = person(worker).name();
        assertThat(page(address(frame))).contains(name);
        assertThat(page(address(frame), auditor))
                .contains("Left cable port.")
                .contains("placed by " + person(worker).initials())
                .doesNotContain(name);
    }

    @Test
    void aWorkerLiftsAHoldForMaterialWhenItIsThere() throws Exception {
        Floor.Frame frame = floor.frame(BenchRoute.route());
        long hold = holds.place(
                floor.act(worker),
                new Holds.Request(
                        frame.travellerId(),
                        HoldScope.FRAME,
                        null,
                        HoldReason.MATERIAL,
                        "No tube.",
                        "by hand",
                        Set.of()));
        assertThat(page(address(frame) + "/holds")).contains("Lift the hold");
        assertThat(sent(form(address(frame) + "/lift", address(frame) + "/holds")
                        .param("hold", "" + hold)
                        .param("words", "Tubes came, lot released.")))
                .contains("The hold is lifted")
                .contains("Tick step 1");
    }

    @Test
    void aCallNeedsNoWords() throws Exception {
        Floor.Frame frame = floor.frame(BenchRoute.route());
        assertThat(sent(form(address(frame) + "/call", address(frame) + "/stop")
                        .param("traveller", "" + frame.travellerId())))
                .contains("QA is called");
    }

    @Test
    void workIsBrokenOffWithAReasonAndTakenUpAgain() throws Exception {
        Floor.Frame frame = washed();
        sent(tick(frame));
        String operation = "" + floor.at(frame).line().operationId();
        assertThat(sent(form(address(frame) + "/break-off", address(frame) + "/stop")
                        .param("operation", operation)))
                .contains("cannot be broken off without a reason");
        assertThat(sent(form(address(frame) + "/break-off", address(frame) + "/stop")
                        .param("operation", operation)
                        .param("words", "Gas bottle empty.")))
                .contains("Gas bottle empty.")
                .contains("Take the work up again");
        assertThat(sent(form(address(frame) + "/resume", address(frame)).param("operation", operation)))
                .contains("Tick step 2");
    }

    @Test
    void aStepBeforeItsTurnAsksWhy() throws Exception {
        Floor.Frame frame = washed();
        long second = floor.at(frame).steps().get(1).stepId();
        assertThat(page(address(frame) + "?step=" + second)).contains("Why this one before");
        assertThat(sent(form(address(frame) + "/tick", address(frame) + "?step=" + second)
                        .param("step", "" + second)))
                .contains("comes before it");
    }

    @Test
    void anUnknownFrameIsSaidNotToBeThere() throws Exception {
        assertThat(page("/station/AV98123-" + "X")).contains("No frame was opened");
    }

    private Floor.Frame washed() {
        Floor.Frame frame = floor.frame(BenchRoute.route());
        floor.tickAll(frame, worker);
        return frame;
    }

    private String scanned(String code, String on) throws Exception {
        String to = answer(get("/station/scan").param("code", code).param("on", on), worker)
                .getRedirectedUrl();
        return page(String.valueOf(to));
    }
}
