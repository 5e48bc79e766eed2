package org.trammel.shop.welding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.trammel.shop.floor.SmallRoute.op;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.materials.AfterWelds;
import org.trammel.shop.materials.Fit;
import org.trammel.shop.materials.Fits;
import org.trammel.shop.materials.LotKind;
import org.trammel.shop.people.Role;
import org.trammel.shop.routes.OperationSheet;
import org.trammel.shop.routes.RouteSheet;

class AfterWeldTest extends AtTheTorch {

    @Autowired
    private AfterWelds afterWelds;

    @Autowired
    private Fits fits;

    /**
     * Al-Si 4043 gains by dilution where a frame is solution treated and aged and nothing by ageing alone, 4643 responds,
     * Al-Mg 5356 does not: filler articles of the trade; G. Mathers, The Welding of Aluminium and its Alloys, 2002, tables
     * 3.2 and 3.3.
     */
    @ParameterizedTest
    @CsvSource({
        "ER4643, AL6061, 090a 110a, true",
        "ER4043, AL6061, 090a 110a, true",
        "ER5356, AL6061, 090a 110a, false",
        "ER4643, AL6061, 110a, true",
        "ER4043, AL6061, 110a, false",
        "ER5356, AL6061, 110a, false",
        "ER5356, AL6061, 100, false",
        "ER5356, AL7005, 110a, true",
        "ER80S, AL6061, 100, false"
    })
    void theRouteOfTheFrameDecidesWhichRodGoesIn(String filler, String metal, String codes, boolean may) {
        Floor.Frame frame = frame(metal, codes);
        String rod = lot(LotKind.FILLER, filler);
        if (may) {
            scan(frame, "filler", rod);
            assertThat(floor.at(frame).steps().get(0).ticked()).isTrue();
        } else {
            refused(() -> scan(frame, "filler", rod), rod + " was not issued.");
        }
    }

    @Test
    void theRefusalSaysWhatTheRouteHolds() {
        Floor.Frame frame = frame("AL6061", "090a 110a");
        refused(
                () -> scan(frame, "filler", lot(LotKind.FILLER, "ER5356")),
                "with solution and ageing after the weld (its route holds 090a, 110a)",
                "Take a lot of ER4043 or ER4643");
    }

    @Test
    void usedAsWeldedIsSignedForOneFrameByTheQaLeadWithAReason() {
        Floor.Frame frame = frame("AL6061", "100");
        Floor.Frame other = frame("AL6061", "100");
        refused(() -> afterWelds.sign(crew.act(owner), frame.serial(), "strong enough"), "QA lead");
        refused(() -> afterWelds.sign(crew.act(qa), frame.serial(), " "), "Reason");
        afterWelds.sign(crew.act(qa), frame.serial(), "computed as welded, sheet 12");
        refused(() -> afterWelds.sign(crew.act(qa), frame.serial(), "again"), "signed already");
        scan(frame, "filler", lot(LotKind.FILLER, "ER5356"));
        refused(() -> scan(other, "filler", lot(LotKind.FILLER, "ER5356")), "usual for the metal");
        assertThat(afterWelds.signed()).anyMatch(one -> one.serial().equals(frame.serial()));
    }

    /** Steel filler on aluminium can be allowed by no line. */
    @Test
    void noLineAllowsARodOfAnotherFamily() {
        long lead = floor.hire(Role.QA_LEAD);
        refused(
                () -> fits.allow(crew.act(lead), "ER80S", "AL6061", "TIG", Fit.AfterWeld.NONE, "want to"),
                "is for steel and makes scrap of aluminium");
    }

    /** Rows that came with the program say where they were read, or that they were not. */
    @Test
    void shippedLinesOfFillersNameASourceOrSayThatTheyAreFromMemory() {
        List<String> fillers = fits.classes().stream()
                .filter(one -> one.kind() == LotKind.FILLER)
                .map(one -> one.code())
                .toList();
        assertThat(fits.inForce().stream().filter(fit -> fit.by() == 0 && fillers.contains(fit.materialClass())))
                .hasSizeGreaterThan(12)
                .allMatch(fit -> fit.source().contains("Mathers")
                        || fit.source().contains("filler articles")
                        || fit.source().contains("from memory"));
    }

    private Floor.Frame frame(String metal, String codes) {
        List<OperationSheet> operations = Stream.concat(
                        Stream.of(op(weld).lot("filler", "FILLER").step("next").sheet()),
                        Stream.of(codes.split(" "))
                                .map(one -> op(one).step("done").sheet()))
                .toList();
        SmallRoute drawn = SmallRoute.of(operations.toArray(OperationSheet[]::new));
        return floor.frame(new RouteSheet(
                0, "TEST", "test route", "A", metal, "HARDTAIL", drawn.sheet().operations(), List.of(), List.of()));
    }
}
