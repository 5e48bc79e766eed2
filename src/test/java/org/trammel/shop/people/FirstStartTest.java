package org.trammel.shop.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import jakarta.servlet.http.Cookie;
import java.time.Clock;
import java.util.EnumSet;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.trammel.shop.ShopTest;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

/** One story on an empty database of its own. */
@ShopTest(properties = "trammel.test.database=first_start")
class FirstStartTest {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private FirstStart firstStart;

    @Autowired
    private Crew crew;

    @Autowired
    private Roster roster;

    @Autowired
    private Clock clock;

    @Autowired
    private JdbcClient jdbc;

    @Test
    void anEmptyShopIsBegunByTheCodeOfTheConsoleOnceAndKnowsNobodyBefore() throws Exception {
        assertThat(crew.all()).isEmpty();
        mvc.perform(get("/")).andExpect(status().isSeeOther()).andExpect(redirectedUrl("/first-owner"));
        mvc.perform(get("/sign-on")).andExpect(redirectedUrl("/first-owner"));

        String earlier = firstStart.newCode();
        String code = firstStart.newCode();
        mvc.perform(make(earlier)).andExpect(status().isUnprocessableContent());
        mvc.perform(make("2222-2222-2222-2222")).andExpect(status().isUnprocessableContent());
        assertThat(crew.all()).isEmpty();

        Cookie desk = mvc.perform(make(code.toLowerCase().replace("-", " ")))
                .andExpect(redirectedUrl("/set-up"))
                .andReturn()
                .getResponse()
                .getCookie("trammel-device");
        String setUp = mvc.perform(get("/set-up").cookie(desk))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(setUp)
                .as("what an empty shop is led through")
                .contains(">Stations<", ">Jigs<", ">People<", ">Gauges<", ">Ovens<", ">Released routes<")
                .contains("href=\"/shop/ovens\"");
        assertThat(crew.all()).singleElement().satisfies(owner -> {
            assertThat(owner.is(Role.OWNER)).isTrue();
            assertThat(owner.is(Role.QA_LEAD)).as("while nobody else is").isTrue();
        });

        long owner = crew.all().get(0).id();
        assertThatThrownBy(() -> roster.giveRoles(
                        new Act(UUID.randomUUID(), owner, null, clock.instant(), null),
                        owner,
                        EnumSet.of(Role.STATION_WORKER)))
                .as("the shop keeps an owner")
                .hasMessageContaining("without an owner");

        mvc.perform(make(code)).andExpect(status().isUnprocessableContent());
        mvc.perform(get("/first-owner")).andExpect(redirectedUrl("/sign-on"));
        assertThatThrownBy(firstStart::newCode).isInstanceOf(Refusal.class);
        assertThat(crew.all()).hasSize(1);
        assertThat(jdbc.sql("select code_hash from first_owner_code")
                        .query(String.class)
                        .list())
                .as("the code itself is not stored")
                .noneMatch(hash -> hash.contains(code.replace("-", "")));
    }

    private static MockHttpServletRequestBuilder make(String code) {
        return post("/first-owner")
                .with(csrf())
                .param("actId", UUID.randomUUID().toString())
                .param("code", code)
                .param("initials", "oo")
                .param("name", "Odd Owner")
                .param("password", People.PASSWORD)
                .param("passwordAgain", People.PASSWORD)
                .param("pin", People.PIN)
                .param("pinAgain", People.PIN);
    }
}
