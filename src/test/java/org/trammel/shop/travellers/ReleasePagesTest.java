package org.trammel.shop.travellers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.trammel.shop.ShopTest;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.RouteSheet;

/** Where the release button leads, and what may be released for an order at all. */
@ShopTest
class ReleasePagesTest {

    @Autowired
    private ApplicationContext beans;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private Crew crew;

    @Autowired
    private Revising revising;

    private WholeShop shop;
    private WholeShop.Frame frame;
    private Person lead;
    private Person worker;
    private long route;

    @BeforeEach
    void aFrameInTheShop() {
        shop = new WholeShop(beans);
        lead = crew.byId(shop.hire(Role.QA_LEAD));
        worker = crew.byId(shop.hire(Role.STATION_WORKER));
        route = shop.route(
                SmallRoute.of(SmallRoute.op("070").step("weld").sheet()).sheet());
        frame = shop.frame(route);
    }

    @Test
    void aRevisionReleasedAMomentAgoIsShownWhereItWent() throws Exception {
        MockHttpServletResponse answer = mvc.perform(post("/orders/{id}/release", frame.orderId())
                        .param("designRevisionId", String.valueOf(inForce()))
                        .param("actId", UUID.randomUUID().toString())
                        .with(Signed.on(lead))
                        .with(csrf()))
                .andReturn()
                .getResponse();
        assertThat(answer.getRedirectedUrl()).isEqualTo("/frames/" + frame.serial());
    }

    @Test
    void theNewerRevisionIsAskedAboutOnlyWhereItCanBeReleased() throws Exception {
        long newer = drawn(frame, 2);
        assertThat(asked(lead, newer).getStatus()).isEqualTo(200);
        assertThat(asked(worker, newer).getStatus()).isEqualTo(403);
        MockHttpServletResponse released = asked(lead, inForce());
        assertThat(released.getStatus()).isEqualTo(409);
        assertThat(released.getContentAsString()).contains("Revision A is released");
    }

    @Test
    void aFrameIsNotMadeToAnotherRidersDrawing() throws Exception {
        WholeShop.Frame other = shop.frame(route);
        long drawing = drawn(other, 2);
        assertThat(asked(lead, drawing).getStatus()).isEqualTo(409);
        Refusal refused = catchThrowableOfType(
                Refusal.class,
                () -> revising.supersede(shop.act(lead.id()), frame.orderId(), drawing, route, Map.of(), null));
        assertThat(refused.why()).contains("the drawing for order " + other.number());
    }

    @Test
    void aFrameIsReleasedOnTheRouteItsGateWasSignedForAndThatIsInForce() {
        long drawing = drawn(frame, 2);
        long other = shop.route(
                SmallRoute.of(SmallRoute.op("070").step("weld").sheet()).sheet());
        assertThat(refused(drawing, other).why()).contains("signed for another revision of the route");
        jdbc.sql("update route_revision set state = 'SUPERSEDED', released_of = null where id = ?")
                .param(route)
                .update();
        assertThat(refused(drawing, route).why()).contains("superseded");
    }

    @Test
    void noFrameIsMadeOnTheRouteOfAStationCheck() {
        RouteSheet sheet = SmallRoute.of(
                        SmallRoute.op("001").step("look at the air").sheet())
                .sheet();
        long check = shop.route(new RouteSheet(
                0, "AIR", "air", "A", "ANY", "STATION_CHECK", sheet.operations(), sheet.clocks(), sheet.children()));
        assertThat(refused(shop.drawing(frame.designId(), 2, Map.of()), check).why())
                .contains("a station check");
    }

    private Refusal refused(long drawing, long on) {
        return catchThrowableOfType(
                Refusal.class,
                () -> revising.supersede(shop.act(lead.id()), frame.orderId(), drawing, on, Map.of(), null));
    }

    private long inForce() {
        return jdbc.sql("select design_revision_id from traveller where id = ?")
                .param(frame.travellerId())
                .query(Long.class)
                .single();
    }

    private long drawn(WholeShop.Frame of, int position) {
        long drawing = shop.drawing(of.designId(), position, Map.of());
        jdbc.sql("update design_revision set route_revision_id = ? where id = ?")
                .params(route, drawing)
                .update();
        return drawing;
    }

    private MockHttpServletResponse asked(Person who, long designRevisionId) throws Exception {
        return mvc.perform(get("/orders/{id}/newer-revision", frame.orderId())
                        .param("designRevisionId", String.valueOf(designRevisionId))
                        .with(Signed.on(who)))
                .andReturn()
                .getResponse();
    }
}
