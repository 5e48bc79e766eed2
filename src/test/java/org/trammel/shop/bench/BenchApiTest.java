package org.trammel.shop.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import com.jayway.jsonpath.JsonPath;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.http.MediaType;
import org.springframework.mock.web.MockHttpServletResponse;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.people.Role;

class BenchApiTest extends AtTheTablet {

    @Test
    void aFrameIsFoundByItsTagAndATagOfAnotherRevisionIsRefused() throws Exception {
        Floor.Frame frame = floor.frame(BenchRoute.route());
        assertThat(json(get("/api/v1/frames").param("code", frame.serial() + "/A"), "$.serial"))
                .isEqualTo(frame.serial());
        MockHttpServletResponse old = answer(get("/api/v1/frames").param("code", frame.serial() + "/B"), worker);
        assertThat(old.getStatus()).isEqualTo(409);
        assertThat(old.getContentType()).startsWith("application/problem+json");
        assertThat(old.getContentAsString()).contains("superseded").contains("instead");
    }

    @Test
    void aTickIsTakenAndTheSameActIsTakenOnce() throws Exception {
        Floor.Frame frame = floor.frame(BenchRoute.route());
        String act = UUID.randomUUID().toString();
        String body = "{\"actId\":\"" + act + "\",\"steps\":[" + nextStep(frame).stepId() + "]}";
        assertThat(sentJson("/api/v1/ticks", body).getStatus()).isEqualTo(200);
        assertThat(sentJson("/api/v1/ticks", body).getStatus()).isEqualTo(200);
        assertThat(floor.at(frame).line().code()).isEqualTo("070");
        assertThat(sentJson("/api/v1/ticks", body.replace(act, UUID.randomUUID().toString()))
                        .getStatus())
                .isEqualTo(409);
    }

    @Test
    void theSameActIdWithOtherContentIsRefusedAndWhatCameFirstStands() throws Exception {
        Floor.Frame frame = floor.frame(
                SmallRoute.of(SmallRoute.op("080").plain("080-1", "0.3").sheet())
                        .sheet());
        String gauge = floor.gauge("CALLIPER", "mm", "0.005");
        String address = "/api/v1/characteristics/"
                + floor.at(frame).characteristics().get(0).characteristicId() + "/readings";
        String body = "{\"actId\":\"%s\",\"raw\":[\"0.20\"],\"gauge\":\"%s\"}".formatted(UUID.randomUUID(), gauge);
        String reading = JsonPath.read(sentJson(address, body).getContentAsString(), "$.readingId")
                .toString();
        MockHttpServletResponse other = sentJson(address, body.replace("0.20", "0.10"));
        assertThat(other.getStatus()).isEqualTo(422);
        assertThat(other.getContentAsString())
                .contains("\"field\":\"actId\"")
                .contains("already used for")
                .contains("other content");
        String later = body.replace("{", "{\"deviceAt\":\"2026-03-18T07:30:00Z\",");
        assertThat(sentJson(address, later).getContentAsString())
                .as("the time at which it is sent again is no content")
                .contains("\"readingId\":" + reading + ",", "\"raw\":[0.20]");
    }

    @Test
    void rawValuesAreNumbersOrTextThatKeepsItsDecimals() throws Exception {
        Floor.Frame frame = floor.frame(SmallRoute.of(SmallRoute.op("080")
                        .plain("080-1", "0.3")
                        .plain("080-2", "0.3")
                        .sheet())
                .sheet());
        String gauge = floor.gauge("CALLIPER", "mm", "0.005");
        long id = floor.at(frame).characteristics().get(0).characteristicId();
        MockHttpServletResponse read = sentJson(
                "/api/v1/characteristics/" + id + "/readings",
                "{\"actId\":\"%s\",\"raw\":[0.20],\"gauge\":\"%s\"}".formatted(UUID.randomUUID(), gauge));
        assertThat(read.getContentAsString()).contains("\"raw\":[0.20]").contains("CONFORMING");
        String reading = JsonPath.read(read.getContentAsString(), "$.readingId").toString();
        assertThat(sentJson(
                                "/api/v1/readings/" + reading + "/correction",
                                "{\"actId\":\"%s\",\"reading\":{\"raw\":[\"0,25\"],\"gauge\":\"%s\"},\"reason\":\"slip\"}"
                                        .formatted(UUID.randomUUID(), gauge))
                        .getContentAsString())
                .contains("0.25");
    }

    @Test
    void whatIsNotAFigureNamesItsPlace() throws Exception {
        Floor.Frame frame = floor.frame(
                SmallRoute.of(SmallRoute.op("080").plain("080-1", "0.3").sheet())
                        .sheet());
        long id = floor.at(frame).characteristics().get(0).characteristicId();
        for (String raw : List.of("\"1.234,5\"", "\"NaN\"", "\"0x1F\"", "1e3", "\"\"")) {
            MockHttpServletResponse refused = sentJson(
                    "/api/v1/characteristics/" + id + "/readings",
                    "{\"actId\":\"%s\",\"raw\":[%s],\"gauge\":\"G\"}".formatted(UUID.randomUUID(), raw));
            assertThat(refused.getStatus()).as(raw).isEqualTo(422);
            assertThat(refused.getContentAsString()).as(raw).contains("\"field\":\"raw[0]\"");
        }
    }

    @Test
    void anUnlikelyValueIsAskedAboutWithItsOwnStatus() throws Exception {
        Floor.Frame frame = floor.frame(
                SmallRoute.of(SmallRoute.op("080").plain("080-1", "0.3").sheet())
                        .sheet());
        String gauge = floor.gauge("CALLIPER", "mm", "0.005");
        long id = floor.at(frame).characteristics().get(0).characteristicId();
        String body = "{\"actId\":\"%s\",\"raw\":[30],\"gauge\":\"%s\"}".formatted(UUID.randomUUID(), gauge);
        assertThat(sentJson("/api/v1/characteristics/" + id + "/readings", body).getStatus())
                .isEqualTo(428);
    }

    @Test
    void theFirstFigureOfAReadBackIsNotGivenToTheSecondPersonsProgram() throws Exception {
        Floor.Frame frame = floor.frame(
                SmallRoute.of(SmallRoute.op("060").readBack("060-1", "0.3").sheet())
                        .sheet());
        String gauge = floor.gauge("CALLIPER", "mm", "0.005");
        long id = floor.at(frame).characteristics().get(0).characteristicId();
        floor.read(worker, id, gauge, "0.123");
        String tag = "/api/v1/frames/" + frame.serial();
        assertThat(answer(get(tag + "/readings"), worker).getContentAsString()).isEqualTo("[]");
        assertThat(json(get(tag), "$.at.characteristics[0].nominal")).isEqualTo("null");
    }

    @Test
    void aHoldIsPlacedAndLiftedByWhomItsReasonNames() throws Exception {
        Floor.Frame frame = floor.frame(BenchRoute.route());
        MockHttpServletResponse placed = sentJson(
                "/api/v1/holds",
                "{\"actId\":\"%s\",\"traveller\":%d,\"reason\":\"LOT_TRACE\",\"words\":\"doubted\"}"
                        .formatted(UUID.randomUUID(), frame.travellerId()));
        String hold = JsonPath.read(placed.getContentAsString(), "$.holdId").toString();
        String lift = "/api/v1/holds/" + hold + "/lift";
        String body = "{\"actId\":\"%s\",\"words\":\"tested\"}";
        assertThat(sentJson(lift, body.formatted(UUID.randomUUID())).getStatus())
                .isEqualTo(403);
        MockHttpServletResponse lifted = sentJson(lift, body.formatted(UUID.randomUUID()), floor.hire(Role.QA_LEAD));
        assertThat(lifted.getContentAsString()).isEqualTo("{\"lifted\":true}");
    }

    @Test
    void aStepIsAWholeNumberAndNeverRoundedToAnother() throws Exception {
        Floor.Frame frame = floor.frame(BenchRoute.route());
        MockHttpServletResponse refused = sentJson(
                "/api/v1/ticks",
                "{\"actId\":\"%s\",\"steps\":[%d.5]}"
                        .formatted(UUID.randomUUID(), nextStep(frame).stepId()));
        assertThat(refused.getStatus()).isEqualTo(400);
        assertThat(refused.getContentAsString()).contains("steps");
        assertThat(nextStep(frame).ticked()).isFalse();
    }

    @Test
    void aBodyLargerThanAnyActIsRefusedInThreeParts() throws Exception {
        String body = "{\"steps\":[1],\"reason\":\"" + "x".repeat(5 * 1024 * 1024) + "\"}";
        for (String path : List.of("/api/v1/ticks", "/api/v1/sign-on")) {
            MockHttpServletResponse refused = sentJson(path, body);
            assertThat(refused.getStatus()).as(path).isEqualTo(413);
            assertThat(refused.getContentAsString()).contains("\"instead\":", "no act needs so many");
        }
    }

    @Test
    void whatIsInTheWayIsToldInThreePartsAndNotAsAFailureOfTheProgram() throws Exception {
        Floor.Frame frame = floor.frame(BenchRoute.route());
        sentJson(
                "/api/v1/holds",
                "{\"actId\":\"%s\",\"traveller\":%d,\"reason\":\"SAFETY\",\"words\":\"doubted\"}"
                        .formatted(UUID.randomUUID(), frame.travellerId()));
        String told = json(get("/api/v1/frames/" + frame.serial()), "$.inTheWay[0]");
        assertThat(told).contains("type", "urn:trammel:refusal:state", "title", "detail", "instead");
        assertThat(told).doesNotContain("stackTrace", "suppressed", "localizedMessage", "cause=");
    }

    @Test
    void anActWithoutAnIdIsRefused() throws Exception {
        Floor.Frame frame = floor.frame(BenchRoute.route());
        MockHttpServletResponse refused =
                sentJson("/api/v1/ticks", "{\"steps\":[" + nextStep(frame).stepId() + "]}");
        assertThat(refused.getStatus()).isEqualTo(422);
        assertThat(refused.getContentAsString()).contains("actId");
    }

    @Test
    void whatIsLeftOutIsRefusedAndNeverAnError() throws Exception {
        Floor.Frame frame = floor.frame(BenchRoute.route());
        long operation = floor.at(frame).line().operationId();
        for (String path : List.of(
                "/api/v1/ticks",
                "/api/v1/unticks",
                "/api/v1/operations/" + operation + "/stop",
                "/api/v1/operations/" + operation + "/signatures",
                "/api/v1/operations/" + operation + "/consignments",
                "/api/v1/operations/" + operation + "/consignments/return",
                "/api/v1/operations/" + operation + "/redo",
                "/api/v1/holds",
                "/api/v1/calls",
                "/api/v1/travellers/" + frame.travellerId() + "/notes",
                "/api/v1/travellers/" + frame.travellerId() + "/shipment",
                "/api/v1/station-checks")) {
            MockHttpServletResponse refused = sentJson(path, "{\"actId\":\"" + UUID.randomUUID() + "\"}");
            assertThat(refused.getStatus()).as(path).isBetween(400, 499);
            assertThat(refused.getContentType()).as(path).startsWith("application/problem+json");
        }
    }

    private MockHttpServletResponse sentJson(String path, String body) throws Exception {
        return sentJson(path, body, worker);
    }

    private MockHttpServletResponse sentJson(String path, String body, long by) throws Exception {
        return answer(
                post(path).with(csrf()).contentType(MediaType.APPLICATION_JSON).content(body), by);
    }

    private String json(org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder request, String path)
            throws Exception {
        Object found = JsonPath.read(answer(request, worker).getContentAsString(), path);
        return String.valueOf(found);
    }
}
