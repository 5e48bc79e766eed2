package org.trammel.shop.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.MockMvc;
import org.trammel.shop.ShopTest;

@ShopTest
class QualificationPagesTest {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private People people;

    @Autowired
    private Qualifications qualifications;

    @Test
    void anAuthorisationOfTheShopNeedsNoSixMonthTickAndEmptyFieldsStayEmpty() throws Exception {
        Person aligner = people.newcomer(Role.ALIGNER);
        mvc.perform(post("/shop/people/" + aligner.id() + "/qualifications")
                        .with(Signed.on(people.newcomer(Role.QA_LEAD)))
                        .with(csrf())
                        .param("actId", UUID.randomUUID().toString())
                        .param("kind", "align")
                        .param("standard", "shop rule")
                        .param("metal", "")
                        .param("thicknessFromMm", "")
                        .param("issuedOn", "2026-01-08")
                        .param("expiresOn", "")
                        .param("confirmedOn", ""))
                .andExpect(redirectedUrl("/shop/people/" + aligner.id()));
        assertThat(qualifications.of(aligner.id())).singleElement().satisfies(held -> {
            assertThat(held.kind()).isEqualTo("ALIGN");
            assertThat(held.sixMonthConfirmation()).isFalse();
            assertThat(held.until()).isNull();
        });
    }

    @Test
    void aKindThatSaysNotWhatItPermitsIsShownAsOfNoKnownKind() throws Exception {
        Person welder = people.newcomer(Role.WELDER);
        Person qa = people.newcomer(Role.QA_LEAD);
        for (String kind : new String[] {"JUGGLING-7", "WELD:TI:141"}) {
            mvc.perform(post("/shop/people/" + welder.id() + "/qualifications")
                            .with(Signed.on(qa))
                            .with(csrf())
                            .param("actId", UUID.randomUUID().toString())
                            .param("kind", kind)
                            .param("standard", "shop rule")
                            .param("issuedOn", "2026-01-08"))
                    .andExpect(redirectedUrl("/shop/people/" + welder.id()));
        }
        assertThat(mvc.perform(get("/shop/people").with(Signed.on(qa)))
                        .andReturn()
                        .getResponse()
                        .getContentAsString())
                .contains("JUGGLING-7, of no known kind", "weld titanium")
                .doesNotContain("juggling 7");
    }

    @Test
    void takingItBackAsksWhyAndTellsItOnThePersonsSheet() throws Exception {
        Person aligner = people.newcomer(Role.ALIGNER);
        Person qa = people.newcomer(Role.QA_LEAD);
        long held = qualifications
                .enter(
                        people.act(qa.id()),
                        aligner.id(),
                        Qualification.of("ALIGN", "shop rule", LocalDate.of(2026, 1, 8), null, false))
                .id();
        String end = "/api/v1/people/qualifications/" + held + "/end";
        for (String wrong : List.of(
                "\"on\":\"2026-03-18\"",
                "\"on\":\"2027-01-01\",\"reason\":\"left\"",
                "\"on\":\"2025-12-31\",\"reason\":\"left\"")) {
            mvc.perform(post(end)
                            .with(Signed.on(qa))
                            .with(csrf())
                            .contentType(MediaType.APPLICATION_JSON)
                            .content("{\"actId\":\"" + UUID.randomUUID() + "\"," + wrong + "}"))
                    .andExpect(status().isUnprocessableContent());
        }
        assertThat(qualifications.of(aligner.id()).get(0).endedOn()).isNull();
        mvc.perform(post("/shop/people/" + aligner.id() + "/qualifications/" + held + "/end")
                        .with(Signed.on(qa))
                        .with(csrf())
                        .param("actId", UUID.randomUUID().toString())
                        .param("reason", "read the plate upside down"))
                .andExpect(redirectedUrl("/shop/people/" + aligner.id()));
        assertThat(mvc.perform(get("/shop/people/" + aligner.id()).with(Signed.on(qa)))
                        .andReturn()
                        .getResponse()
                        .getContentAsString())
                .contains(qa.initials() + ": read the plate upside down");
    }

    @Test
    void aProgramMayLeaveItOutToo() throws Exception {
        Person aligner = people.newcomer(Role.ALIGNER);
        mvc.perform(post("/api/v1/people/" + aligner.id() + "/qualifications")
                        .with(Signed.on(people.newcomer(Role.QA_LEAD)))
                        .with(csrf())
                        .contentType(MediaType.APPLICATION_JSON)
                        .content(
                                "{\"actId\":\"%s\",\"kind\":\"ALIGN\",\"standard\":\"shop rule\",\"issuedOn\":\"2026-01-08\"}"
                                        .formatted(UUID.randomUUID())))
                .andExpect(status().isOk());
        assertThat(qualifications.of(aligner.id())).hasSize(1);
    }
}
