package org.trammel.shop.stations;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;

import java.time.LocalDate;
import java.util.Locale;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpSession;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.RequestPostProcessor;
import org.trammel.shop.ShopTest;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;

@ShopTest
class StationPagesTest {

    private static final String PAGE = "/shop/stations";

    @Autowired
    private MockMvc mvc;

    @Autowired
    private TestCrew hands;

    @Autowired
    private Crew crew;

    @Autowired
    private Stations stations;

    private final MockHttpSession browser = new MockHttpSession();
    private RequestPostProcessor owner;
    private String jig;

    @BeforeEach
    void aStationWithAJig() throws Exception {
        owner = Signed.on(crew.byId(hands.hire(Role.OWNER)));
        jig = "J" + UUID.randomUUID().toString().substring(0, 6).toUpperCase(Locale.ROOT);
        String code = "W" + jig.substring(1);
        send(form(PAGE)
                .param("code", code)
                .param("name", "Weld")
                .param("wipLimit", "3")
                .param("hours", "37,5"));
        send(form(PAGE + "/" + code + "/jigs")
                .param("jig", jig)
                .param("checkedOn", "2026-03-02")
                .param("dueOn", "2026-06-02"));
    }

    @Test
    void aJigIsCheckedStoppedAndFreed() throws Exception {
        assertThat(kept().dueOn()).isEqualTo(LocalDate.parse("2026-06-02"));
        send(check("2026-03-17", "2026-06-17"));
        assertThat(kept().checkedOn()).isEqualTo(LocalDate.parse("2026-03-17"));
        send(form(PAGE + "/jigs/" + jig + "/stop"));
        assertThat(kept().stopped()).isTrue();
        send(form(PAGE + "/jigs/" + jig + "/free"));
        assertThat(kept().stopped()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "1900-01-01, The year 1900 is not between",
        "0001-01-01, The year 1 is not between",
        "9999-12-31, The year 9999 is not between",
        "31.02.2026, There is no such day.",
    })
    void aDayNoShopMeansIsRefusedAndNothingIsKept(String day, String why) throws Exception {
        send(check(day, "2026-06-17").header("Referer", "http://localhost" + PAGE));
        mvc.perform(get(PAGE).with(owner).session(browser)).andExpect(content().string(containsString(why)));
        assertThat(kept().checkedOn()).isEqualTo(LocalDate.parse("2026-03-02"));
    }

    private Jig kept() {
        return stations.jigs().stream()
                .filter(one -> one.code().equals(jig))
                .findFirst()
                .orElseThrow();
    }

    private MockHttpServletRequestBuilder check(String on, String due) {
        return form(PAGE + "/jigs/" + jig + "/check").param("checkedOn", on).param("dueOn", due);
    }

    private MockHttpServletRequestBuilder form(String path) {
        return post(path).with(csrf()).param("actId", UUID.randomUUID().toString());
    }

    private ResultActions send(MockHttpServletRequestBuilder form) throws Exception {
        return mvc.perform(form.with(owner).session(browser)).andExpect(redirectedUrl(PAGE));
    }
}
