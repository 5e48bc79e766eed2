package org.trammel.shop.coats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.Mockito.when;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.materials.Lot;
import org.trammel.shop.materials.Lots;
import org.trammel.shop.materials.NewLot;
import org.trammel.shop.materials.NewPowderSheet;
import org.trammel.shop.materials.PowderSheets;
import org.trammel.shop.nonconformance.Deciding;
import org.trammel.shop.nonconformance.Decision;
import org.trammel.shop.nonconformance.NonconformanceLine;
import org.trammel.shop.nonconformance.Proposal;
import org.trammel.shop.orders.OrderedColours;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.HoldReason;

/** A powder that is found wrong after it was sprayed holds the frames that bear it, and opens a nonconformance on each. */
class WrongPowderTest extends AtTheBooth {

    @Autowired
    private OrderedColours ordered;

    @Autowired
    private PowderSheets sheets;

    @Autowired
    private Lots stock;

    @Autowired
    private Deciding deciding;

    @Autowired
    private Crew people;

    private String green(@Nullable LocalDate until) {
        String lot = powderLot(until);
        sheet(lot, "green");
        return lot;
    }

    private void sheet(String lot, String colour) {
        sheets.enter(crew.act(qa), lot, new NewPowderSheet(colour, List.of(), null, null, null, "sheet of a test"));
    }

    private Floor.Frame scanned(String lot) {
        Floor.Frame frame = atTheCoat();
        when(ordered.of(frame.orderId())).thenReturn(List.of("green"));
        powder(at(frame), lot, "0.4");
        measure(at(frame), "21", "50", "20");
        tick(frame, "booth clean");
        return frame;
    }

    private Floor.Frame sprayed(String lot) {
        Floor.Frame frame = scanned(lot);
        tick(frame, "sprayed");
        assertThat(code(frame)).isEqualTo("999");
        return frame;
    }

    private List<NonconformanceLine> of(Floor.Frame frame) {
        return deciding.of(frame.serial());
    }

    @Test
    void anotherColourThanWasOrderedHoldsEveryFrameThatBearsItInTheActThatEntersIt() {
        inForce("AL6061");
        String lot = green(null);
        Floor.Frame one = sprayed(lot);
        Floor.Frame two = sprayed(lot);
        Floor.Frame waiting = scanned(lot);
        Floor.Frame other = sprayed(green(null));
        sheet(lot, "sand");
        for (Floor.Frame frame : List.of(one, two)) {
            assertThat(of(frame)).singleElement().satisfies(found -> {
                assertThat(found.words()).contains(lot + " is sand", "asks for green");
                assertThat(found.operationCode()).isEqualTo("999");
                assertThat(found.faultCode()).isEqualTo(coat);
            });
            assertThat(floor.sheet(frame).holds()).singleElement().satisfies(hold -> {
                assertThat(hold.reason()).isEqualTo(HoldReason.NONCONFORMANCE);
                assertThat(hold.source()).isEqualTo(of(frame).get(0).number());
            });
            refused(() -> tick(frame, "on"), "on hold");
        }
        assertThat(of(waiting)).isEmpty();
        refused(() -> tick(waiting, "sprayed"), lot + " is sand");
        assertThat(of(other)).isEmpty();
        sheet(lot, "Sand");
        assertThat(of(one)).hasSize(1);
        sheet(lot, "grey");
        assertThat(of(one)).hasSize(2);
    }

    @Test
    void whoeverSprayedItDoesNotDecide() {
        inForce("AL6061");
        String lot = green(null);
        long lead = floor.hire(Role.QA_LEAD);
        worker = lead;
        Floor.Frame frame = sprayed(lot);
        sheet(lot, "sand");
        assertThat(deciding.allows(of(frame).get(0).id(), people.byId(lead))).isFalse();
        assertThat(deciding.allows(of(frame).get(0).id(), people.byId(qa))).isTrue();
        refused(() -> decide(lead, frame, Decision.REWORK), "took part");
        decide(qa, frame, Decision.REWORK);
        FrameSheet.OperationSheetOfFrame again = floor.at(frame);
        assertThat(again.line().code()).isEqualTo(coat);
        assertThat(again.line().loop()).as("a loop of its own").isPositive();
    }

    @Test
    void noWordClearsItWhileTheSheetSaysSo() {
        inForce("AL6061");
        String lot = green(null);
        Floor.Frame frame = sprayed(lot);
        sheet(lot, "sand");
        refused(() -> decide(qa, frame, Decision.CLEARED), "it is so still", lot + " is sand");
        sheet(lot, "green");
        decide(qa, frame, Decision.CLEARED);
        assertThat(floor.sheet(frame).holds()).isEmpty();
        sheet(lot, "sand");
        assertThat(of(frame)).hasSize(2);
    }

    @Test
    void aLotFoundToHaveBeenPastItsLastDayIsFoundOnWhatItWasSprayedOn() {
        inForce("AL6061");
        LocalDate today = LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC);
        String lot = green(today.plusDays(30));
        Floor.Frame frame = sprayed(lot);
        lots.quarantine(crew.act(qa), lot, "the label says another day");
        corrected(lot, today);
        assertThat(of(frame)).isEmpty();
        corrected(lot, today.minusDays(2));
        assertThat(of(frame))
                .singleElement()
                .satisfies(found -> assertThat(found.words()).contains(lot + " was to be used until"));
        assertThat(floor.sheet(frame).holds())
                .anySatisfy(hold -> assertThat(hold.reason()).isEqualTo(HoldReason.NONCONFORMANCE));
        corrected(lot, today.minusDays(2));
        assertThat(of(frame)).hasSize(1);
    }

    private void corrected(String code, LocalDate until) {
        Lot lot = stock.byCode(code).orElseThrow();
        lots.correct(
                crew.act(qa),
                code,
                lot.version(),
                new NewLot(
                        code,
                        lot.kind(),
                        lot.what(),
                        null,
                        lot.materialClass(),
                        "",
                        "",
                        null,
                        lot.supplier(),
                        lot.receivedOn(),
                        until,
                        null,
                        ""));
    }

    private void decide(long by, Floor.Frame frame, Decision decision) {
        deciding.propose(
                crew.act(by),
                of(frame).get(0).id(),
                new Proposal(
                        decision,
                        "held beside its sample",
                        decision == Decision.REWORK ? coat : null,
                        null,
                        null,
                        false,
                        null,
                        false,
                        BigDecimal.ONE,
                        null,
                        Set.of()));
    }
}
