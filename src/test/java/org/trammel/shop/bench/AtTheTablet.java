package org.trammel.shop.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.HttpHeaders;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.mock.web.MockHttpSession;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.AbstractMockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.RequestPostProcessor;
import org.trammel.shop.TestClock;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.FloorTest;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;
import org.trammel.shop.travellers.FrameSheet;

/** A worker at a desk that may open every station, with a browser that follows what it is answered. */
@FloorTest
abstract class AtTheTablet {

    @Autowired
    MockMvc mvc;

    @Autowired
    Floor floor;

    @Autowired
    Crew crew;

    @Autowired
    TestClock clock;

    final MockHttpSession browser = new MockHttpSession();
    long worker;

    @BeforeEach
    void openTheFloor() {
        floor.open();
        worker = floor.hire(Role.STATION_WORKER, Role.WELDER);
    }

    Person person(long id) {
        return crew.byId(id);
    }

    RequestPostProcessor signedOn(long id) {
        return Signed.on(person(id));
    }

    /** The page, whatever its status. */
    String page(String path) throws Exception {
        return page(path, worker);
    }

    String page(String path, long by) throws Exception {
        return answer(get(path), by).getContentAsString();
    }

    MockHttpServletResponse answer(AbstractMockHttpServletRequestBuilder<?> request, long by) throws Exception {
        return mvc.perform(request.session(browser).with(signedOn(by)))
                .andReturn()
                .getResponse();
    }

    /** A form of a page, sent from it. */
    MockHttpServletRequestBuilder form(String path, String from) {
        return post(path)
                .with(csrf())
                .param("actId", UUID.randomUUID().toString())
                .header(HttpHeaders.REFERER, "http://localhost" + from)
                .header(HttpHeaders.HOST, "localhost");
    }

    /** Sends a form and follows to the page it leads to. */
    String sent(AbstractMockHttpServletRequestBuilder<?> form) throws Exception {
        return sent(form, worker);
    }

    String sent(AbstractMockHttpServletRequestBuilder<?> form, long by) throws Exception {
        MockHttpServletResponse answer = answer(form, by);
        assertThat(answer.getStatus()).as(answer.getContentAsString()).isEqualTo(303);
        return page(String.valueOf(answer.getRedirectedUrl()).replace("http://localhost", ""), by);
    }

    String address(Floor.Frame frame) {
        return "/station/" + frame.serial();
    }

    FrameSheet.StepLine nextStep(Floor.Frame frame) {
        return floor.at(frame).steps().stream()
                .filter(s -> !s.ticked())
                .findFirst()
                .orElseThrow();
    }

    MockHttpServletRequestBuilder tick(Floor.Frame frame) {
        return form(address(frame) + "/tick", address(frame))
                .param("step", String.valueOf(nextStep(frame).stepId()));
    }
}
