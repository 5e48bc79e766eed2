package org.trammel.shop.travellers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.trammel.shop.floor.SmallRoute.op;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.ShopTest;
import org.trammel.shop.designs.Nominal;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Role;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.settings.Settings;

/** Who may keep something by concession under a newer revision: the same people as decide of any concession. */
@ShopTest
class KeptByConcessionTest {

    @Autowired
    private ApplicationContext beans;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private Revising revising;

    @Autowired
    private Signing signing;

    @Autowired
    private Travellers travellers;

    @Autowired
    private Settings settings;

    private WholeShop shop;
    private long worker;
    private long qa;
    private long owner;
    private long both;
    private WholeShop.Frame frame;
    private String limits = "this frame";
    private @Nullable LocalDate until = LocalDate.of(2027, 12, 31);

    @BeforeEach
    void open() {
        shop = new WholeShop(beans);
        worker = shop.hire(Role.STATION_WORKER);
        qa = shop.hire(Role.QA_LEAD);
        owner = shop.hire(Role.OWNER);
        both = shop.hire(Role.QA_LEAD, Role.OWNER);
        frame = shop.frame(SmallRoute.of(
                        op("030").step("saw").hold(Signer.SECOND).sheet(),
                        op("150").step("spray").sheet())
                .sheet());
        shop.tickAll(frame, worker);
    }

    @Test
    void oneWhoTookPartKeepsNothingByConcessionWhicheverOfTheTwoTheyAre() {
        sign(qa);
        AtTheBench.refused(() -> keep(qa, owner), "took part in operation 030");
        AtTheBench.refused(() -> keep(both, shop.hire(Role.STATION_WORKER)), "owner");
        keep(both, owner);
        assertThat(letter()).isEqualTo("B");
    }

    @Test
    void anOwnerWhoSignedItDoesNotAgreeToKeepIt() {
        sign(owner);
        AtTheBench.refused(() -> keep(qa, owner), "took part in operation 030");
        keep(qa, both);
        assertThat(letter()).isEqualTo("B");
    }

    @Test
    void onePersonSpeaksForBothOnlyWhereNobodyElseIsHere() {
        sign(shop.hire(Role.STATION_WORKER));
        AtTheBench.refused(() -> keep(both, both), "speak for QA lead and owner", "is here");
        assertThat(letter()).isEqualTo("A");
        jdbc.sql("insert into absence (person_id, from_on, until_on, noted_by)"
                        + " select distinct person_id, cast(:day as date), cast(:day as date), 0 from person_role"
                        + " where role in ('QA_LEAD', 'OWNER') and person_id <> :both")
                .param("day", settings.today())
                .param("both", both)
                .update();
        try {
            keep(both, both);
        } finally {
            jdbc.sql("delete from absence where noted_by = 0").update();
        }
        assertThat(letter()).isEqualTo("B");
    }

    @Test
    void whatIsKeptHasItsLimitsAndALastDayThatIsNotPast() {
        sign(shop.hire(Role.STATION_WORKER));
        limits = " ";
        AtTheBench.refused(() -> keep(qa, owner), "What it is limited to");
        limits = "this frame";
        until = null;
        AtTheBench.refused(() -> keep(qa, owner), "no last day");
        until = settings.today().minusDays(1);
        AtTheBench.refused(() -> keep(qa, owner), "is past");
        until = settings.today();
        keep(qa, owner);
        assertThat(jdbc.sql("select limits from carry_over where owner_id = ? and expires_on = ?")
                        .params(owner, until)
                        .query(String.class)
                        .list())
                .containsExactly("this frame");
    }

    /** Past its last day, what was measured for the older drawing opens no gate of the newer one. */
    @Test
    void aReadingThatIsKeptLetsAGateBePassedUntilItsLastDay() {
        long route = shop.route(SmallRoute.of(
                        op("080").plain("080-1", "0.3").step("look").sheet(),
                        op("150").step("spray").sheet())
                .sheet());
        frame = shop.frame(route);
        shop.tickAll(frame, worker);
        String gauge = shop.gauge("CALLIPER", "mm", null, LocalDate.of(2028, 1, 1));
        shop.read(worker, shop.at(frame).characteristics().get(0).characteristicId(), gauge, "0.25");
        until = settings.today();
        shop.drawing(
                frame.designId(),
                2,
                Map.of("080-1", new Nominal(BigDecimal.ZERO, new BigDecimal("-0.1"), new BigDecimal("0.1"), true)));
        keep(qa, owner);
        long now = travellers.inForce(frame.serial(), "").travellerId();
        assertThat(travellers.whole(now).get(0).characteristics())
                .singleElement()
                .satisfies(c -> assertThat(c.state()).isEqualTo(CharacteristicState.CONCESSION));
        assertThat(jdbc.sql("select concession_until from characteristic where id = ?")
                        .param(travellers
                                .whole(now)
                                .get(0)
                                .characteristics()
                                .get(0)
                                .characteristicId())
                        .query(LocalDate.class)
                        .single())
                .isEqualTo(until);
    }

    private void sign(long by) {
        signing.sign(shop.act(by), shop.at(frame).line().operationId(), by, Signer.SECOND);
    }

    private void keep(long lead, long agreeing) {
        Map<Long, Revising.Said> said = new HashMap<>();
        revising.finished(frame.orderId())
                .forEach(f -> said.put(f.operationId(), new Revising.Said(Carry.CONCESSION, "long enough")));
        long drawing = jdbc.sql("select max(id) from design_revision where design_id = ? and position = 2")
                .param(frame.designId())
                .query(Long.class)
                .optional()
                .orElseGet(() -> shop.drawing(frame.designId(), 2, Map.of()));
        revising.supersede(
                shop.act(lead),
                frame.orderId(),
                drawing,
                shop.sheet(frame).head().routeRevisionId(),
                said,
                new Revising.Agreed(agreeing, "Rider One, by letter", limits, until));
    }

    private String letter() {
        return travellers.inForce(frame.serial(), "").letter();
    }
}
