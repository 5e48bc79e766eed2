package org.trammel.shop.routes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;
import org.trammel.shop.ShopTest;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

@ShopTest
class RouteDraftsTest {

    @Autowired
    private RouteShop shop;

    @Autowired
    private RouteDrafts drafts;

    @Autowired
    private RouteBook book;

    @Autowired
    private RevisionRepository revisions;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private TransactionTemplate transaction;

    private long qa;

    @BeforeEach
    void hire() {
        qa = shop.qaLead();
    }

    static List<String> starters() {
        return StarterRoutes.all().stream().map(file -> file.sheet().code()).toList();
    }

    @ParameterizedTest
    @MethodSource("starters")
    void everyStarterRouteIsReleasedAndReadsTheSame(String starter) {
        String code = shop.copyOf(starter, qa);
        RouteSheet drawn = shop.draft(code);
        assertThat(drafts.findings(code)).isEmpty();
        RevisionSummary released = shop.release(code, qa);
        assertThat(released.state()).isEqualTo(RevisionState.RELEASED);
        RouteSheet read = book.released(code);
        assertThat(read).isEqualTo(drawn);
        assertThat(book.unchanged(released.id())).isTrue();
    }

    @Test
    void aReleasedRevisionNeverChanges() {
        String code = shop.small(qa);
        RevisionSummary released = shop.release(code, qa);
        RouteSheet before = book.revision(released.id());
        assertThatThrownBy(() -> drafts.edit(shop.act(qa), code, released.version(), new StepEdit.Retire("080", 1)))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.why()).contains("never changes"));
        assertThatThrownBy(() -> drafts.release(shop.act(qa), code, released.version(), "again"))
                .isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> drafts.withdraw(shop.act(qa), code, "gone")).isInstanceOf(Refusal.class);
        // A way around the verbs: rows of it refuse to be written.
        assertThatThrownBy(() -> transaction.executeWithoutResult(status -> {
                    RouteRevision revision = revisions.findById(released.id()).orElseThrow();
                    OperationRow operation = revision.operations().get(0);
                    operation.becomes(revision, 7, operation.sheet());
                    revisions.flush();
                }))
                .hasStackTraceContaining("its content is never changed");
        assertThatThrownBy(() -> transaction.executeWithoutResult(status -> {
                    revisions.findById(released.id()).orElseThrow().operations().clear();
                    revisions.flush();
                }))
                .hasStackTraceContaining("its content is never changed");
        shopGoesOn(code);
        assertThat(book.revision(released.id())).isEqualTo(before);
        assertThat(book.unchanged(released.id())).isTrue();
    }

    private void shopGoesOn(String code) {
        drafts.drawUp(shop.act(qa), code);
        shop.edit(
                code,
                qa,
                new OperationEdit.Change("030", RouteShop.operation("030", Point.WITNESS, List.of(Signer.QA))));
        shop.edit(code, qa, new StepEdit.Add("030", RouteShop.step("Deburr")));
        shop.release(code, qa);
    }

    @Test
    void aChangeMadeInTheDatabaseIsFoundByTheSeal() {
        String code = shop.small(qa);
        RevisionSummary released = shop.release(code, qa);
        jdbc.sql("update route_step set instruction = 'Never mind' where operation_id in"
                        + " (select id from route_operation where revision_id = ?)")
                .param(released.id())
                .update();
        assertThat(book.unchanged(released.id())).isFalse();
    }

    @Test
    void theNextRevisionSupersedesTheOneInForceAndBothCanBeRead() {
        String code = shop.small(qa);
        RevisionSummary a = shop.release(code, qa);
        RevisionSummary b = drafts.drawUp(shop.act(qa), code);
        assertThat(b.letter()).isEqualTo("B");
        shop.edit(code, qa, new StepEdit.Add("080", RouteShop.step("Wipe it")));
        assertThat(book.released(code).letter()).isEqualTo("A");
        shop.release(code, qa);
        assertThat(book.released(code).letter()).isEqualTo("B");
        assertThat(book.revision(a.id()).operations().get(1).steps()).hasSize(1);
        assertThat(book.history(code))
                .extracting(RevisionSummary::state)
                .containsExactly(RevisionState.RELEASED, RevisionState.SUPERSEDED);
        assertThat(book.history(code).get(0).reason()).isEqualTo("Looked through, fits the shop");
    }

    @Test
    void aParentKeepsTheRevisionOfItsPartsUntilItIsReleasedAgain() {
        String code = shop.copyOf("FS-7005", qa);
        shop.release(code, qa);
        String part = book.released(code).children().get(0).route().code();
        drafts.drawUp(shop.act(qa), part);
        shop.edit(part, qa, new StepEdit.Add("020", RouteShop.step("Weigh it")));
        shop.release(part, qa);
        assertThat(book.released(code).children().get(0).route().letter()).isEqualTo("A");
        assertThat(book.released(part).letter()).isEqualTo("B");
        drafts.drawUp(shop.act(qa), code);
        assertThat(drafts.changes(code)).contains(new Changed("FT", "changed", part + ": revision A → B"));
        shop.release(code, qa);
        assertThat(book.released(code).children().get(0).route().letter()).isEqualTo("B");
        assertThat(book.unchanged(book.released(code).revisionId())).isTrue();
    }

    @Test
    void aRouteIsNotReleasedBeforeItsParts() {
        String code = shop.code();
        drafts.layOut(shop.act(qa), new NewRoute(code, "Parent", "AL6061", "FULL_SUSPENSION", "FS-6061"));
        String part = shop.copyOf("FS-6061-FT", qa);
        shop.edit(code, qa, new PartEdit.Retire("FT"));
        shop.edit(code, qa, new PartEdit.Add("FT", "Front triangle", part));
        assertThat(drafts.findings(code)).anySatisfy(finding -> {
            assertThat(finding.place()).isEqualTo("FT");
            assertThat(finding.why()).contains("no released revision");
        });
        assertThatThrownBy(() -> shop.release(code, qa)).isInstanceOf(Refusal.class);
    }

    @Test
    void aChangeOnAnOldViewOfTheDraftIsRefused() {
        String code = shop.small(qa);
        long seen = drafts.draft(code).version();
        shop.edit(code, qa, new StepEdit.Add("030", RouteShop.step("Deburr")));
        assertThatThrownBy(() -> drafts.edit(shop.act(qa), code, seen, new StepEdit.Retire("030", 1)))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.kind()).isEqualTo(Refusal.Kind.STALE));
        assertThat(shop.draft(code).operations().get(0).steps()).hasSize(2);
    }

    @Test
    void theSameActTwiceChangesOnce() {
        String code = shop.small(qa);
        Act act = shop.act(qa);
        long version = drafts.draft(code).version();
        drafts.edit(act, code, version, new StepEdit.Add("030", RouteShop.step("Deburr")));
        drafts.edit(act, code, version, new StepEdit.Add("030", RouteShop.step("Deburr")));
        assertThat(shop.draft(code).operations().get(0).steps()).hasSize(2);
    }

    @Test
    void aCodeThatARevisionLeftOutIsNotGivenAgain() {
        String code = shop.small(qa);
        shop.edit(code, qa, new OperationEdit.Add("030", RouteShop.operation("040", Point.NONE, List.of())));
        shop.edit(code, qa, new StepEdit.Add("040", RouteShop.step("Form")));
        shop.release(code, qa);
        drafts.drawUp(shop.act(qa), code);
        shop.edit(code, qa, new OperationEdit.Retire("040"));
        shop.edit(code, qa, new OperationEdit.Restore("040"));
        assertThat(shop.draft(code).operations())
                .extracting(OperationSheet::code)
                .containsExactly("030", "040", "080");
        shop.edit(code, qa, new OperationEdit.Retire("040"));
        shop.release(code, qa);
        drafts.drawUp(shop.act(qa), code);
        assertThatThrownBy(() -> shop.edit(
                        code, qa, new OperationEdit.Add("030", RouteShop.operation("040", Point.NONE, List.of()))))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.why()).contains("up to revision A"));
    }

    @Test
    void aWithdrawnDraftKeepsItsLetterAndMakesRoomForAnother() {
        String code = shop.small(qa);
        shop.release(code, qa);
        drafts.drawUp(shop.act(qa), code);
        drafts.withdraw(shop.act(qa), code, "Thought better of it");
        assertThat(drafts.drawUp(shop.act(qa), code).letter()).isEqualTo("C");
        assertThatThrownBy(() -> drafts.drawUp(shop.act(qa), code))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.why()).contains("a draft already"));
    }

    @Test
    void anUnknownRouteOrRevisionIsSaid() {
        assertThatThrownBy(() -> book.released("NO-SUCH"))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.kind()).isEqualTo(Refusal.Kind.MISSING));
        assertThatThrownBy(() -> book.revision(-1))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.kind()).isEqualTo(Refusal.Kind.MISSING));
        String code = shop.small(qa);
        assertThatThrownBy(() -> book.released(code))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.kind()).isEqualTo(Refusal.Kind.STATE));
    }
}
