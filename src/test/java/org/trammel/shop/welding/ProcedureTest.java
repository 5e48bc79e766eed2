package org.trammel.shop.welding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.UUID;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.calc.welding.WeldLimit;
import org.trammel.shop.ShopTest;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

@ShopTest
class ProcedureTest {

    @Autowired
    private Procedures procedures;

    @Autowired
    private LimitSets limits;

    @Autowired
    private TestCrew crew;

    private final String number = UUID.randomUUID().toString().substring(0, 6).toUpperCase(java.util.Locale.ROOT);

    @Test
    void aShopBeginsWithDraftsThatGuardNothingAndSayWhereTheyComeFrom() {
        List<Procedure> all = procedures.current().stream()
                .filter(one -> one.draftedBy() == 0)
                .toList();
        assertThat(all).extracting(Procedure::code).contains("W-6061", "W-7005", "W-STEEL", "W-FILLET", "W-TI");
        assertThat(all)
                .allMatch(one -> one.state() == ProcedureState.DRAFT
                        && one.content().papers().source().contains("from memory"));
        long qa = crew.hire(Role.QA_LEAD);
        refused(
                () -> procedures.putInForce(crew.act(qa), "W-STEEL", 0),
                "the range of walls",
                "the flow of gas",
                "the current",
                "the standard",
                "the edition");
    }

    @Test
    void aDraftIsWrittenAnewPutInForceAndSupersededByTheNext() {
        long qa = crew.hire(Role.QA_LEAD);
        long welder = crew.hire(Role.WELDER);
        String code = "P-" + number;
        Procedure draft = procedures.draft(crew.act(welder), code.toLowerCase(java.util.Locale.ROOT), content("1"));
        assertThat(draft.called()).isEqualTo(code + " A");
        Procedure anew = procedures.draft(crew.act(welder), code, content("2"));
        assertThat(anew.letter()).isEqualTo("A");
        refused(() -> procedures.putInForce(crew.act(welder), code, anew.version()), "QA lead");
        refused(() -> procedures.putInForce(crew.act(qa), code, draft.version()), "written anew");
        Act twice = crew.act(qa);
        Procedure first = procedures.putInForce(twice, code, anew.version());
        assertThat(procedures.putInForce(twice, code, anew.version()).id()).isEqualTo(first.id());
        assertThat(first.state()).isEqualTo(ProcedureState.IN_FORCE);
        assertThat(first.content().operations().weld()).containsExactly("2w" + number);
        refused(() -> procedures.putInForce(crew.act(qa), code, anew.version()), "no draft");
        Procedure next = procedures.draft(crew.act(qa), code, content("2"));
        Procedure second = procedures.putInForce(crew.act(qa), code, next.version());
        assertThat(second.letter()).isEqualTo("B");
        assertThat(procedures.of(code))
                .extracting(Procedure::state)
                .containsExactly(ProcedureState.IN_FORCE, ProcedureState.SUPERSEDED);
    }

    @Test
    void twoInForceDoNotGuardOneOperationOfOneMetal() {
        long qa = crew.hire(Role.QA_LEAD);
        Procedure one = procedures.draft(crew.act(qa), "A-" + number, content("3"));
        procedures.putInForce(crew.act(qa), "A-" + number, one.version());
        Procedure other = procedures.draft(crew.act(qa), "B-" + number, content("3"));
        refused(
                () -> procedures.putInForce(crew.act(qa), "B-" + number, other.version()),
                "goes by procedure A-" + number + " A already");
    }

    @Test
    void whatCannotBeIsRefusedInADraftAlready() {
        long qa = crew.hire(Role.QA_LEAD);
        refused(() -> draft(qa, "AL6061", "999", "ER4643"), "no process 999");
        refused(() -> draft(qa, "WOOD", "141", "ER4643"), "no metal");
        refused(() -> draft(qa, "AL6061", "141", "ER9999"), "no class ER9999", "ER4643");
        refused(() -> draft(qa, "AL6061", "141", "ARGON"), "no class ARGON of filler");
        NewProcedure whole = Written.whole("AL6061", "a", "b", "c", "ER4643");
        refused(
                () -> procedures.draft(
                        crew.act(qa),
                        "X-" + number,
                        Written.with(
                                whole,
                                new HeatRules(new BigDecimal("-1"), null, null, null, 0),
                                whole.nodes(),
                                whole.looks())),
                "interpass temperature, -1 °C");
        refused(
                () -> procedures.draft(
                        crew.act(qa),
                        "X-" + number,
                        Written.with(whole, whole.heat(), whole.nodes(), new LookRules("C", "E: shell", ""))),
                "names no level");
        refused(() -> procedures.draft(crew.act(crew.hire(Role.STATION_WORKER)), "X-" + number, whole), "QA lead");
        refused(() -> procedures.draft(crew.act(qa), "X/" + number, whole), "letters, digits and dashes");
    }

    /** The strictest of the lines that name a node counts. */
    @Test
    void aNodeHasTheLevelOfTheLineThatNamesIt() {
        LookRules looks = new LookRules("D", "C: shell, bridge\nB: Head Tube", "T");
        assertThat(looks.levelOf("Node 3: down tube to head tube")).isEqualTo("B");
        assertThat(looks.levelOf("Node 1: down tube to shell")).isEqualTo("C");
        assertThat(looks.levelOf("Node 5: top tube to seat tube")).isEqualTo("D");
    }

    @Test
    void shippedTablesSayTheirEditionAndWhereTheyWereReadAndHoldNothingRemembered() {
        assertThat(limits.all().stream().filter(set -> set.by() == 0))
                .hasSize(3)
                .allMatch(set -> !set.edition().isBlank() && !set.source().isBlank())
                .noneMatch(set -> set.source().contains("memory"));
        LimitSet set = limits.of("iso-10042-1992");
        assertThat(set.lines()).hasSize(18);
    }

    /**
     * ISO 5817:2014 as far as its table was read in public excerpts: of level D these lines alone, of level B none. What else
     * somebody remembers of them is no line of it.
     */
    @Test
    void theTableOfSteelHoldsTheLinesThatWereReadAndNoOther() {
        List<WeldLimit> lines = limits.of("ISO-5817-2014").lines();
        assertThat(lines).noneMatch(line -> line.level().equals("B"));
        assertThat(lines)
                .filteredOn(line -> line.level().equals("D"))
                .extracting(line -> line.imperfection() + " " + line.words())
                .containsExactlyInAnyOrder(
                        "SURFACE_PORE 0.3 t mm",
                        "SURFACE_PORE 0.3 t, at most 3 mm",
                        "CRATER_PIPE 0.2 t, at most 2 mm",
                        "ROOT_NOT_PENETRATED short ones, 0.2 t, at most 2 mm");
        assertThat(limits.of("EN-25817-1992").lines()).hasSize(15);
    }

    /** A reprint without a range of walls says so; a line that says none reaches the thinnest tube. */
    @Test
    void aTableReadWithoutItsRangeOfWallsSaysSo() {
        assertThat(limits.all().stream().filter(set -> set.by() == 0))
                .filteredOn(set -> set.lines().stream().allMatch(line -> line.over() == null))
                .hasSize(2)
                .allMatch(set -> set.what().contains("prints no range of walls"));
    }

    @Test
    void noTwoLinesOfATableSpeakOfOneWall() {
        long qa = crew.hire(Role.QA_LEAD);
        refused(
                () -> limits.enter(
                        crew.act(qa),
                        "T-" + number,
                        table("C; undercut; 0.5; 3; 0; 0,1; t; ;\nC; undercut; 2; ; 0; 0,2; t; ;")),
                "two lines",
                "undercut");
        limits.enter(
                crew.act(qa),
                "T-" + number,
                table(
                        "C; undercut; 0.5; 3; 0; 0,1; t; ;\nC; undercut; 3; ; 0; 0,2; t; ;\nD; undercut; 2; ; 0; 0,2; t; ;"));
    }

    @Test
    void aTableIsEnteredOnceByTheQaLeadLineByLine() {
        long qa = crew.hire(Role.QA_LEAD);
        String code = "T-" + number;
        LimitSet set = limits.enter(
                crew.act(qa),
                code,
                table("B; undercut; 3; ; 0; 0,05; t; 0,5;\n\nB; convexity; ; ; 1; 0.1; b; 3; short"));
        assertThat(set.lines())
                .extracting(WeldLimit::words)
                .containsExactly("0.05 t, at most 0.5 mm", "short ones, 1 + 0.1 b, at most 3 mm");
        assertThat(limits.of(code).lines()).isEqualTo(set.lines());
        refused(() -> limits.enter(crew.act(qa), code, table("B; undercut; ; ; 0; 1; t; ;")), "is there already");
        refused(() -> limits.enter(crew.act(qa), code + "2", table("B; undercut; ; ; 0; 1")), "6 places");
        refused(() -> limits.enter(crew.act(qa), code + "2", table("A; undercut; ; ; 0; 1; t; ;")), "none of B, C, D");
        refused(() -> limits.enter(crew.act(qa), code + "2", table("B; beauty; ; ; 0; 1; t; ;")), "undercut");
        refused(() -> limits.enter(crew.act(qa), code + "2", table("B; undercut; ; ; -1; 1; t; ;")), "no figure");
        refused(() -> limits.enter(crew.act(qa), code + "2", table("B; undercut; 3; 3; 0; 1; t; ;")), "begin where");
        refused(() -> limits.enter(crew.act(qa), code + "2", table("B; undercut; ; ; 0; 1; x; ;")), "t, b, a");
        refused(() -> limits.enter(crew.act(qa), code + "2", table(" ")), "no line");
        refused(
                () -> limits.enter(crew.act(crew.hire(Role.WELDER)), code + "2", table("B; undercut; ; ; 0; 1; t; ;")),
                "QA lead");
    }

    private LimitSets.NewLimits table(String lines) {
        return new LimitSets.NewLimits("of a test", "shop rule", "1", "written for a test", lines);
    }

    private NewProcedure content(String sign) {
        return Written.whole("AL7005", sign + "t" + number, sign + "w" + number, sign + "l" + number, "ER5356");
    }

    private void draft(long by, String metal, String process, String filler) {
        NewProcedure c = Written.whole("AL6061", "a", "b", "c", filler);
        procedures.draft(
                crew.act(by),
                "X-" + number,
                new NewProcedure(
                        c.what(),
                        metal,
                        process,
                        c.joints(),
                        null,
                        null,
                        c.operations(),
                        c.arc(),
                        c.heat(),
                        c.nodes(),
                        c.looks(),
                        c.papers()));
    }

    private static void refused(ThrowingCallable deed, String... says) {
        assertThatThrownBy(deed).isInstanceOf(Refusal.class).satisfies(thrown -> {
            Refusal refusal = (Refusal) thrown;
            assertThat(refusal.what() + " " + refusal.why() + " " + refusal.instead())
                    .contains(says);
        });
    }
}
