package org.trammel.shop.materials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import com.jayway.jsonpath.JsonPath;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.trammel.shop.ShopTest;
import org.trammel.shop.Statements;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;
import org.trammel.shop.records.Refusal;

/**
 * What waits for the saw, laid into the rack. Lengths of blanks are those that a script apart from this project computes for
 * the first frame of the invented workshop; how they fit is worked by hand beside each test.
 */
@ShopTest(properties = "trammel.test.database=saw_plan")
class SawPlanTest {

    @Autowired
    private ApplicationContext beans;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Crew crew;

    @Autowired
    private LotRegister register;

    @Autowired
    private TubeRack rack;

    @Autowired
    private SawPlans plans;

    @Autowired
    private Statements statements;

    private WholeShop shop;
    private long lead;

    @BeforeEach
    void anEmptyRack() {
        shop = new WholeShop(beans);
        lead = shop.hire(Role.QA_LEAD);
        jdbc.sql("delete from tube_bar").update();
        jdbc.sql("update traveller set state = 'SCRAPPED' where state not in ('SHIPPED', 'SCRAPPED')")
                .update();
    }

    private void drawn(String operation) {
        WaitingForTheSaw.frame(shop, jdbc, operation);
    }

    private String lot(String metal, boolean released) {
        return WaitingForTheSaw.lot(register, shop, lead, metal, released);
    }

    private void lay(String lot, String outside, String wall, String length, int count, boolean butted) {
        rack.lay(
                shop.act(lead),
                lot,
                new NewBars(new BigDecimal(outside), new BigDecimal(wall), new BigDecimal(length), count, butted));
    }

    private SawPlan.Kind kind(String section) {
        return plans.now().kinds().stream()
                .filter(kind -> kind.section().equals(section))
                .findAny()
                .orElseThrow();
    }

    /** Two down tubes of 741.24: 2 · 741.24 + 2 · 2 = 1486.48 of 1500, 13.52 is scrap; of 3000 1513.5 go back. */
    @Test
    void downTubesOfTwoFramesComeFromOneBarOfTheirOwnMetalAndSection() {
        drawn("030");
        drawn("030");
        assertThat(kind("42 × 1.4").gaps())
                .singleElement()
                .satisfies(gap -> assertThat(gap).startsWith("There is no bar and no remnant of 42 × 1.4 AL6061"));
        lay(lot("AL6061", false), "42", "1.4", "1500", 5, false);
        lay(lot("AL7005", true), "42", "1.4", "1500", 5, false);
        lay(lot("AL6061", true), "42", "1.4", "1500", 5, true);
        lay(lot("AL6061", true), "42", "1.5", "1500", 5, false);
        assertThat(kind("42 × 1.4").bars())
                .as("quarantined, of another alloy, butted, of another wall")
                .isEmpty();
        String lot = lot("AL6061", true);
        lay(lot, "42.0", "1.40", "1500", 5, false);
        SawPlan.Kind kind = kind("42 × 1.4");
        assertThat(kind.wanted()).isEqualTo(2);
        assertThat(kind.bars()).singleElement().satisfies(bar -> {
            assertThat(bar.lot()).isEqualTo(lot);
            assertThat(bar.pieces()).hasSize(2).allSatisfy(piece -> {
                assertThat(piece.tube()).isEqualTo("down tube");
                assertThat(piece.length_mm()).isCloseTo(741.2403, within(1e-3));
            });
            assertThat(bar.left_mm()).isCloseTo(13.519, within(1e-2));
            assertThat(bar.kept()).isFalse();
        });
        assertThat(kind.proven()).isTrue();
        assertThat(kind.newStock_mm()).isEqualTo(1500);
        assertThat(plans.now().kinds())
                .extracting(SawPlan.Kind::section)
                .contains("34.9 × 1.15", "34.9 × 1.35", "22 × 1.6");
        assertThat(kind("22 × 1.6").wanted()).as("stays come in pairs").isEqualTo(4);
    }

    @Test
    void whatIsLeftOfASawnBarKeepsItsLotAndIsUsedFirst() {
        drawn("030");
        String lot = lot("AL6061", true);
        lay(lot, "42", "1.4", "3000", 2, false);
        Bars bars = rack.bars().get(0);
        rack.cut(shop.act(lead), bars.id(), new BigDecimal("1513.5"));
        assertThat(rack.bars()).hasSize(2).allSatisfy(each -> {
            assertThat(each.lot()).isEqualTo(lot);
            assertThat(each.count()).isEqualTo(1);
        });
        assertThat(kind("42 × 1.4").bars()).singleElement().satisfies(bar -> {
            assertThat(bar.remnant()).isTrue();
            assertThat(bar.length_mm()).isEqualTo(1513.5);
            assertThat(bar.kept()).isTrue();
        });
        rack.cut(shop.act(lead), bars.id(), BigDecimal.ZERO);
        assertThat(rack.bars())
                .singleElement()
                .satisfies(each -> assertThat(each.remnant()).isTrue());
        assertThatThrownBy(() -> rack.cut(shop.act(lead), bars.id(), BigDecimal.ZERO))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("holds none of these any more");
        long remnant = rack.bars().get(0).id();
        assertThatThrownBy(() -> rack.cut(shop.act(lead), remnant, new BigDecimal("1513.5")))
                .hasMessageContaining("Of a bar of 1513.5 mm not 1513.5 mm can be left");
        register.quarantine(shop.act(lead), lot, "letter of the mill");
        assertThatThrownBy(() -> rack.cut(shop.act(lead), remnant, BigDecimal.ZERO))
                .hasMessageContaining(lot + " is quarantined");
    }

    @Test
    void anActSentTwiceIsDoneOnce() {
        String lot = lot("AL6061", true);
        lay(lot, "42", "1.4", "3000", 2, false);
        var act = shop.act(lead);
        long bars = rack.bars().get(0).id();
        rack.cut(act, bars, BigDecimal.ZERO);
        rack.cut(act, bars, BigDecimal.ZERO);
        assertThat(rack.bars().get(0).count()).isEqualTo(1);
    }

    @Test
    void aFrameOfAnotherOperationWantsNothingAndOneWithoutInputsIsNamed() {
        drawn("080");
        assertThat(plans.now().kinds()).isEmpty();
        WholeShop.Frame empty = shop.frame(shop.route(
                SmallRoute.of(SmallRoute.op("030").step("saw").sheet()).sheet()));
        assertThat(plans.now().undrawn())
                .containsExactly(shop.sheet(empty).head().mark());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0 | 1.4 | 3000 | 1 | outside | The outside is above 0",
                "42 | -1 | 3000 | 1 | wall | The wall is above 0",
                "42 | 21 | 3000 | 1 | wall | leaves no bore in a tube of 42 mm",
                "42 | 1.4 | 1e9 | 1 | length | at most 20000 mm",
                "42 | 1.4 | 0.0001 | 1 | length | three decimals at most",
                "42 | 1.4 | 3000 | 0 | count | A count is from 1 to 10000",
            })
    void whatIsNoBarIsRefused(String outside, String wall, String length, int count, String field, String words) {
        String lot = lot("AL6061", true);
        assertThatThrownBy(() -> lay(lot, outside, wall, length, count, false))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.field()).isEqualTo(field))
                .hasMessageContaining(words);
        assertThat(rack.bars()).isEmpty();
    }

    @Test
    void anAuditorLooksAndLaysNothing() throws Exception {
        long auditor = shop.hire(Role.AUDITOR);
        String lot = lot("AL6061", true);
        assertThatThrownBy(() -> rack.lay(
                        shop.act(auditor),
                        lot,
                        new NewBars(BigDecimal.TEN, BigDecimal.ONE, BigDecimal.valueOf(100), 1, false)))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.kind()).isEqualTo(Refusal.Kind.PERSON));
        lay(lot, "42", "1.4", "3000", 1, false);
        String page = mvc.perform(get("/shop/saw-plan").with(Signed.on(crew.byId(auditor))))
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(page).contains(lot).doesNotContain("Book it as sawn", "Lay them on the rack");
    }

    @Test
    void theSheetTakesItsFormsAndSendsAsManyStatementsForFewFramesAsForMany() throws Exception {
        drawn("030");
        String lot = lot("AL6061", true);
        mvc.perform(post("/shop/saw-plan/bars")
                .param("actId", UUID.randomUUID().toString())
                .param("lot", lot)
                .param("outside", "42")
                .param("wall", "1,4")
                .param("length", "3000")
                .param("count", "2")
                .with(Signed.on(crew.byId(lead)))
                .with(csrf()));
        assertThat(rack.bars()).singleElement().satisfies(bars -> {
            assertThat(bars.wall_mm()).isEqualByComparingTo("1.4");
            assertThat(bars.count()).isEqualTo(2);
        });
        List<String> few = statements.during(this::page);
        drawn("030");
        drawn("030");
        lay(lot, "34.9", "1.15", "3000", 2, false);
        List<String> many = statements.during(this::page);
        assertThat(many).hasSameSizeAs(few).hasSizeLessThan(14);
        assertThat(page()).contains("741,2", "608,8", "new bar", "down tube", "Book it as sawn");
    }

    /** By hand as above: two down tubes of 741.24 from a bar of 3000 leave 3000 - 2 · 741.24 - 2 · 2 = 1513.52. */
    @Test
    void aProgramReadsThePlanAndTheRackInTheFieldsItsDescriptionShows() throws Exception {
        drawn("030");
        drawn("030");
        String lot = lot("AL6061", true);
        lay(lot, "42", "1.4", "3000", 1, false);
        String plan = answer("/api/v1/saw-plan");
        String kind = "$.kinds[?(@.section == '42 × 1.4')]";
        assertThat(JsonPath.<List<String>>read(plan, kind + ".bars[0].lot")).containsExactly(lot);
        assertThat(JsonPath.<List<Number>>read(plan, kind + ".bars[0].pieces[*].length_mm"))
                .hasSize(2)
                .allSatisfy(length -> assertThat(length.doubleValue()).isCloseTo(741.2403, within(1e-3)));
        assertThat(JsonPath.<List<Number>>read(plan, kind + ".bars[0].left_mm"))
                .singleElement()
                .satisfies(left -> assertThat(left.doubleValue()).isCloseTo(1513.52, within(0.01)));
        assertThat(JsonPath.<List<Boolean>>read(plan, kind + ".bars[0].kept")).containsExactly(true);
        assertThat(JsonPath.<List<List<String>>>read(plan, "$.kinds[?(@.section == '22 × 1.6')].gaps"))
                .as("nothing of it lies on the rack")
                .singleElement()
                .satisfies(gaps -> assertThat(gaps).isNotEmpty());
        String stock = answer("/api/v1/saw-plan/rack");
        assertThat(JsonPath.<List<String>>read(stock, "$[*].lot")).containsExactly(lot);
        assertThat(JsonPath.<List<Number>>read(stock, "$[*].length_mm"))
                .singleElement()
                .satisfies(length -> assertThat(length.doubleValue()).isEqualTo(3000));

        String description = answer("/api/docs/openapi");
        Object example = JsonPath.read(
                description, "$.paths['/api/v1/saw-plan'].get.responses['200'].content['application/json'].example");
        assertThat(fields(example))
                .containsAll(fields(JsonPath.read(plan, "$")))
                .contains("least_mm", "pieces");
        assertThat(fields(JsonPath.read(plan, "$"))).containsAll(fields(example));
    }

    /** Names of all fields, however deep. */
    private static Set<String> fields(Object json) {
        Set<String> names = new TreeSet<>();
        if (json instanceof Map<?, ?> object) {
            object.forEach((name, value) -> {
                names.add(String.valueOf(name));
                names.addAll(fields(value));
            });
        } else if (json instanceof List<?> list) {
            list.forEach(each -> names.addAll(fields(each)));
        }
        return names;
    }

    private String answer(String address) throws Exception {
        MockHttpServletResponse answer = mvc.perform(get(address).with(Signed.on(crew.byId(lead))))
                .andReturn()
                .getResponse();
        assertThat(answer.getStatus()).as(address).isEqualTo(200);
        return answer.getContentAsString(StandardCharsets.UTF_8);
    }

    private String page() throws Exception {
        return mvc.perform(get("/shop/saw-plan").with(Signed.on(crew.byId(lead))))
                .andReturn()
                .getResponse()
                .getContentAsString();
    }
}
