package org.trammel.shop.materials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.trammel.shop.ShopTest;
import org.trammel.shop.designs.TubePlace;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.CharacteristicSheet;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.routes.Rule;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.travellers.Bench;
import org.trammel.shop.travellers.Travellers;

/** Each place of a frame takes the tube of the drawing, scanned from a lot that holds it; until all have theirs nothing passes. */
@ShopTest(properties = "trammel.test.database=tube_issue")
class TubeIssueTest {

    @Autowired
    private ApplicationContext beans;

    @Autowired
    private TubeIssues tubes;

    @Autowired
    private TubeRecords records;

    @Autowired
    private LotSections sections;

    @Autowired
    private LotRegister register;

    @Autowired
    private Lots lots;

    @Autowired
    private TubeSheets sheets;

    @Autowired
    private Travellers travellers;

    @Autowired
    private Bench bench;

    private WholeShop shop;
    private AtTheRack rack;
    private long lead;
    private long worker;

    @BeforeEach
    void open() {
        shop = new WholeShop(beans);
        lead = shop.hire(Role.QA_LEAD);
        worker = shop.hire(Role.STATION_WORKER);
        rack = new AtTheRack(beans, shop, lead);
    }

    private long at(WholeShop.Frame frame) {
        return shop.at(frame).line().operationId();
    }

    private void issue(WholeShop.Frame frame, String place, String lot) {
        tubes.issue(shop.act(worker), at(frame), AtTheRack.scan(place, lot));
    }

    private void issueAll(WholeShop.Frame frame, String lot) {
        tubes.open(at(frame)).forEach(place -> issue(frame, place, lot));
    }

    private void tick(WholeShop.Frame frame, String lot) {
        bench.tick(
                shop.act(worker),
                List.of(shop.at(frame).steps().stream()
                        .filter(step -> !step.ticked())
                        .findFirst()
                        .orElseThrow()
                        .stepId()),
                lot,
                null);
    }

    private static void refused(ThrowingCallable deed, String... words) {
        assertThatThrownBy(deed).isInstanceOfSatisfying(Refusal.class, refused -> {
            assertThat(refused.what()).isNotBlank();
            assertThat(refused.instead()).isNotBlank();
            assertThat(refused.what() + " " + refused.why() + " " + refused.instead())
                    .contains(words);
        });
    }

    @Test
    void oneScanOfAnotherTubeTicksNothing() {
        WholeShop.Frame frame = rack.frame();
        String heavy = rack.lot("42 × 1,6");
        refused(
                () -> issue(frame, "DOWN_TUBE", heavy),
                "The down tube was not issued.",
                heavy + " holds 42 × 1,6 mm; the drawing asks for 35 × 1,4 mm as down tube.",
                "Take the tube of that section");
        refused(
                () -> tick(frame, heavy),
                "“every tube”",
                "was not ticked",
                "No lot was issued for: down tube, top tube");
        assertThat(lots.madeOf(frame.serial())).isEmpty();
    }

    @Test
    void theStepIsTickedOnceEveryPlaceHasItsTube() {
        WholeShop.Frame frame = rack.frame();
        String lot = rack.whole();
        assertThat(tubes.open(at(frame))).isEqualTo(AtTheRack.places());
        for (String place : AtTheRack.places().subList(1, 9)) {
            issue(frame, place, lot);
        }
        refused(() -> tick(frame, null), "No lot was issued for: down tube.");
        issue(frame, "down_tube", lot.toLowerCase(java.util.Locale.ROOT));
        tick(frame, null);
        tick(frame, null);
        assertThat(shop.at(frame).line().code()).isEqualTo("030");
        assertThat(lots.madeOf(frame.serial()))
                .extracting(MadeOf::position)
                .contains("down tube", "head tube", "drive-side chainstay", "non-drive-side chainstay")
                .hasSize(9);
        assertThat(lots.madeOf(frame.serial())).extracting(MadeOf::place).containsAll(AtTheRack.places());
    }

    @Test
    void aPlaceTakesOneTubeAndOnlyPlacesOfTheFrameTakeAny() {
        WholeShop.Frame frame = rack.frame();
        String lot = rack.whole();
        issue(frame, "SEAT_TUBE", lot);
        refused(() -> issue(frame, "SEAT_TUBE", lot), "was issued as seat tube already", "scrap it first");
        refused(() -> issue(frame, "BOOM_TUBE", lot), "no place “BOOM_TUBE”", "Choose one of them");
        refused(() -> issue(frame, "", lot), "no place without a name");
        refused(() -> issue(frame, "DOWN_TUBE", " "), "No code was scanned");
        long auditor = shop.hire(Role.AUDITOR);
        refused(
                () -> tubes.issue(shop.act(auditor), at(frame), AtTheRack.scan("DOWN_TUBE", lot)),
                "Only people at work");
    }

    @Test
    void tubeOfAnotherTemperIsLaidAside() {
        WholeShop.Frame frame = rack.frame();
        String soft = rack.lot(LotKind.TUBE, "EN AW-6061 T4", null, "35 × 1,4");
        String unsaid = rack.lot(LotKind.TUBE, "EN AW-6061", null, "35 × 1,4");
        refused(() -> issue(frame, "DOWN_TUBE", soft), "its temper is T4, and T6 is asked for", "quarantine rack");
        refused(() -> issue(frame, "DOWN_TUBE", unsaid), "its temper is not on record");
    }

    @Test
    void aQuarantinedLotIsNotIssuedAndOneSetAsideLaterShutsTheGate() {
        WholeShop.Frame frame = rack.frame();
        String lot = rack.whole();
        String bad = rack.lot("35 × 1,4");
        issue(frame, "DOWN_TUBE", bad);
        register.quarantine(shop.act(worker), bad, "stripe of another alloy");
        refused(() -> issue(frame, "TOP_TUBE", bad), bad + " was not issued", "quarantined");
        issueAll(frame, lot);
        refused(() -> tick(frame, null), "The down tube cannot stay as it was issued. " + bad + " is quarantined.");
        register.release(shop.act(lead), bad);
        tick(frame, null);
        register.quarantine(shop.act(worker), bad, "stripe of another alloy after all");
        tick(frame, null);
        assertThat(shop.at(frame).line().code()).isEqualTo("020");
        assertThat(shop.sheet(frame).inTheWay())
                .singleElement()
                .satisfies(
                        refused -> assertThat(refused.why()).contains(bad + ", issued as down tube, is quarantined"));
        register.release(shop.act(lead), bad);
        assertThat(shop.at(frame).line().code())
                .as("the lot was all it waited for")
                .isEqualTo("030");
    }

    @Test
    void aPieceOfALotSetAsideIsReplacedByAnother() {
        WholeShop.Frame frame = rack.frame();
        String bad = rack.lot("35 × 1,4");
        issue(frame, "DOWN_TUBE", bad);
        issueAll(frame, rack.whole());
        register.quarantine(shop.act(worker), bad, "dented in the bundle");
        long use = lots.madeOf(frame.serial()).get(0).useId();
        lots.scrap(shop.act(worker), use, "dented");
        assertThat(tubes.open(at(frame))).containsExactly("DOWN_TUBE");
        issue(frame, "DOWN_TUBE", rack.lot("35 × 1,4"));
        tick(frame, null);
        assertThat(lots.madeOf(frame.serial())).filteredOn(MadeOf::scrapped).hasSize(1);
    }

    @Test
    void oneLotGoesToTwoPlacesAndIsCountedForEach() {
        WholeShop.Frame frame = rack.frame();
        String pair = rack.lot(LotKind.TUBE, "T6", 2, "22 × 1,6");
        issue(frame, "CHAINSTAY-D", pair);
        issue(frame, "CHAINSTAY-N", pair);
        assertThat(lots.byCode(pair).orElseThrow().quantityLeft()).isEqualByComparingTo(BigDecimal.ZERO);
        assertThat(records.of(at(frame)).lines())
                .filteredOn(line -> line.place().code().startsWith("CHAINSTAY"))
                .allMatch(TubeSheet.Line::stands);
        WholeShop.Frame next = rack.frame();
        refused(() -> issue(next, "CHAINSTAY-D", pair), pair + " was not issued", "used up");
    }

    @Test
    void aSectionWithinTheToleranceIsForTheQaLead() {
        WholeShop.Frame frame = rack.frame();
        String near = rack.lot("35 × 1,38");
        refused(() -> issue(frame, "DOWN_TUBE", near), "within the tolerance but not the drawing's own", "Call the QA");
        refused(
                () -> tubes.issue(shop.act(lead), at(frame), AtTheRack.scan("DOWN_TUBE", near)),
                "Say why it is taken all the same");
        tubes.issue(
                shop.act(lead),
                at(frame),
                new TubeIssues.Scan("DOWN_TUBE", near, null, null, "no other in stock, 0,02 thinner"));
        assertThat(records.of(at(frame)).lines().get(0)).satisfies(line -> {
            assertThat(line.stands()).isTrue();
            assertThat(line.issued()).isNotNull();
            assertThat(line.issued().reason()).isEqualTo("no other in stock, 0,02 thinner");
        });
    }

    @Test
    void aPlainTubeIsNoButtedOne() {
        WholeShop.Frame frame = rack.frame();
        String plain = rack.lot("31,8 × 0,9");
        String butted = rack.lot("31,8 × 0,9/0,6");
        refused(() -> issue(frame, "TOP_TUBE", plain), "asks for 31,8 × 0,9/0,6/0,9 mm, butted");
        issue(frame, "TOP_TUBE", butted);
    }

    @Test
    void aLotOfNoStatedSectionGoesToNoDrawnPlaceUntilTheQaLeadStatesIt() {
        WholeShop.Frame frame = rack.frame();
        String unknown = rack.lot();
        refused(() -> issue(frame, "DOWN_TUBE", unknown), "The section of " + unknown + " is not on record");
        List<Section> own = Section.read("35 × 1,4", "Not read.");
        refused(() -> sections.state(shop.act(worker), unknown, own), "QA lead");
        refused(() -> sections.state(shop.act(lead), unknown, List.of()), "No section was entered");
        sections.state(shop.act(lead), unknown, own);
        issue(frame, "DOWN_TUBE", unknown);
        sections.state(shop.act(lead), unknown, Section.read("42 × 1,6", "Not read."));
        assertThat(sections.of(lots.byCode(unknown).orElseThrow().id()))
                .as("the newest statement stands")
                .extracting(Section::outside_mm)
                .containsExactly(new BigDecimal("42"));
        String rod = Rack.code();
        refused(() -> sections.state(shop.act(lead), rod, own), rod);
    }

    @Test
    void aFittingGoesWhereOneIsJoinedInAndNowhereElse() {
        WholeShop.Frame frame = rack.frame();
        String shells = rack.lot(LotKind.FITTING, "T6", null, "42 × 4,25");
        issue(frame, "SHELL", shells);
        refused(() -> issue(frame, "DOWN_TUBE", shells), "the down tube is cut from a tube");
        refused(() -> issue(frame, "HEAD_TUBE", rack.lot("50 × 4")), "asks for 54 mm outside as head tube");
    }

    /** A bundle of dropouts is a lot of fittings too, and nobody can tell by its label. */
    @Test
    void aFittingOfNoStatedSectionIsForTheQaLead() {
        WholeShop.Frame frame = rack.frame();
        String unsaid = rack.lot(LotKind.FITTING, "T6", null);
        refused(
                () -> issue(frame, "HEAD_TUBE", unsaid),
                "The head tube was not issued.",
                "is undecided: its section is not on record, and the drawing asks for 54 mm outside as head tube",
                "Call the QA lead");
        refused(() -> issue(frame, "SHELL", rack.lot()), "is undecided: its section is not on record");
        refused(
                () -> tubes.issue(shop.act(lead), at(frame), AtTheRack.scan("HEAD_TUBE", unsaid)),
                "Say why it is taken all the same");
        tubes.issue(
                shop.act(lead), at(frame), new TubeIssues.Scan("HEAD_TUBE", unsaid, null, null, "measured 54,0 × 5,0"));
        issueAll(frame, rack.whole());
        assertThat(records.of(at(frame)).complete()).isTrue();
        tick(frame, null);
    }

    @Test
    void aTubeThatIsCutAgainGoesToItsOwnPlace() {
        WholeShop.Frame frame = rack.frame();
        String lot = rack.whole();
        issueAll(frame, lot);
        tick(frame, null);
        tick(frame, null);
        int pieces = lots.madeOf(frame.serial()).size();
        String foreign = rack.lot("35 × 1,4");
        refused(() -> tick(frame, foreign), foreign + " was issued to no place of this frame", "sheet of tubes");
        tick(frame, lot);
        assertThat(lots.madeOf(frame.serial()))
                .as("a scan before the cut takes nothing more")
                .hasSize(pieces);
        long down = lots.madeOf(frame.serial()).stream()
                .filter(made -> "DOWN_TUBE".equals(made.place()))
                .findFirst()
                .orElseThrow()
                .useId();
        lots.scrap(shop.act(worker), down, "mitres out of phase; cut another");
        tick(frame, null);
        assertThat(shop.at(frame).line().code()).isEqualTo("030");
        lots.issue(shop.act(worker), lot, frame.serial(), "some tube", "030", null, null);
        assertThat(shop.at(frame).line().code())
                .as("another tube is not the down tube")
                .isEqualTo("030");
        issue(frame, "DOWN_TUBE", foreign);
        assertThat(shop.at(frame).line().code()).isEqualTo("040");
    }

    @Test
    void theSheetOfTubesIsReachedWhereverATubeIsLost() {
        WholeShop.Frame frame = rack.frame();
        String lot = rack.whole();
        assertThat(sheets.at(shop.sheet(frame))).contains(at(frame));
        issueAll(frame, lot);
        tick(frame, null);
        tick(frame, null);
        tick(frame, lot);
        tick(frame, null);
        assertThat(shop.at(frame).line().code()).isEqualTo("040");
        assertThat(sheets.at(shop.sheet(frame))).isEmpty();
        long seat = lots.madeOf(frame.serial()).stream()
                .filter(made -> "SEAT_TUBE".equals(made.place()))
                .findFirst()
                .orElseThrow()
                .useId();
        lots.scrap(shop.act(worker), seat, "bent the wrong way");
        tick(frame, null);
        assertThat(sheets.at(shop.sheet(frame))).contains(at(frame));
        issue(frame, "SEAT_TUBE", lot);
        assertThat(lots.madeOf(frame.serial())).hasSize(10);
    }

    /** Nothing of the frame is drawn but its down tube, which the characteristics tell. */
    @Test
    void aTypedDrawingHasThePlacesOfItsKind() {
        WholeShop.Frame frame = shop.frame(SmallRoute.of(
                        SmallRoute.op("020")
                                .step(AtTheRack.everyTube())
                                .characteristic(downTube("Down tube outside diameter", "42"))
                                .characteristic(downTube("Down tube wall", "1.4"))
                                .sheet(),
                        SmallRoute.op("030").step("cut").sheet())
                .sheet());
        assertThat(tubes.open(at(frame))).isEqualTo(AtTheRack.places());
        refused(() -> issue(frame, "DOWN_TUBE", rack.lot("35 × 1,4")), "asks for 42 × 1,4 mm as down tube");
        TubePlace beforeTheCut = records.of(
                        travellers.whole(frame.travellerId()).get(1).line().operationId())
                .lines()
                .get(0)
                .place();
        assertThat(records.asked(beforeTheCut)).as("cut again").isEqualTo("42 × 1,4 mm");
        issueAll(frame, rack.lot("42 × 1,4"));
        tick(frame, null);
    }

    private static CharacteristicSheet downTube(String name, String nominal) {
        return new CharacteristicSheet(
                name.substring(name.length() - 4),
                name,
                "mm",
                2,
                false,
                new BigDecimal(nominal),
                new BigDecimal("-0.1"),
                new BigDecimal("0.1"),
                "CALLIPER",
                List.of("once"),
                Reduction.SINGLE,
                Rule.PLAIN,
                List.of(Signer.WORKER),
                false,
                false,
                false,
                false,
                null,
                0,
                null,
                null,
                "test");
    }
}
