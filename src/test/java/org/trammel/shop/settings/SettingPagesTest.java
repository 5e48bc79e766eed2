package org.trammel.shop.settings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.put;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.nio.file.Path;
import java.util.UUID;
import org.h2.jdbcx.JdbcDataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.RequestPostProcessor;
import org.trammel.shop.ShopTest;
import org.trammel.shop.Statements;
import org.trammel.shop.TestCrew;
import org.trammel.shop.TestEngine;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;

@ShopTest
class SettingPagesTest {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Settings settings;

    @Autowired
    private TestCrew hands;

    @Autowired
    private Crew crew;

    @Autowired
    private Statements statements;

    private RequestPostProcessor qa;
    private RequestPostProcessor worker;

    @BeforeEach
    void hire() {
        qa = Signed.on(crew.byId(hands.hire(Role.QA_LEAD)));
        worker = Signed.on(crew.byId(hands.hire(Role.STATION_WORKER)));
    }

    @Test
    void thePageSaysWhatEachEngineIsForAndWhichIsInUse() throws Exception {
        String page = page("/shop/settings");
        assertThat(page)
                .contains("H2 is for one computer and for trying out. PostgreSQL is for the shop's record.")
                .contains("Guard band factor", "1,65", "ISO 14253-1", "Last back-up");
        assertThat(page).contains(TestEngine.running().name().equals("h2") ? "<dd>H2 2." : "<dd>PostgreSQL 1");
    }

    @Test
    void anH2FileTellsTheWriteDelayItReallyRunsWith(@TempDir Path folder) {
        assertThat(h2(folder.resolve("a") + ";WRITE_DELAY=0").writeDelayMs()).isZero();
        assertThat(h2(folder.resolve("a") + ";WRITE_DELAY=0").mayLose()).isFalse();
        assertThat(h2(folder.resolve("b").toString()).writeDelayMs()).isPositive();
        assertThat(h2(folder.resolve("b").toString()).mayLose()).isTrue();
    }

    private static StorageFacts.Storage h2(String path) {
        JdbcDataSource source = new JdbcDataSource();
        source.setURL("jdbc:h2:file:" + path);
        return new StorageFacts(source).storage();
    }

    @Test
    void whoMayNotChangeASettingIsShownNoFormForIt() throws Exception {
        String form = "action=\"/shop/settings/guard.factor\"";
        assertThat(shown("/shop/settings/guard.factor", qa)).contains(form);
        assertThat(shown("/shop/settings/guard.factor", worker))
                .contains("For the owner and the QA lead.")
                .doesNotContain(form);
    }

    private String shown(String path, RequestPostProcessor to) throws Exception {
        return mvc.perform(get(path).with(to)).andReturn().getResponse().getContentAsString();
    }

    @Test
    void theQaLeadChangesASettingByItsForm() throws Exception {
        long seen = settings.inForce("shop.frames.limit").id();
        mvc.perform(post("/shop/settings/shop.frames.limit")
                        .with(qa)
                        .with(csrf())
                        .param("actId", UUID.randomUUID().toString())
                        .param("seen", "" + seen)
                        .param("value", "20")
                        .param("source", "own count")
                        .param("reason", "<script>alert(1)</script>"))
                .andExpect(redirectedUrl("/shop/settings/shop.frames.limit"));
        assertThat(settings.whole("shop.frames.limit")).isEqualTo(20);
        assertThat(page("/shop/settings/shop.frames.limit"))
                .contains("own count", "&lt;script&gt;", "came with the program")
                .doesNotContain("<script>alert");
    }

    @Test
    void nobodyElseChangesASetting() throws Exception {
        String body = "{\"value\": \"1.5\", \"source\": \"me\", \"reason\": \"easier\"}";
        mvc.perform(put("/api/v1/settings/guard.factor")
                        .with(worker)
                        .with(csrf())
                        .header("Act-Id", UUID.randomUUID().toString())
                        .contentType(MediaType.APPLICATION_JSON)
                        .content(body))
                .andExpect(status().isForbidden())
                .andExpect(jsonPath("$.instead").isNotEmpty());
        assertThat(settings.number("guard.factor")).isEqualByComparingTo("1.65");
    }

    @Test
    void theApiTellsValueSourceAndHistory() throws Exception {
        mvc.perform(get("/api/v1/settings/guard.factor").with(worker))
                .andExpect(jsonPath("$.value").value("1.65"))
                .andExpect(jsonPath("$.source").isNotEmpty());
        mvc.perform(get("/api/v1/settings/guard.factor/history").with(worker))
                .andExpect(jsonPath("$.length()").value(1));
        mvc.perform(get("/api/v1/settings/no.such").with(worker)).andExpect(status().isNotFound());
    }

    @Test
    void theListCostsNoStatementForTheSettings() throws Exception {
        page("/shop/settings");
        assertThat(statements.during(() -> page("/shop/settings"))).hasSizeLessThanOrEqualTo(1);
        assertThat(page("/shop")).contains("/shop/gauges", "/shop/lots", "/shop/settings");
    }

    private String page(String path) throws Exception {
        return mvc.perform(get(path).with(worker))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
    }
}
