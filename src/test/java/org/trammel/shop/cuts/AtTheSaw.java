package org.trammel.shop.cuts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.designs.CutTubes;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.inspection.Readings;
import org.trammel.shop.materials.WaitingForTheSaw;
import org.trammel.shop.nonconformance.Deciding;
import org.trammel.shop.nonconformance.Decision;
import org.trammel.shop.nonconformance.Proposal;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.CharacteristicSheet;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.routes.Rule;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.travellers.Bench;
import org.trammel.shop.travellers.CharacteristicState;
import org.trammel.shop.travellers.FrameSheet;

/** A saw, its drawer, and frames that wait there. */
abstract class AtTheSaw {

    @Autowired
    protected ApplicationContext beans;

    @Autowired
    protected JdbcClient jdbc;

    @Autowired
    protected Cuts cuts;

    @Autowired
    protected HoleSaws saws;

    @Autowired
    protected Readings readings;

    @Autowired
    protected Bench bench;

    @Autowired
    protected Deciding deciding;

    protected WholeShop shop;
    protected Sawn sawn;
    protected long worker;

    @BeforeEach
    void opens() {
        shop = new WholeShop(beans);
        sawn = new Sawn(beans, shop);
        worker = shop.hire(Role.STATION_WORKER);
    }

    protected static CharacteristicSheet asked(String code, String name, String unit, String lower, String upper) {
        return asked(code, name, unit, lower, upper, Reduction.WORST, Rule.PLAIN);
    }

    protected static CharacteristicSheet guarded(String code, String name, String upper) {
        return asked(code, name, "°", null, upper, Reduction.WORST, Rule.GUARDED);
    }

    protected static CharacteristicSheet asked(
            String code, String name, String unit, String lower, String upper, Reduction reduction, Rule rule) {
        return new CharacteristicSheet(
                code,
                name,
                unit,
                2,
                false,
                BigDecimal.ZERO,
                lower == null ? null : new BigDecimal(lower),
                new BigDecimal(upper),
                unit.equals("°") ? "PROTRACTOR" : "FEELER",
                List.of("worst"),
                reduction,
                rule,
                List.of(Signer.WORKER),
                false,
                false,
                false,
                true,
                null,
                0,
                null,
                null,
                "shop default");
    }

    protected WholeShop.Frame frame() {
        return WaitingForTheSaw.frame(
                shop,
                jdbc,
                SmallRoute.of(
                        SmallRoute.op("030")
                                .step("cut")
                                .characteristic(asked("030-6", "Fit-up gap, mate held", "mm", null, "0.15"))
                                .characteristic(asked("030-7", "Blanks off the cut list", "mm", null, "0.5"))
                                .characteristic(asked("030-8", "Mitre angles off the cut list", "°", null, "0.2"))
                                .sheet(),
                        SmallRoute.op("999").step("on").sheet()));
    }

    protected long cutting(WholeShop.Frame frame) {
        FrameSheet.OperationSheetOfFrame at = shop.at(frame);
        bench.tick(shop.act(worker), List.of(at.steps().get(0).stepId()), null, null);
        return at.line().operationId();
    }

    protected CharacteristicState state(WholeShop.Frame frame, String code) {
        return shop.at(frame).characteristics().stream()
                .filter(one -> one.code().equals(code))
                .findFirst()
                .orElseThrow()
                .state();
    }

    protected static CutTubes.Piece piece(Cuts.Sheet sheet, String code) {
        return sheet.pieces().stream()
                .filter(one -> one.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    /** The QA lead and the owner let stay what is not decided yet. */
    protected void conceded(WholeShop.Frame frame) {
        long id = decided(frame, Decision.CONCESSION, null);
        deciding.agree(shop.act(shop.hire(Role.OWNER)), id, deciding.byId(id).decisionNumber());
    }

    protected long decided(WholeShop.Frame frame, Decision decision, String from) {
        long id = deciding.of(frame.serial()).stream()
                .filter(one -> one.decision() == null)
                .findFirst()
                .orElseThrow()
                .id();
        deciding.propose(
                shop.act(shop.hire(Role.QA_LEAD)),
                id,
                new Proposal(
                        decision,
                        "looked at it",
                        from,
                        from == null ? "this tube" : null,
                        from == null ? LocalDate.of(2026, 12, 31) : null,
                        false,
                        null,
                        false,
                        null,
                        null,
                        Set.of()));
        return id;
    }

    /** Records the pieces of the frame's cut list as they should be, but for those named. */
    protected void rest(long operation, Map<BigDecimal, String> drawer, String... but) {
        cuts.of(operation).pieces().stream()
                .filter(piece -> !List.of(but).contains(piece.code()))
                .forEach(piece -> cuts.record(shop.act(worker), operation, sawn.entry(piece, drawer, "0.10")));
    }

    protected static void refused(ThrowingCallable deed, String... says) {
        assertThatThrownBy(deed)
                .isInstanceOfSatisfying(
                        Refusal.class,
                        refusal -> assertThat(refusal.what() + " " + refusal.why() + " " + refusal.instead())
                                .contains(says));
    }
}
