package org.trammel.shop.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.Mockito.when;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.time.Duration;
import java.util.List;
import java.util.UUID;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.HttpHeaders;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.MockMultipartHttpServletRequestBuilder;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.people.Pins;
import org.trammel.shop.people.Role;
import org.trammel.shop.routes.Kinds;
import org.trammel.shop.routes.RouteBook;
import org.trammel.shop.routes.RouteSheet;
import org.trammel.shop.routes.RouteSummary;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.travellers.HoldScope;
import org.trammel.shop.travellers.TravellerState;

class PointsAndWaysOutTest extends AtTheTablet {

    private static final String WRONG_PIN = "918273";

    @Autowired
    private org.trammel.shop.nonconformance.Opening opening;

    @Autowired
    private org.springframework.jdbc.core.simple.JdbcClient jdbc;

    @Autowired
    private Pins pins;

    @Autowired
    private RouteBook book;

    @Test
    void aHoldPointIsSignedWithThePinOfSomebodyWhoTookNoPart() throws Exception {
        Floor.Frame frame = floor.frame(SmallRoute.of(
                        SmallRoute.op("100")
                                .step("set on the table")
                                .hold(Signer.SECOND)
                                .sheet(),
                        SmallRoute.op("110").step("aged").sheet())
                .sheet());
        long second = floor.hire(Role.STATION_WORKER);
        pins.give(second, floor.hire(Role.OWNER));
        assertThat(sent(tick(frame))).contains("Hold point: operation 100").contains("Sign here");
        String form = page(address(frame) + "/sign");
        assertThat(form)
                .contains(person(second).name())
                .doesNotContain("name=\"signer\" value=\"" + worker + "\"")
                .contains("Own PIN");
        assertThat(sent(sign(frame, second, WRONG_PIN))).contains("Not signed").doesNotContain(WRONG_PIN);
        assertThat(sent(sign(frame, second, Pins.PIN)))
                .contains("Signed as second person by " + person(second).name())
                .contains("aged");
    }

    @Test
    void whoDidTheWorkDoesNotSignItWhateverIsSent() throws Exception {
        Floor.Frame frame = floor.frame(SmallRoute.of(
                        SmallRoute.op("100").step("done").hold(Signer.SECOND).sheet())
                .sheet());
        pins.give(worker, floor.hire(Role.OWNER));
        sent(tick(frame));
        assertThat(sent(sign(frame, worker, Pins.PIN))).contains("took no part in it");
        assertThat(sent(form(address(frame) + "/sign", address(frame) + "/sign")
                        .param("operation", "" + floor.at(frame).line().operationId())
                        .param("as", "SECOND")))
                .contains("Nobody was chosen");
    }

    @Test
    void whoLoadedAnOvenIsOfferedToSignTheLoadAsItsHeatTreater() throws Exception {
        worker = floor.hire(Role.HEAT_TREATER);
        Floor.Frame frame = floor.frame(SmallRoute.of(SmallRoute.op("090")
                        .step("loaded")
                        .hold(Signer.HEAT_TREATER, Signer.SECOND)
                        .sheet())
                .sheet());
        sent(tick(frame));
        String offered = "name=\"signer\" value=\"" + worker + "\"";
        assertThat(page(address(frame) + "/sign?as=HEAT_TREATER"))
                .contains(offered)
                .contains("signed on here");
        assertThat(page(address(frame) + "/sign?as=SECOND")).doesNotContain(offered);
    }

    private MockHttpServletRequestBuilder sign(Floor.Frame frame, long signer, String pin) {
        return form(address(frame) + "/sign", address(frame) + "/sign")
                .param("operation", "" + floor.at(frame).line().operationId())
                .param("as", "SECOND")
                .param("signer", "" + signer)
                .param("pin", pin);
    }

    @Test
    void aWitnessPointIsPassedOnlyAfterTheWaitingTime() throws Exception {
        Floor.Frame frame = floor.frame(SmallRoute.of(
                        SmallRoute.op("100").step("done").witness().sheet(),
                        SmallRoute.op("110").step("next").sheet())
                .sheet());
        assertThat(sent(tick(frame))).contains("The witness was called").doesNotContain("Pass it: nobody came");
        clock.pass(Duration.ofMinutes(31));
        assertThat(page(address(frame))).contains("Pass it: nobody came");
        assertThat(sent(form(address(frame) + "/pass-witness", address(frame))
                        .param("operation", "" + floor.at(frame).line().operationId())))
                .contains("Tick step 1");
    }

    @Test
    void aStepThatAsksForAPhotographIsTickedOnceThereIsOne() throws Exception {
        Floor.Frame frame = floor.frame(SmallRoute.of(
                        SmallRoute.op("080").photo("looked over").step("noted").sheet())
                .sheet());
        assertThat(page(address(frame))).contains("Keep the photograph").doesNotContain("Tick step 1");
        assertThat(sent(tick(frame))).contains("asks for a photograph");
        assertThat(sent(multipart(address(frame) + "/photo")
                        .param("step", "" + nextStep(frame).stepId())
                        .param("actId", UUID.randomUUID().toString())
                        .header(HttpHeaders.REFERER, "http://localhost" + address(frame))
                        .header(HttpHeaders.HOST, "localhost")
                        .with(csrf())))
                .contains("No file came with it.")
                .doesNotContain("file is missing");
        assertThat(sent(photo(frame, new byte[0]))).contains("No photograph was kept");
        assertThat(sent(photo(frame, "not a picture".getBytes(java.nio.charset.StandardCharsets.UTF_16))))
                .contains("Keep the photograph");
        assertThat(sent(photo(frame, picture())))
                .contains("The photograph is kept")
                .contains("alt=\"Step 1, looked over, 08:30\"")
                .contains("Tick step 1");
    }

    private MockMultipartHttpServletRequestBuilder photo(Floor.Frame frame, byte[] content) {
        return multipart(address(frame) + "/photo")
                .file(new MockMultipartFile("file", "node.png", "image/png", content))
                .param("step", "" + nextStep(frame).stepId())
                .param("actId", UUID.randomUUID().toString())
                .header(HttpHeaders.REFERER, "http://localhost" + address(frame))
                .header(HttpHeaders.HOST, "localhost")
                .with(csrf());
    }

    private static byte[] picture() throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), "png", bytes);
        return bytes.toByteArray();
    }

    @Test
    void aFrameIsSentOutAndBookedBackWithItsCertificate() throws Exception {
        Floor.Frame frame = floor.frame(
                SmallRoute.of(SmallRoute.op("105").outside().step("relieved").sheet())
                        .sheet());
        String operation = "" + floor.at(frame).line().operationId();
        assertThat(page(address(frame))).contains("Send it out");
        assertThat(sent(form(address(frame) + "/send-out", address(frame) + "/send-out")
                        .param("operation", operation)
                        .param("recipient", "Heat & Co <north>")))
                .contains("Away at Heat &amp; Co &lt;north&gt;")
                .contains("Book back");
        assertThat(sent(form(address(frame) + "/book-back", address(frame)).param("operation", operation)))
                .contains("was not booked back");
        assertThat(sent(form(address(frame) + "/book-back", address(frame))
                        .param("operation", operation)
                        .param("certificate", "C-77")))
                .contains("Tick step 1");
    }

    @Test
    void theBoxIsShippedOnlyUnderItsOwnSerial() throws Exception {
        Floor.Frame frame = floor.frame(
                SmallRoute.of(SmallRoute.op("200").step("packed").sheet()).sheet());
        Floor.Frame other = floor.frame(
                SmallRoute.of(SmallRoute.op("200").step("packed").sheet()).sheet());
        assertThat(sent(tick(frame))).contains("Serial on the frame");
        assertThat(sent(ship(frame, other.serial())))
                .contains("is another one")
                .contains("value=\"" + other.serial() + "\"");
        assertThat(sent(ship(frame, frame.serial()))).contains("is shipped");
        assertThat(floor.sheet(frame).head().state()).isEqualTo(TravellerState.SHIPPED);
    }

    private MockHttpServletRequestBuilder ship(Floor.Frame frame, String scanned) {
        return form(address(frame) + "/ship", address(frame))
                .param("traveller", "" + frame.travellerId())
                .param("scanned", scanned);
    }

    @Test
    void severalFramesAreTickedTogetherOrNone() throws Exception {
        RouteSheet route = SmallRoute.of(
                        SmallRoute.op("140").at("8").together().step("blasted").sheet(),
                        SmallRoute.op("150").step("coated").sheet())
                .sheet();
        Floor.Frame one = floor.frame(route);
        Floor.Frame two = floor.frame(route);
        assertThat(page("/station?at=8")).contains("Together: blasted");
        assertThat(sent(form("/station/tick-together", "/station"))).contains("No frame was chosen");
        assertThat(sent(form("/station/tick-together", "/station")
                        .param(
                                "step",
                                "" + nextStep(one).stepId(),
                                "" + nextStep(two).stepId())))
                .contains("2 frames are ticked");
        assertThat(nextStep(two).text()).isEqualTo("coated");
    }

    @Test
    void whatExpiresFirstStandsFirstAndHeldFramesStandBelowWhatCanBeWorkedOn() throws Exception {
        RouteSheet route = SmallRoute.of(
                        SmallRoute.op("140")
                                .at("8")
                                .step("masked")
                                .step("blasted")
                                .sheet(),
                        SmallRoute.op("150").at("8").step("coated").sheet())
                .window("BLAST", 60, "140", "150")
                .sheet();
        Floor.Frame held = floor.frame(route);
        sent(tick(held));
        sent(form(address(held) + "/hold", address(held) + "/stop")
                .param("traveller", "" + held.travellerId())
                .param("reason", HoldReason.OVEN_TRACE.name())
                .param("scope", HoldScope.FRAME.name()));
        Floor.Frame begun = floor.frame(route);
        sent(tick(begun));
        Floor.Frame expiring = floor.frame(route);
        sent(tick(expiring));
        sent(tick(expiring));
        clock.pass(Duration.ofMinutes(5));
        Floor.Frame heldInItsWindow = floor.frame(route);
        sent(tick(heldInItsWindow));
        sent(tick(heldInItsWindow));
        sent(form(address(heldInItsWindow) + "/hold", address(heldInItsWindow) + "/stop")
                .param("traveller", "" + heldInItsWindow.travellerId())
                .param("reason", HoldReason.OVEN_TRACE.name())
                .param("scope", HoldScope.FRAME.name()));
        String list = page("/station?at=8");
        assertThat(list).contains("on hold: oven trace");
        assertThat(List.of(place(list, expiring), place(list, heldInItsWindow), place(list, begun), place(list, held)))
                .isSorted()
                .doesNotContain(-1);
    }

    private int place(String list, Floor.Frame frame) {
        return list.indexOf("href=\"" + address(frame) + "\"");
    }

    @Test
    void workSinceAClosedClocksStartIsDoneAgainByOneTap() throws Exception {
        Floor.Frame frame = floor.frame(SmallRoute.of(
                        SmallRoute.op("140").step("blasted").sheet(),
                        SmallRoute.op("150").step("coated").sheet())
                .window("BLAST", 60, "140", "150")
                .sheet());
        assertThat(sent(tick(frame))).contains("BLAST closes in");
        clock.pass(Duration.ofMinutes(61));
        assertThat(page(address(frame)))
                .contains("BLAST closed")
                .contains("Do it again from operation 140")
                .doesNotContain("Tick step 1");
        assertThat(sent(form(address(frame) + "/redo", address(frame))
                        .param("operation", "" + floor.at(frame).line().operationId())
                        .param("clock", "BLAST")))
                .contains("blasted")
                .contains("140 loop 1");
    }

    @Test
    void aStationCheckIsBegunByOneTapAndTickedLikeAFrame() throws Exception {
        RouteSheet sheet = new RouteSheet(
                7,
                "CHECK-AIR",
                "Compressed air",
                "A",
                "ANY",
                Kinds.STATION_CHECK,
                List.of(SmallRoute.op("010").step("water drained").sheet()),
                List.of(),
                List.of());
        when(book.routes())
                .thenReturn(List.of(new RouteSummary(
                        "CHECK-AIR", "Compressed air", "ANY", Kinds.STATION_CHECK, 7L, "A", null, null)));
        when(book.released("CHECK-AIR")).thenReturn(sheet);
        assertThat(page("/station/checks")).contains("not begun today");
        String check = sent(form("/station/checks", "/station/checks").param("route", "CHECK-AIR"));
        assertThat(check).contains("CHECK-AIR-260318").contains("water drained");
        assertThat(page("/station/checks"))
                .contains("/station/CHECK-AIR-260318")
                .contains("begun");
        long traveller = jdbc.sql("select id from traveller where serial = 'CHECK-AIR-260318'")
                .query(Long.class)
                .single();
        long operation = jdbc.sql("select current_operation_id from traveller where id = ?")
                .param(traveller)
                .query(Long.class)
                .single();
        opening.byHand(floor.act(floor.hire(Role.STATION_WORKER)), traveller, operation, null, null, "oil in the air");
        assertThat(jdbc.sql("select distinct chain from log_entry where chain like '%CHECK-AIR-260318'")
                        .query(String.class)
                        .list())
                .isEmpty();
    }
}
