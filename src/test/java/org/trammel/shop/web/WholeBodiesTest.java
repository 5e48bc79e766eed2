package org.trammel.shop.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.request;

import java.lang.reflect.RecordComponent;
import java.net.URI;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.context.ApplicationContext;
import org.springframework.core.MethodParameter;
import org.springframework.core.Nullness;
import org.springframework.http.HttpMethod;
import org.springframework.http.MediaType;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import org.trammel.shop.ShopTest;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;

/** Every address that takes JSON is sent too little: it answers what is missing, never with an incident. */
@ShopTest
class WholeBodiesTest {

    @Autowired
    @Qualifier("requestMappingHandlerMapping")
    private RequestMappingHandlerMapping mapping;

    @Autowired
    private ApplicationContext beans;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Crew crew;

    private WholeShop shop;
    private WholeShop.Frame frame;
    private Person lead;
    private String gauge;

    private record Door(HttpMethod method, String path, Class<?> body) {}

    @BeforeEach
    void aFrameOnItsWay() {
        shop = new WholeShop(beans);
        lead = crew.byId(shop.hire(Role.QA_LEAD, Role.ALIGNER));
        gauge = shop.gauge("CALLIPER", "mm", null, LocalDate.of(2027, 1, 1));
        frame = shop.frame(shop.route(SmallRoute.of(
                        SmallRoute.op("080").plain("080-1", "0.3").step("weld").sheet())
                .sheet()));
    }

    @Test
    void anEmptyBodyIsToldWhatIsMissing() throws Exception {
        Map<String, String> silent = new TreeMap<>();
        List<Door> doors = doors();
        for (Door door : doors) {
            MockHttpServletResponse answer = sent(door, "{}");
            String text = answer.getContentAsString();
            if (answer.getStatus() >= 500) {
                silent.put(door.toString(), text);
            }
            List<String> required = required(door.body());
            if (!required.isEmpty()
                    && required.stream().noneMatch(name -> text.contains("\"" + name + "\""))
                    && answer.getStatus() != 404) {
                // an unknown thing may be told before what is missing
                silent.put(door.toString(), answer.getStatus() + " " + text);
            }
        }
        assertThat(doors).hasSizeGreaterThan(60);
        assertThat(silent).isEmpty();
    }

    @Test
    void nullWhereverItCanBeWrittenIsNoIncident() throws Exception {
        Map<String, String> incidents = new TreeMap<>();
        for (Door door : doors()) {
            for (RecordComponent component : components(door.body())) {
                for (String value : guessed(door, component) ? List.of("null") : values(component.getType())) {
                    String body = "{\"" + component.getName() + "\":" + value + "}";
                    MockHttpServletResponse answer = sent(door, body);
                    if (answer.getStatus() >= 500) {
                        incidents.put(door + " " + body, answer.getContentAsString());
                    }
                }
            }
            for (String body : List.of("null", "[]", "[null]", "7", "\"\"")) {
                MockHttpServletResponse answer = sent(door, body);
                if (answer.getStatus() >= 500) {
                    incidents.put(door + " " + body, answer.getContentAsString());
                }
            }
        }
        assertThat(incidents).isEmpty();
    }

    /** Wrong secrets are counted, and those who come after at the same desk would wait. */
    private static boolean guessed(Door door, RecordComponent component) {
        return door.path().endsWith("/sign-on") || List.of("secret", "pin").contains(component.getName());
    }

    private static List<String> values(Class<?> type) {
        if (Collection.class.isAssignableFrom(type)) {
            return List.of("null", "[null]", "[]", "{}");
        }
        return Map.class.isAssignableFrom(type)
                ? List.of("null", "{\"080-1\":null}", "[]")
                : List.of("null", "{}", "[]", "\"\"", "-1", "1e400");
    }

    private static List<String> required(Class<?> body) {
        return components(body).stream()
                .filter(component -> Nullness.forMethodReturnType(component.getAccessor()) != Nullness.NULLABLE)
                .map(RecordComponent::getName)
                .toList();
    }

    private static List<RecordComponent> components(Class<?> body) {
        return body.isRecord() ? Arrays.asList(body.getRecordComponents()) : List.of();
    }

    private MockHttpServletResponse sent(Door door, String body) throws Exception {
        return mvc.perform(request(door.method(), URI.create(door.path()))
                        .contentType(MediaType.APPLICATION_JSON)
                        .content(body)
                        .header("Act-Id", UUID.randomUUID())
                        .with(Signed.on(lead))
                        .with(csrf()))
                .andReturn()
                .getResponse();
    }

    private List<Door> doors() {
        List<Door> doors = new ArrayList<>();
        for (Map.Entry<RequestMappingInfo, HandlerMethod> one :
                mapping.getHandlerMethods().entrySet()) {
            for (MethodParameter parameter : one.getValue().getMethodParameters()) {
                if (parameter.hasParameterAnnotation(RequestBody.class)) {
                    one.getKey()
                            .getMethodsCondition()
                            .getMethods()
                            .forEach(method -> one.getKey()
                                    .getPatternValues()
                                    .forEach(path -> doors.add(new Door(
                                            method.asHttpMethod(), filled(path), parameter.getParameterType()))));
                }
            }
        }
        return doors;
    }

    private String filled(String path) {
        long operation = shop.at(frame).line().operationId();
        String of = path.replaceFirst("^/api/v1/", "").replaceFirst("/.*", "");
        String id = switch (of) {
            case "orders" -> String.valueOf(frame.orderId());
            case "operations" -> String.valueOf(operation);
            case "characteristics" ->
                String.valueOf(shop.at(frame).characteristics().get(0).characteristicId());
            case "travellers" -> String.valueOf(frame.travellerId());
            case "people" -> String.valueOf(lead.id());
            default -> "1";
        };
        return path.replace("{orderId}", String.valueOf(frame.orderId()))
                .replace("{id}", id)
                .replace("{code}", "gauges".equals(of) ? gauge : "1")
                .replace("{key}", "cost.hour")
                .replaceAll("\\{[^}]+}", "1");
    }
}
