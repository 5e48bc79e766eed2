package org.trammel.shop.designs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.springframework.mock.web.MockHttpServletResponse;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;

/** A desk at which templates are asked for. */
abstract class AtTheTemplates extends AtTheDrawingDesk {

    void refused(long id, String query, String... said) throws Exception {
        MockHttpServletResponse answer = asked(id, query);
        assertThat(answer.getStatus()).isBetween(400, 499);
        assertThat(answer.getContentAsString())
                .contains("No template was made.")
                .contains(said);
    }

    byte[] file(long id, String query) throws Exception {
        MockHttpServletResponse answer = asked(id, query);
        assertThat(answer.getStatus()).as(answer.getErrorMessage()).isEqualTo(200);
        assertThat(answer.getContentType()).isEqualTo("application/pdf");
        return answer.getContentAsByteArray();
    }

    MockHttpServletResponse asked(long id, String query) throws Exception {
        return mvc.perform(get("/designs/" + id + "/templates" + (query.isEmpty() ? "" : "?" + query))
                        .with(Signed.on(crew.byId(hands.hire(Role.WELDER)))))
                .andReturn()
                .getResponse();
    }

    /** Down tube and top tube clear of their mates' sides. */
    static Map<GeometryInput, BigDecimal> slimmed() {
        Map<GeometryInput, BigDecimal> given = TrailFrame.inputs();
        given.put(GeometryInput.DOWN_TUBE_OUTSIDE, new BigDecimal("38.1"));
        given.put(GeometryInput.TOP_TUBE_OUTSIDE, new BigDecimal("31.8"));
        return given;
    }

    long slim() {
        return revision(slimmed(), Map.of());
    }

    long revision(Map<GeometryInput, String> changed) {
        return revision(TrailFrame.inputs(), changed);
    }

    long revision(Map<GeometryInput, BigDecimal> given, Map<GeometryInput, String> changed) {
        changed.forEach((input, typed) -> given.put(input, new BigDecimal(typed)));
        long id = frame.begin();
        office.change(
                hands.act(frame.owner),
                id,
                null,
                new DesignDraft("Trail frame", "AL6061", "HARDTAIL", null, null, List.of(), given, true));
        return id;
    }
}
