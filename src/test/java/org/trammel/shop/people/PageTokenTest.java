package org.trammel.shop.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import jakarta.servlet.http.Cookie;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.trammel.shop.ShopTest;
import org.trammel.shop.stations.Devices.Enrolled;

/** The page's token as a browser has it. In a context of its own, since the test support's token replaces it for good. */
@ShopTest(properties = "trammel.test.database=page_token")
class PageTokenTest {

    private static final Pattern FIELD = Pattern.compile("name=\"_csrf\" value=\"([^\"]+)\"");

    @Autowired
    private MockMvc mvc;

    @Autowired
    private People people;

    @Test
    void itIsACookieThatAScriptSendsBackInAHeaderAndAFormInAField() throws Exception {
        Enrolled tablet = people.tablet();
        Person welder = people.somebody(Role.WELDER);
        Cookie device = new Cookie("trammel-device", tablet.token());
        MockHttpServletResponse page = mvc.perform(
                        get("/sign-on").param("person", "" + welder.id()).cookie(device))
                .andReturn()
                .getResponse();
        Cookie token = page.getCookie("XSRF-TOKEN");
        assertThat(token.isHttpOnly()).isFalse();
        assertThat(token.getAttribute("SameSite")).isEqualTo("Strict");

        mvc.perform(signOn(welder).cookie(device, token)).andExpect(status().isForbidden());
        mvc.perform(signOn(welder).cookie(device, token).header("X-XSRF-TOKEN", "another"))
                .andExpect(status().isForbidden());
        mvc.perform(signOn(welder).cookie(device, token).header("X-XSRF-TOKEN", token.getValue()))
                .andExpect(redirectedUrl("/station"));

        Matcher field = FIELD.matcher(page.getContentAsString());
        assertThat(field.find()).isTrue();
        mvc.perform(signOn(welder).cookie(device, token).param("_csrf", field.group(1)))
                .andExpect(redirectedUrl("/station"));
    }

    @Test
    void itStaysTheSameWhileSomebodyIsSignedOnSoThatNoOpenPageIsShut() throws Exception {
        Enrolled tablet = people.tablet();
        Person welder = people.somebody(Role.WELDER);
        Cookie device = new Cookie("trammel-device", tablet.token());
        Cookie token = mvc.perform(get("/sign-on").cookie(device))
                .andReturn()
                .getResponse()
                .getCookie("XSRF-TOKEN");
        mvc.perform(signOn(welder).cookie(device, token).header("X-XSRF-TOKEN", token.getValue()))
                .andExpect(redirectedUrl("/station"));
        assertThat(mvc.perform(get("/sign-on").cookie(device, token))
                        .andReturn()
                        .getResponse()
                        .getCookie("XSRF-TOKEN"))
                .isNull();
    }

    private static MockHttpServletRequestBuilder signOn(Person person) {
        return post("/sign-on").param("person", "" + person.id()).param("pin", People.PIN);
    }
}
