package org.trammel.shop.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;
import org.trammel.shop.travellers.CharacteristicState;

/** The torque sheet at a tablet, on paper and for programs: no way leads past the band or the witness. */
class TorquePagesTest extends AtTheStand {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Crew people;

    @Test
    void theSheetLeadsFromBoltToBolt() throws Exception {
        Floor.Frame frame = frame(torque("a-1", "each bolt"));
        FramePart stem = give(frame, component(ComponentKind.STEM, plate("a-1")), "");
        String address = "/torques/" + at(frame);
        String of = stem.id() + "-" + stem.component().fasteners().get(0).id();
        assertThat(page("/station/" + frame.serial())).contains("href=\"" + address + "\"");
        assertThat(page(address))
                .contains(
                        "0 of 1",
                        "Bolt 1",
                        "in the order 1 3 2 4",
                        "pass 1 of 2",
                        "3,3",
                        tool,
                        "Torque from this part");
        form(address + "/bolts", "of", of, "round", "1", "pass", "1", "bolt", "1", "gauge", tool);
        assertThat(page(address)).contains("Bolt 3 clicked");
        MockHttpServletResponse stale =
                form(address + "/bolts", "of", of, "round", "1", "pass", "1", "bolt", "1", "gauge", tool);
        assertThat(stale.getStatus()).isEqualTo(409);
        tightenAll(frame);
        assertThat(page(address)).contains("To be witnessed, 1", "to be witnessed");
        assertThat(form(address + "/witness", "signer", "", "seen-" + of, "1").getStatus())
                .isEqualTo(422);
        assertThat(form(address + "/witness", "signer", "" + second, "pin", "000000", "seen-" + of, "1")
                        .getStatus())
                .isNotEqualTo(302);
        assertThat(sheet(frame).done()).isZero();
        witness(frame, second);
        assertThat(page(address)).contains("1 of 1", "done");
        assertThat(page(address + "/paper"))
                .contains("Torques, operation " + fit, "1 3 2 4 in 60 100 %", "second person signed the brakes");
    }

    @Test
    void aProgramGetsPastNothing() throws Exception {
        Floor.Frame frame = frame();
        String code = inForce(component(ComponentKind.SEAT_CLAMP, single("clamp", "5", "5.5", "6")));
        String given = json(
                        owner,
                        "/api/v1/frame-components",
                        "{\"traveller\":%d,\"component\":\"%s\"}".formatted(frame.travellerId(), code))
                .getContentAsString();
        assertThat(given).contains("\"code\":\"" + code + "\"");
        TorqueSheet.Line line = sheet(frame).lines().get(0);
        String bolts = "/api/v1/torques/" + at(frame) + "/bolts";
        String body =
                "{\"part\":%d,\"fastener\":%d,\"round\":1,\"pass\":1,\"bolt\":1,\"gauge\":\"%s\",\"targetNm\":%s}";
        MockHttpServletResponse refused = json(
                fitter, bolts, body.formatted(line.part().id(), line.fastener().id(), tool, "5.9"));
        assertThat(refused.getStatus()).isEqualTo(422);
        assertThat(refused.getContentAsString()).contains("Set it to 5,32 to 5,66 N·m");
        assertThat(json(
                                second,
                                bolts,
                                body.formatted(line.part().id(), line.fastener().id(), tool, "5.5"))
                        .getStatus())
                .isEqualTo(403);
        assertThat(json(
                                fitter,
                                bolts,
                                body.formatted(line.part().id(), line.fastener().id(), tool, "5.5"))
                        .getContentAsString())
                .contains("\"verdict\":\"CONFORMING\"");
        assertThat(sheet(frame).done()).isEqualTo(1);
    }

    @Test
    void aSheetIsWrittenAndGivenToAFrameByItsForms() throws Exception {
        String code = "KF-" + UUID.randomUUID().toString().substring(0, 6).toUpperCase(java.util.Locale.ROOT);
        MockHttpServletResponse wrong = form(
                fitter,
                "/shop/components",
                "code",
                code,
                "kind",
                "STEM",
                "what",
                "stem 50",
                "operation",
                fit,
                "name0",
                "face plate",
                "bolts0",
                "4",
                "least0",
                "4,5",
                "target0",
                "6",
                "most0",
                "5,5",
                "source",
                "its sheet",
                "edition",
                "2");
        assertThat(wrong.getStatus()).isEqualTo(422);
        assertThat(wrong.getContentAsString()).contains("lies outside 4.5 to 5.5");
        form(
                fitter,
                "/shop/components",
                "code",
                code,
                "kind",
                "STEM",
                "what",
                "stem 50",
                "operation",
                fit,
                "name0",
                "face plate",
                "bolts0",
                "4",
                "least0",
                "4,5",
                "target0",
                "5",
                "most0",
                "5,5",
                "crosswise0",
                "true",
                "passes0",
                "60 100",
                "thread0",
                "5",
                "answers0",
                "a-1",
                "source",
                "its sheet",
                "edition",
                "2");
        assertThat(page("/shop/components/" + code)).contains("draft", "1 3 2 4 in 60 100 %", "a-1", "witness");
        assertThat(page("/shop/components/new?from=" + code)).contains("value=\"face plate\"");
        components.putInForce(crew.act(qa), code, "A");
        assertThat(page("/shop/components")).contains(code + " A", "in force");
        Floor.Frame frame = frame(torque("a-1", "each bolt"));
        assertThat(page("/components/" + frame.travellerId())).contains("It has no component yet.", code);
        form(owner, "/components/" + frame.travellerId() + "/give", "component", code, "place", "");
        assertThat(page("/components/" + frame.travellerId())).contains("face plate 5 N·m");
        assertThat(state(frame, "a-1")).isEqualTo(CharacteristicState.OWN_SHEET);
        long part = list.of(frame.serial(), "").get(0).id();
        form(owner, "/components/" + frame.travellerId() + "/remove", "part", "" + part, "words", "another stem");
        assertThat(state(frame, "a-1")).isEqualTo(CharacteristicState.OPEN);
    }

    @Test
    void aReaderSeesItWithoutForms() throws Exception {
        Floor.Frame frame = frame();
        give(frame, component(ComponentKind.STEM, plate(null)), "");
        long auditor = floor.hire(Role.AUDITOR);
        String seen = mvc.perform(get("/torques/" + at(frame)).with(Signed.on(people.byId(auditor))))
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(seen).contains("All of them", "face plate").doesNotContain("Bolt 1 clicked");
    }

    private String page(String address) throws Exception {
        MockHttpServletResponse answer = mvc.perform(get(address).with(Signed.atTablet(people.byId(fitter), null, "1")))
                .andReturn()
                .getResponse();
        assertThat(answer.getStatus()).as(address).isEqualTo(200);
        return answer.getContentAsString();
    }

    private MockHttpServletResponse form(String address, String... fields) throws Exception {
        return form(fitter, address, fields);
    }

    private MockHttpServletResponse form(long by, String address, String... fields) throws Exception {
        MockHttpServletRequestBuilder sent = post(address)
                .with(Signed.atTablet(people.byId(by), null, "1"))
                .with(csrf())
                .param("actId", UUID.randomUUID().toString());
        for (int i = 0; i < fields.length; i += 2) {
            sent.param(fields[i], fields[i + 1]);
        }
        return mvc.perform(sent).andReturn().getResponse();
    }

    private MockHttpServletResponse json(long by, String address, String body) throws Exception {
        return mvc.perform(post(address)
                        .with(Signed.on(people.byId(by)))
                        .with(csrf())
                        .header("Act-Id", UUID.randomUUID().toString())
                        .contentType("application/json")
                        .content(body))
                .andReturn()
                .getResponse();
    }
}
