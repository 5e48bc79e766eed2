package org.trammel.shop.routes;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.Fixture;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;

/** What tests of routes stand on: stations, a QA lead, and copies of starter routes under codes of their own. */
@Fixture
class RouteShop {

    private static final AtomicInteger NUMBER = new AtomicInteger();

    private final JdbcClient jdbc;
    private final TestCrew crew;
    private final RouteDrafts drafts;
    private final RouteBook book;

    RouteShop(JdbcClient jdbc, TestCrew crew, RouteDrafts drafts, RouteBook book) {
        this.jdbc = jdbc;
        this.crew = crew;
        this.drafts = drafts;
        this.book = book;
        for (int i = 1; i <= 9; i++) {
            station(String.valueOf(i), i);
        }
    }

    private void station(String code, int position) {
        boolean there = jdbc.sql("select count(*) from station where code = ?")
                        .param(code)
                        .query(Integer.class)
                        .single()
                > 0;
        if (!there) {
            jdbc.sql("insert into station (code, name, wip_limit, productive_hours_per_week, paper_only, position,"
                            + " version) values (?, ?, 3, 30, false, ?, 0)")
                    .params(code, "Station " + code, position)
                    .update();
        }
    }

    long qaLead() {
        return crew.hire(Role.QA_LEAD);
    }

    Act act(long by) {
        return crew.act(by);
    }

    String code() {
        return "TEST-" + NUMBER.incrementAndGet();
    }

    /** A draft that copies a starter route; its parts follow copies that are released. */
    String copyOf(String starter, long qa) {
        String code = code();
        RouteSummary from = book.route(starter);
        RevisionSummary draft =
                drafts.layOut(act(qa), new NewRoute(code, "Copy of " + starter, from.metal(), from.kind(), starter));
        for (ChildSheet child : book.revision(draft.id()).children()) {
            String part = copyOf(child.route().code(), qa);
            release(part, qa);
            edit(code, qa, new PartEdit.Retire(child.part()));
            edit(code, qa, new PartEdit.Add(child.part(), child.name(), part));
        }
        return code;
    }

    RevisionSummary edit(String code, long qa, Edit edit) {
        return drafts.edit(act(qa), code, drafts.draft(code).version(), edit);
    }

    RevisionSummary release(String code, long qa) {
        return drafts.release(act(qa), code, drafts.draft(code).version(), "Looked through, fits the shop");
    }

    RouteSheet draft(String code) {
        return book.revision(drafts.draft(code).id());
    }

    /** A route of a few operations that can be released. */
    String small(long qa) {
        String code = code();
        drafts.layOut(act(qa), new NewRoute(code, "Small route", "STEEL", "STEEL_TIG", null));
        edit(code, qa, new OperationEdit.Add(null, operation("030", Point.NONE, List.of())));
        edit(code, qa, new StepEdit.Add("030", step("Cut")));
        edit(code, qa, new OperationEdit.Add("030", operation("080", Point.HOLD, List.of(Signer.QA))));
        edit(code, qa, new StepEdit.Add("080", step("Look it over")));
        return code;
    }

    static OperationFields operation(String code, Point point, List<Signer> signers) {
        return new OperationFields(
                code, "Operation " + code, "1", point, signers, null, false, false, false, false, null, "");
    }

    static StepSheet step(String text) {
        return new StepSheet(text, "", false, false, null, null, null);
    }
}
