package org.trammel.shop.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.RequestPostProcessor;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import org.trammel.shop.ShopTest;
import org.trammel.shop.Statements;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;

@ShopTest
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LogPagesTest {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private ActLog log;

    @Autowired
    private Files files;

    @Autowired
    private TestCrew hands;

    @Autowired
    private Crew crew;

    @Autowired
    private Statements statements;

    private final TransactionTemplate transaction;
    private long qa;
    private String frame;
    private Act act;

    @Autowired
    LogPagesTest(PlatformTransactionManager transactions) {
        transaction = new TransactionTemplate(transactions);
    }

    /** The database of the tests is new in every run, the file beside it is not. */
    @BeforeAll
    void beginTheFileAnew(@Autowired CheckpointFile file) throws IOException {
        java.nio.file.Files.deleteIfExists(file.path());
    }

    @BeforeEach
    void record() {
        qa = hands.hire(Role.QA_LEAD);
        frame = "frame:PAGE" + UUID.randomUUID().toString().substring(0, 8);
        for (int i = 1; i <= 60; i++) {
            int step = i;
            act = hands.act(qa);
            transaction.executeWithoutResult(status -> {
                log.opens(act, "tick", "step:" + step, frame);
                log.event(frame, "ticked <b>", Map.of("step", step));
            });
        }
    }

    @Test
    void aChainIsFoundByItsNameAndReadBackwards() throws Exception {
        assertThat(page("/shop/log?beginning=" + frame)).contains(frame, ">60<").doesNotContain("Next chains");
        String newest = page("/shop/log/chain?name=" + frame);
        assertThat(newest)
                .contains("step:60", "step:11", crew.byId(qa).initials(), "ticked &lt;b&gt;", "before=11")
                .doesNotContain("step:10<", "ticked <b>");
        assertThat(page("/shop/log/chain?name=" + frame + "&before=11"))
                .contains("step:10", "step:1<")
                .doesNotContain("Older records");
    }

    @Test
    void aNameIsNoPattern() throws Exception {
        assertThat(page("/shop/log?beginning=%25")).contains("No chain begins so.");
        assertThat(page("/shop/log?beginning=frame_PAGE")).contains("No chain begins so.");
    }

    @Test
    void aChainThatIsNotThereIsSaidSo() throws Exception {
        mvc.perform(get("/shop/log/chain?name=frame:NONE").with(signedOn(qa))).andExpect(status().isNotFound());
    }

    @Test
    void aChainCostsTwoStatements() throws Exception {
        RequestPostProcessor reader = signedOn(qa);
        List<String> sent = statements.during(
                () -> mvc.perform(get("/shop/log/chain?name=" + frame).with(reader)));
        assertThat(sent.stream().filter(sql -> !sql.contains("setting")))
                .as("the records and who the ids are; settings are kept for a while")
                .hasSize(2);
    }

    @Test
    void theLogIsVerifiedOnAPageAndByPrograms() throws Exception {
        assertThat(page("/shop/log/verification?files=true")).contains("Every record fits");
        mvc.perform(get("/api/v1/log/verification").with(signedOn(qa)))
                .andExpect(jsonPath("$.intact").value(true))
                .andExpect(jsonPath("$.found.faults").isEmpty());
        mvc.perform(get("/api/v1/log/chains").param("beginning", frame).with(signedOn(qa)))
                .andExpect(jsonPath("$[0].records").value(60));
        mvc.perform(get("/api/v1/log/chains/" + frame).param("limit", "2").with(signedOn(qa)))
                .andExpect(jsonPath("$.length()").value(2))
                .andExpect(jsonPath("$[0].position").value(60))
                .andExpect(jsonPath("$[0].by").value(qa))
                .andExpect(jsonPath("$[0].events[0].step").value(60));
        mvc.perform(get("/api/v1/log/acts/" + act.id()).with(signedOn(qa)))
                .andExpect(jsonPath("$[0].chain").value(frame));
    }

    @Test
    void aCheckpointIsMadeByThoseWhoAnswerForTheLog() throws Exception {
        mvc.perform(post("/shop/log/checkpoint").with(csrf()).with(signedOn(qa)))
                .andExpect(redirectedUrl("/shop/log"));
        assertThat(page("/shop/log")).contains("Its root ties together");
        mvc.perform(get("/api/v1/log/checkpoints/newest").with(signedOn(qa)))
                .andExpect(jsonPath("$.root").isNotEmpty());
        mvc.perform(post("/api/v1/log/checkpoints")
                        .with(csrf())
                        .with(signedOn(hands.hire(Role.AUDITOR)))
                        .accept(MediaType.APPLICATION_JSON))
                .andExpect(status().isForbidden());
    }

    @ParameterizedTest
    @EnumSource(Role.class)
    void theLogIsForQaOwnerAndAuditor(Role role) throws Exception {
        boolean reads = role == Role.QA_LEAD || role == Role.OWNER || role == Role.AUDITOR;
        long person = hands.hire(role);
        for (String path : List.of(
                "/shop/log",
                "/shop/log/chain?name=" + frame,
                "/shop/log/verification",
                "/api/v1/log/chains",
                "/api/v1/log/chains/" + frame,
                "/api/v1/log/acts/" + act.id(),
                "/api/v1/log/verification")) {
            mvc.perform(get(path).with(signedOn(person))).andExpect(reads ? status().isOk() : status().isForbidden());
        }
    }

    @Test
    void aPhotographIsShownAndADocumentIsNotGivenOutHere() throws Exception {
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(4, 3, BufferedImage.TYPE_INT_RGB), "png", png);
        StoredFile photo = transaction.execute(status -> files.keep(png.toByteArray(), "image/png", "weld.png"));
        StoredFile document = transaction.execute(status ->
                files.keep("%PDF-1.7 letter".getBytes(StandardCharsets.US_ASCII), "application/pdf", "letter.pdf"));
        mvc.perform(get("/photos/" + photo.sha256()).with(signedOn(qa)))
                .andExpect(status().isOk())
                .andExpect(content().contentType(MediaType.IMAGE_PNG))
                .andExpect(header().string("X-Content-Type-Options", "nosniff"))
                .andExpect(header().string("Cache-Control", "max-age=31536000, private, immutable"));
        mvc.perform(get("/photos/" + document.sha256()).with(signedOn(qa))).andExpect(status().isNotFound());
        mvc.perform(get("/photos/" + "0".repeat(64)).with(signedOn(qa))).andExpect(status().isNotFound());
        mvc.perform(get("/photos/..%2Fetc").with(signedOn(qa))).andExpect(status().is4xxClientError());
    }

    private String page(String path) throws Exception {
        return mvc.perform(get(path).with(signedOn(qa)))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
    }

    private RequestPostProcessor signedOn(long person) {
        return Signed.on(crew.byId(person));
    }
}
