package org.trammel.shop.gauges;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpSession;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.MvcResult;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.RequestPostProcessor;
import org.trammel.shop.ShopTest;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.Asking;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

/**
 * A crossed study kept with its gauge. The data and the printed figures are those of AIAG, Measurement Systems Analysis,
 * 4th edition (2010), ten parts, three appraisers, three trials: 27.86 % and 4 categories by analysis of variance with a
 * tolerance of 8 (22.68 % of it), 26.68 % and 5 categories by ranges.
 */
@ShopTest
class GaugeStudiesTest {

    private static final AtomicInteger NUMBER = new AtomicInteger();

    @Autowired
    private GaugeRegister register;

    @Autowired
    private GaugeStudies studies;

    @Autowired
    private TestCrew hands;

    @Autowired
    private Crew crew;

    @Autowired
    private MockMvc mvc;

    private long qa;
    private Asking asQa;
    private String code;

    @BeforeEach
    void aGauge() {
        qa = hands.hire(Role.QA_LEAD);
        asQa = new Asking(mvc, Signed.on(crew.byId(qa)));
        code = "GS-" + NUMBER.incrementAndGet();
        GaugeRange range = new GaugeRange(
                "HEIGHT",
                "mm",
                new BigDecimal("-10"),
                new BigDecimal("10"),
                new BigDecimal("0.01"),
                new BigDecimal("0.012"),
                null,
                "certificate");
        register.register(act(), code, new NewGauge("height gauge", null, "", false, List.of(range)));
        register.calibrated(act(), code, LocalDate.of(2026, 1, 1), LocalDate.of(2027, 1, 1), "C-1", null, "");
    }

    /** The published sheet as it would be pasted, its appraisers called by initials. */
    private static String published() throws Exception {
        try (InputStream file =
                Objects.requireNonNull(GaugeStudiesTest.class.getResourceAsStream("/statistics/gauge-study.csv"))) {
            return "part;appraiser;value\n"
                    + new String(file.readAllBytes(), StandardCharsets.UTF_8)
                            .lines()
                            .filter(line -> line.matches("\\d.*"))
                            .map(line -> line.split(","))
                            .map(row -> row[0] + ";" + List.of("ZB", "KO", "AM").get(Integer.parseInt(row[1]) - 1) + ";"
                                    + row[3].replace('.', ','))
                            .collect(Collectors.joining("\n"));
        }
    }

    @Test
    void aPastedStudyComesToThePrintedFiguresByBothMethods() throws Exception {
        String at = entered(published(), "8");
        String page = asQa.page(at);
        assertThat(page)
                .contains("The gauge takes 27,9 % of the spread and tells 4 categories")
                .contains("The gauge takes 26,7 % of the spread and tells 5 categories")
                .contains(">27,9 %<", ">22,7 %<", ">26,7 %<", ">0,3024<")
                .contains(">88,36<", ">9,818<", "pooled with the repeats", "0,974")
                .contains("Part 4 by KO repeats within 1,02")
                .contains("scope=\"col\" class=\"num\">ZB<");
        mvc.perform(get("/api/v1/gauges/" + code + "/studies/" + at.substring(at.lastIndexOf('/') + 1))
                        .with(asQa.who()))
                .andExpect(jsonPath("$.byVariances.categories").value(4))
                .andExpect(jsonPath("$.byRanges.categories").value(5))
                .andExpect(jsonPath("$.readings.length()").value(90));
    }

    @Test
    void whoIsNotTheQaLeadReadsLettersAndNoInitials() throws Exception {
        String at = entered(published(), "");
        RequestPostProcessor other = Signed.on(crew.byId(hands.hire(Role.STATION_WORKER)));
        String page = new Asking(mvc, other).page(at);
        // By their initials AM, KO, ZB: the second of the sheet stays the second.
        assertThat(page)
                .contains("Part 4 by B repeats", "stand by letters", "scope=\"col\" class=\"num\">A<")
                .doesNotContain(">ZB<", ">KO<", ">AM<", "by KO");
        String json = mvc.perform(
                        get("/api/v1" + at.substring("/shop".length())).with(other))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(json).doesNotContain("\"ZB\"", "\"KO\"", "\"AM\"", "KO repeats");
    }

    @Test
    void aGridIsTypedAndWhatIsMissingIsNamedWithoutLosingTheRest() throws Exception {
        assertThat(asQa.page("/shop/gauges/" + code + "/studies/new?parts=2&appraisers=2&trials=2"))
                .contains("Part 2, appraiser 2, trial 2")
                .doesNotContain("Part 3");
        MvcResult refused =
                mvc.perform(grid("")).andExpect(status().isSeeOther()).andReturn();
        MockHttpSession session = (MockHttpSession) refused.getRequest().getSession();
        assertThat(mvc.perform(get("/shop/gauges/" + code + "/studies/new?parts=2&appraisers=2&trials=2")
                                .with(asQa.who())
                                .session(session))
                        .andReturn()
                        .getResponse()
                        .getContentAsString())
                .contains("Part 2 by AM, trial 2, is empty.", "value=\"1,02\"");
        String at = Objects.requireNonNull(
                mvc.perform(grid("1,9")).andReturn().getResponse().getRedirectedUrl());
        assertThat(asQa.page(at)).contains("1,02; 1,01", "Sizes of parts it tells apart");
        assertThat(asQa.page("/shop/gauges/" + code + "/studies")).contains(at, "two bars");
    }

    private MockHttpServletRequestBuilder grid(String last) {
        return asQa.form("/shop/gauges/" + code + "/studies")
                .header(
                        "Referer",
                        "http://localhost/shop/gauges/" + code + "/studies/new?parts=2&appraisers=2&trials=2")
                .param("what", "two bars")
                .param("unit", "mm")
                .param("parts", "2")
                .param("appraisers", "2")
                .param("trials", "2")
                .param("who1", "zb")
                .param("who2", "am")
                .param("v1-1-1", "1,02")
                .param("v1-1-2", "1,01")
                .param("v1-2-1", "1,03")
                .param("v1-2-2", "1,00")
                .param("v2-1-1", "1,90")
                .param("v2-1-2", "1,92")
                .param("v2-2-1", "1,91")
                .param("v2-2-2", last);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1;A;1/1;A;2/2;A;1/2;A;3 | two appraisers or more",
                "1;A;1/1;A;2/1;B;1/1;B;3 | two parts or more",
                "1;A;1/1;B;2/2;A;1/2;B;3 | twice or more",
                "1;A;1/1;A;2/1;B;1/1;B;2/2;A;1/2;A;2/2;B;1 | Part 2 was measured by B 1 times and not 2",
                "1;A;1/1;A;1/1;B;1/1;B;1/2;A;1/2;A;1/2;B;1/2;B;1 | too coarse",
                "1;A;1,2;4 | 4 cells",
                "1;A;x | Line 1",
                "1;A;11/1;A;2 | cannot have read 11",
                "1;A;0,0000001/1;A;2 | 6 after it",
                "1;A;1e-9/1;A;2 | Only digits",
                "=1+1;A;1 | =1+1",
                "1;<b>;1 | <B>",
            })
    void whatCannotBeStudiedIsRefusedInASentence(String typed, String said) {
        Refusal refused = catchThrowableOfType(
                Refusal.class,
                () -> studies.enter(
                        act(),
                        code,
                        new NewStudy(
                                "bars",
                                "mm",
                                null,
                                StudyForm.pasted(typed.strip().replace('/', '\n')))));
        assertThat(refused).isNotNull();
        assertThat(refused.why()).contains(said.strip());
        assertThat(refused.instead()).isNotBlank();
    }

    @Test
    void theRestOfAnEntryIsLookedAtToo() throws Exception {
        List<StudyReading> readings = StudyForm.pasted(published());
        assertThat(refused(new NewStudy("bars", "°", null, readings)).field()).isEqualTo("unit");
        assertThat(refused(new NewStudy("bars", "mm", BigDecimal.ZERO, readings))
                        .field())
                .isEqualTo("tolerance");
        assertThat(refused(new NewStudy(" ", "mm", null, readings)).field()).isEqualTo("what");
        assertThat(refused(new NewStudy("bars", "mm", null, List.of())).field()).isEqualTo("readings");
        long worker = hands.hire(Role.STATION_WORKER);
        assertThat(catchThrowableOfType(
                                Refusal.class,
                                () -> studies.enter(
                                        hands.act(worker), code, new NewStudy("bars", "mm", null, readings)))
                        .kind())
                .isEqualTo(Refusal.Kind.PERSON);
        mvc.perform(get("/shop/gauges/" + code + "/studies/new?parts=1&appraisers=99&trials=x")
                        .with(asQa.who()))
                .andExpect(status().is4xxClientError());
        mvc.perform(get("/shop/gauges/" + code + "/studies/999999").with(asQa.who()))
                .andExpect(status().isNotFound());
    }

    @Test
    void sentTwiceItIsOneStudy() throws Exception {
        Act act = act();
        NewStudy study = new NewStudy("bars", "mm", null, StudyForm.pasted(published()));
        long id = studies.enter(act, code, study);
        assertThat(studies.enter(act, code, study)).isEqualTo(id);
        mvc.perform(get("/api/v1/gauges/" + code + "/studies").with(asQa.who()))
                .andExpect(jsonPath("$.length()").value(1));
    }

    @Test
    void theApiTakesAStudyWithTheSameRefusals() throws Exception {
        String readings = StudyForm.pasted(published()).stream()
                .map(r -> "{\"part\": \"" + r.part() + "\", \"appraiser\": \"" + r.appraiser() + "\", \"value\": "
                        + r.value().toPlainString() + "}")
                .collect(Collectors.joining(","));
        mvc.perform(asQa.api(
                        "/api/v1/gauges/" + code + "/studies",
                        "{\"what\": \"bars\", \"unit\": \"mm\", \"tolerance\": 8, \"readings\": [" + readings + "]}"))
                .andExpect(status().isCreated())
                .andExpect(jsonPath("$.byVariances.variances.pooled").value(true));
        mvc.perform(asQa.api(
                        "/api/v1/gauges/" + code + "/studies",
                        "{\"what\": \"bars\", \"unit\": \"mm\", \"readings\": []}"))
                .andExpect(status().is(422))
                .andExpect(jsonPath("$.field").value("readings"));
    }

    private @Nullable Refusal refused(NewStudy study) {
        return catchThrowableOfType(Refusal.class, () -> studies.enter(act(), code, study));
    }

    private String entered(String pasted, String tolerance) throws Exception {
        return Objects.requireNonNull(mvc.perform(asQa.form("/shop/gauges/" + code + "/studies")
                        .param("what", "ten parts")
                        .param("unit", "mm")
                        .param("tolerance", tolerance)
                        .param("pasted", pasted))
                .andReturn()
                .getResponse()
                .getRedirectedUrl());
    }

    private Act act() {
        return hands.act(qa);
    }
}
