package org.trammel.shop.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.delete;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import jakarta.servlet.http.Cookie;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.MvcResult;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.RequestPostProcessor;
import org.trammel.shop.ShopTest;
import org.trammel.shop.stations.Devices.Enrolled;

@ShopTest
class DoorsTest {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private People people;

    @Autowired
    private Roster roster;

    @Autowired
    private Crew crew;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/",
                "/shop/people",
                "/shop/stations",
                "/set-up",
                "/own-secrets",
                "/nowhere",
                "/api/docs",
                "/actuator"
            })
    void nothingIsShownBeforeSomebodySignsOn(String path) throws Exception {
        people.owner();
        String location = mvc.perform(get(path))
                .andExpect(status().isSeeOther())
                .andReturn()
                .getResponse()
                .getHeader("Location");
        assertThat(location).startsWith("/sign-on");
    }

    @Test
    void aProgramThatIsNotSignedOnGetsAProblemDocument() throws Exception {
        mvc.perform(get("/api/v1/people"))
                .andExpect(status().isUnauthorized())
                .andExpect(content().contentType(MediaType.APPLICATION_PROBLEM_JSON))
                .andExpect(jsonPath("$.instead").value("Sign on first."));
    }

    @Test
    void whatIsNotAskedForIsShutEvenToTheOwner() throws Exception {
        mvc.perform(get("/actuator/env").with(Signed.on(crew.byId(people.owner()))))
                .andExpect(status().isForbidden());
        mvc.perform(get("/actuator/health")).andExpect(status().isOk());
    }

    @Test
    void anEnrolledTabletShowsTheCrewAndSignsOnByPin() throws Exception {
        Enrolled tablet = people.tablet();
        Person welder = people.somebody(Role.WELDER);
        mvc.perform(get("/sign-on").param("person", "" + welder.id()).cookie(cookie(tablet)))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("PIN of Person of tests")));
        mvc.perform(signOn(tablet, welder, People.PIN).with(csrf())).andExpect(redirectedUrl("/station"));
        mvc.perform(get("/api/v1/sign-on").cookie(cookie(tablet)))
                .andExpect(jsonPath("$.person.initials").value(welder.initials()))
                .andExpect(jsonPath("$.tablet").value(true));
        mvc.perform(delete("/api/v1/sign-on").cookie(cookie(tablet)).with(csrf()))
                .andExpect(status().isNoContent());
        mvc.perform(get("/api/v1/sign-on").cookie(cookie(tablet)))
                .andExpect(jsonPath("$.person").isEmpty());
    }

    @Test
    void aBadgeChoosesThePersonAndProvesNothing() throws Exception {
        Enrolled tablet = people.tablet();
        Person welder = people.somebody(Role.WELDER);
        mvc.perform(get("/sign-on").param("code", people.badge(welder)).cookie(cookie(tablet)))
                .andExpect(content().string(containsString("PIN of Person of tests")));
        mvc.perform(get("/api/v1/sign-on").cookie(cookie(tablet)))
                .andExpect(jsonPath("$.person").isEmpty());
    }

    @Test
    void aBrowserThatIsNoTabletIsShownNoNames() throws Exception {
        people.owner();
        mvc.perform(get("/sign-on"))
                .andExpect(status().isOk())
                .andExpect(content().string(not(containsString("Person of tests"))));
    }

    @Test
    void aRequestThatChangesSomethingWithoutThePagesTokenIsRefused() throws Exception {
        Enrolled tablet = people.tablet();
        Person welder = people.somebody(Role.WELDER);
        mvc.perform(signOn(tablet, welder, People.PIN)).andExpect(status().isForbidden());
        mvc.perform(signOn(tablet, welder, People.PIN).with(csrf().useInvalidToken()))
                .andExpect(status().isForbidden());
        mvc.perform(get("/api/v1/sign-on").cookie(cookie(tablet)))
                .andExpect(jsonPath("$.person").isEmpty());
    }

    @Test
    void theDevicesCookieIsKeptFromScriptsAndOtherSites() throws Exception {
        Enrolled tablet = people.tablet();
        Person welder = people.somebody(Role.WELDER);
        String plain = mvc
                .perform(signOn(tablet, welder, People.PIN).with(csrf()))
                .andReturn()
                .getResponse()
                .getHeaders("Set-Cookie")
                .stream()
                .filter(header -> header.startsWith("trammel-device"))
                .findFirst()
                .orElseThrow();
        assertThat(plain)
                .contains("HttpOnly", "SameSite=Strict", "Path=/", "Max-Age=")
                .doesNotContain("Secure");
        String overTls = mvc
                .perform(signOn(tablet, welder, People.PIN).secure(true).with(csrf()))
                .andReturn()
                .getResponse()
                .getHeaders("Set-Cookie")
                .stream()
                .filter(header -> header.startsWith("trammel-device"))
                .findFirst()
                .orElseThrow();
        assertThat(overTls).contains("Secure");
    }

    @Test
    void aDeskSignsOnByPasswordAndGetsACookieThatEndsWithTheBrowser() throws Exception {
        Person qa = people.atDesk(Role.QA_LEAD);
        MockHttpServletResponse answer = mvc.perform(post("/sign-on")
                        .with(csrf())
                        .with(from(People.address()))
                        .param("initials", qa.initials().toLowerCase())
                        .param("password", People.PASSWORD)
                        .param("next", "/shop/people"))
                .andExpect(redirectedUrl("/shop/people"))
                .andReturn()
                .getResponse();
        String cookie = answer.getHeaders("Set-Cookie").stream()
                .filter(header -> header.startsWith("trammel-device"))
                .findFirst()
                .orElseThrow();
        assertThat(cookie).contains("HttpOnly", "SameSite=Strict").doesNotContain("Max-Age");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "https://elsewhere.example",
                "//elsewhere.example",
                "/\\elsewhere.example",
                "javascript:alert(1)",
                "/\t/elsewhere.example",
                "elsewhere",
                "/sign-on"
            })
    void afterSigningOnNobodyIsSentElsewhere(String next) throws Exception {
        Enrolled tablet = people.tablet();
        Person welder = people.somebody(Role.WELDER);
        mvc.perform(signOn(tablet, welder, People.PIN).param("next", next).with(csrf()))
                .andExpect(redirectedUrl("/station"));
    }

    @Test
    void anAuditorReadsInitialsInsteadOfNamesAndChangesNothing() throws Exception {
        Person auditor = people.newcomer(Role.AUDITOR);
        Person welder = roster.rename(
                people.act(people.owner()), people.newcomer(Role.WELDER).id(), "Hidden Name");
        mvc.perform(get("/api/v1/people/" + welder.id()).with(Signed.on(auditor)))
                .andExpect(jsonPath("$.name").value(welder.initials()));
        mvc.perform(get("/shop/people/" + welder.id()).with(Signed.on(auditor)))
                .andExpect(status().isOk())
                .andExpect(content().string(not(containsString("Hidden Name"))));
        mvc.perform(post("/api/v1/people/" + welder.id() + "/name")
                        .with(Signed.on(auditor))
                        .with(csrf())
                        .header("Act-Id", UUID.randomUUID())
                        .contentType(MediaType.APPLICATION_JSON)
                        .content("{\"name\":\"Changed\"}"))
                .andExpect(status().isForbidden());
        assertThat(crew.byId(welder.id()).name()).isEqualTo("Hidden Name");
    }

    @Test
    void anAuditorChangesTheirOwnPassword() throws Exception {
        Person auditor = people.atDesk(Role.AUDITOR);
        mvc.perform(post("/own-secrets/password")
                        .with(Signed.on(auditor))
                        .with(csrf())
                        .param("actId", UUID.randomUUID().toString())
                        .param("secret", People.PASSWORD)
                        .param("newPassword", "seven herons on a jetty")
                        .param("newPasswordAgain", "seven herons on a jetty"))
                .andExpect(redirectedUrl("/own-secrets"));
        mvc.perform(post("/own-secrets/password")
                        .with(Signed.on(auditor))
                        .with(csrf())
                        .param("actId", UUID.randomUUID().toString())
                        .param("secret", People.PASSWORD)
                        .param("newPassword", "eight herons on a jetty")
                        .param("newPasswordAgain", "eight herons on a jetty"))
                .andExpect(status().isUnprocessableContent());
    }

    @Test
    void aPageRunsNoScriptAndNoStyleButOurOwnFiles() throws Exception {
        mvc.perform(get("/sign-on"))
                .andExpect(header().string("Content-Security-Policy", containsString("default-src 'self'")))
                .andExpect(header().string("Referrer-Policy", "same-origin"))
                .andExpect(header().string("X-Content-Type-Options", "nosniff"))
                .andExpect(header().string("Cache-Control", containsString("no-store")));
    }

    @Test
    void somethingThatWeighsAsksForTheSecretOnceMore() throws Exception {
        Person qa = people.atDesk(Role.QA_LEAD);
        Person welder = people.newcomer(Role.WELDER);
        MockHttpServletRequestBuilder giving = post("/api/v1/people/" + welder.id() + "/pin")
                .with(Signed.on(qa))
                .with(csrf())
                .header("Act-Id", UUID.randomUUID())
                .contentType(MediaType.APPLICATION_JSON);
        mvc.perform(giving.content("{\"secret\":\"not the word\"}")).andExpect(status().isUnprocessableContent());
        mvc.perform(giving.content("{\"secret\":\"" + People.PASSWORD + "\"}"))
                .andExpect(status().isOk())
                .andExpect(jsonPath("$.secret").isNotEmpty());
    }

    @Test
    void aBadgeOfNobodyIsRefusedAboveTheNamesThatCanBeTappedInstead() throws Exception {
        Enrolled tablet = people.tablet();
        Person welder = people.somebody(Role.WELDER);
        MvcResult refused = mvc.perform(get("/sign-on").cookie(cookie(tablet)).param("code", "NO-BADGE"))
                .andExpect(redirectedUrl("/sign-on?place=DOER&next="))
                .andReturn();
        mvc.perform(get("/sign-on?all=true").cookie(cookie(tablet)).flashAttrs(refused.getFlashMap()))
                .andExpect(content().string(containsString("Tap your name instead.")))
                .andExpect(content().string(containsString(welder.name())));
    }

    @Test
    void aSheetThatIsRefusedAtATabletKeepsTheFootOfTheStation() throws Exception {
        Person worker = people.somebody(Role.STATION_WORKER);
        mvc.perform(get("/station/NOTHING").with(Signed.atTablet(worker, null)))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("href=\"/station\"")))
                .andExpect(content().string(not(containsString("Run of the shop"))));
    }

    private static MockHttpServletRequestBuilder signOn(Enrolled tablet, Person person, String pin) {
        return post("/sign-on")
                .cookie(cookie(tablet))
                .param("actId", UUID.randomUUID().toString())
                .param("person", "" + person.id())
                .param("pin", pin);
    }

    private static Cookie cookie(Enrolled device) {
        return new Cookie("trammel-device", device.token());
    }

    private static RequestPostProcessor from(String address) {
        return request -> {
            request.setRemoteAddr(address);
            return request;
        };
    }
}
