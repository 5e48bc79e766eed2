package org.trammel.shop.overview;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.trammel.shop.ShopTest;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;

/** Somebody writes years later and gives a name, not a serial. */
@ShopTest
class FindingByCustomerTest {

    @Autowired
    private ApplicationContext beans;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private Crew crew;

    private WholeShop shop;
    private WholeShop.Frame frame;
    private String sheet;

    @BeforeEach
    void sell() {
        shop = new WholeShop(beans);
        frame = shop.frame(
                SmallRoute.of(SmallRoute.op("030").step("saw").sheet()).sheet());
        sheet = "/frames/" + frame.serial();
        customer("update customer set name = 'Zelda 100% Quill', contact = 'quill@example.org'");
    }

    @Test
    void whoeverIsToldWhoTheCustomersAreFindsTheFrameByNameOrContact() throws Exception {
        for (Role role : new Role[] {Role.OWNER, Role.QA_LEAD}) {
            for (String typed : new String[] {"da 100% QU", "Quill@Example"}) {
                assertThat(found(typed, role)).as(typed).contains(sheet).contains("order or customer");
            }
        }
    }

    @Test
    void nobodyElseDoes() throws Exception {
        for (Role role : new Role[] {Role.AUDITOR, Role.WELDER, Role.STATION_WORKER}) {
            assertThat(found("quill", role)).doesNotContain(sheet).doesNotContain("or customer");
        }
    }

    @Test
    void signsOfThePatternAreSignsOfTheNameAndTwoLettersAreTooFew() throws Exception {
        for (String typed : new String[] {"0%%Q", "Zel_a", "Zelda!", "qu"}) {
            assertThat(found(typed, Role.OWNER)).as(typed).doesNotContain(sheet);
        }
    }

    @Test
    void whoWasErasedIsFoundNoMore() throws Exception {
        customer("update customer set name = null, contact = null");
        assertThat(found("quill", Role.OWNER)).doesNotContain(sheet);
    }

    private void customer(String update) {
        jdbc.sql(update + " where id = (select customer_id from shop_order where id = ?)")
                .param(frame.orderId())
                .update();
    }

    private String found(String typed, Role role) throws Exception {
        return mvc.perform(get("/frames").param("find", typed).with(Signed.on(crew.byId(shop.hire(role)))))
                .andReturn()
                .getResponse()
                .getContentAsString();
    }
}
