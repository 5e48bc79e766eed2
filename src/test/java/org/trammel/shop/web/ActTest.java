package org.trammel.shop.web;

import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.context.TestComponent;
import org.springframework.http.MediaType;
import org.springframework.security.authentication.TestingAuthenticationToken;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.stereotype.Controller;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.ResponseBody;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;

class ActTest {

    private static final String ID = UUID.randomUUID().toString();
    private static final String WRITTEN = ID + " by 7 at device 3, 2026-03-18T07:30:00Z";

    private final MockMvc mvc = Face.with(Acting.class);

    @AfterEach
    void nobodyIsSignedOn() {
        SecurityContextHolder.clearContext();
    }

    @Test
    void anActCarriesTheClientsIdWhoIsSignedOnAndTheServersTime() throws Exception {
        signOn();
        mvc.perform(post("/acting").param("actId", ID).param("deviceAt", "2026-03-18T07:29:58.123Z"))
                .andExpect(content().string(WRITTEN + ", device 2026-03-18T07:29:58.123Z"));
        mvc.perform(post("/acting").header("Act-Id", ID)).andExpect(content().string(WRITTEN + ", device null"));
    }

    @Test
    void theIdMayBeAPropertyOfTheJsonBodyWhichIsStillRead() throws Exception {
        signOn();
        mvc.perform(post("/api/v1/acting")
                        .contentType(MediaType.APPLICATION_JSON)
                        .content("{\"actId\":\"" + ID + "\",\"note\":\"x\"}"))
                .andExpect(content().string(WRITTEN + ", device null, note x"));
    }

    @Test
    void anActWithoutAnIdOrWithoutAPersonIsRefused() throws Exception {
        mvc.perform(post("/acting").param("actId", ID).accept(MediaType.APPLICATION_JSON))
                .andExpect(status().isForbidden());
        signOn();
        mvc.perform(post("/acting").accept(MediaType.APPLICATION_JSON))
                .andExpect(status().is(422))
                .andExpect(jsonPath("$.field").value("actId"));
        mvc.perform(post("/acting").param("actId", "7").accept(MediaType.APPLICATION_JSON))
                .andExpect(status().is(422));
        mvc.perform(post("/acting").param("actId", ID).param("deviceAt", "soon").accept(MediaType.APPLICATION_JSON))
                .andExpect(jsonPath("$.field").value("deviceAt"));
    }

    @Test
    void aFormSentByScriptIsToldWhereToGoOn() throws Exception {
        mvc.perform(post("/theme").param("theme", "night").header("Sheet-Sent-By", "script"))
                .andExpect(status().isNoContent())
                .andExpect(header().string("Sheet-Go-On-At", "/"))
                .andExpect(header().doesNotExist("Location"));
    }

    private static void signOn() {
        Person person = new Person(7, "SB", "Sunniva Bratte", Set.of(Role.ALIGNER), true);
        SignedOn who = new SignedOn(person, null, 3, "T4", true, List.of(), Instant.MAX);
        SecurityContextHolder.getContext().setAuthentication(new TestingAuthenticationToken(who, ""));
    }

    @TestComponent
    @Controller
    static class Acting {

        @PostMapping("/acting")
        @ResponseBody
        String act(Act act) {
            return written(act);
        }

        @PostMapping("/api/v1/acting")
        @ResponseBody
        String act(@RequestBody Map<String, String> body, Act act) {
            return written(act) + ", note " + body.get("note");
        }

        private static String written(Act act) {
            return act.id() + " by " + act.by() + " at device " + act.device() + ", " + act.at() + ", device "
                    + act.deviceAt();
        }
    }
}
