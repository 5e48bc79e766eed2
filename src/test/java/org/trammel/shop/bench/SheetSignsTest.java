package org.trammel.shop.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.ArgumentMatchers.anyLong;
import static org.mockito.Mockito.when;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.designs.Designs;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.people.Role;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.travellers.Remarks;
import org.trammel.shop.travellers.Signing;

/** What a sheet and the list of a station say beside the work. */
class SheetSignsTest extends AtTheTablet {

    @Autowired
    private Signing signing;

    @Autowired
    private Remarks remarks;

    @Autowired
    private Designs designs;

    @Test
    void aTickBehindASignedGateIsNotOfferedToBeTakenBackByWhoMadeIt() throws Exception {
        Floor.Frame frame = floor.frame(SmallRoute.of(
                        SmallRoute.op("080").step("look").hold(Signer.SECOND).sheet(),
                        SmallRoute.op("090").step("age").sheet())
                .sheet());
        sent(tick(frame));
        assertThat(page(address(frame))).contains("Untick, until");
        long second = floor.hire(Role.STATION_WORKER);
        signing.sign(floor.act(second), floor.at(frame).line().operationId(), second, Signer.SECOND);
        assertThat(page(address(frame))).doesNotContain("Untick");
        assertThat(page(address(frame), floor.hire(Role.QA_LEAD)))
                .contains("Untick")
                .doesNotContain("Untick, until");
    }

    @Test
    void aSignedRevisionThatIsNotReleasedIsToldOnTheSheet() throws Exception {
        Floor.Frame frame = floor.frame(BenchRoute.route());
        assertThat(page(address(frame))).doesNotContain("waits for its release");
        when(designs.waitingAfter(anyLong())).thenReturn(Optional.of("B"));
        assertThat(page(address(frame)))
                .contains("Revision B of the drawing is signed and waits for its release")
                .contains("before going on by A");
    }

    @Test
    void whatIsNotedIsCountedAtTheHeadOfTheSheet() throws Exception {
        Floor.Frame frame = floor.frame(BenchRoute.route());
        assertThat(page(address(frame))).doesNotContain("Different on this one: ");
        remarks.note(floor.act(worker), frame.travellerId(), null, "left cable port");
        remarks.note(floor.act(worker), frame.travellerId(), null, "no rack mounts");
        assertThat(page(address(frame))).contains("Different on this one: 2 notes");
    }

    @Test
    void aFrameWhosePartsAreInWorkStandsLastAndIsSaidNotToBeThere() throws Exception {
        Floor.Frame whole = floor.frame(SmallRoute.of(
                        SmallRoute.op("170").at("77").joins().step("join").sheet())
                .child("FT", SmallRoute.of(SmallRoute.op("150").step("coat").sheet()))
                .child("SA", SmallRoute.of(SmallRoute.op("150").step("coat").sheet()))
                .sheet());
        Floor.Frame there = floor.frame(
                SmallRoute.of(SmallRoute.op("180").at("77").step("build").sheet())
                        .sheet());
        String list = page("/station?at=77");
        assertThat(list).contains("not there yet: its parts are in work");
        assertThat(list.indexOf(there.serial())).isPositive().isLessThan(list.indexOf(whole.serial()));
    }
}
