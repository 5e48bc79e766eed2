package org.trammel.shop.designs;

import org.springframework.beans.factory.BeanFactory;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.TestClock;

/** Answers to the gate of a revision that a test planted in its table, as they would have been given; anew where its inputs changed. */
public final class PlantedGate {

    private PlantedGate() {}

    public static void answer(BeanFactory beans, long revisionId) {
        JdbcClient jdbc = beans.getBean(JdbcClient.class);
        jdbc.sql("delete from design_check where revision_id = ?")
                .param(revisionId)
                .update();
        DesignSheet sheet = beans.getBean(Designs.class).revision(revisionId);
        beans.getBean(GateStand.class)
                .figures(sheet)
                .forEach((check, now) -> jdbc.sql("insert into design_check (revision_id, code, answer, answered_by,"
                                + " answered_at, given_on) values (?, ?, ?, 0, ?, ?)")
                        .params(
                                revisionId,
                                check.name(),
                                (check.takes(now).contains(GateAnswer.MEETS) ? GateAnswer.MEETS : GateAnswer.DECIDED)
                                        .name(),
                                java.sql.Timestamp.from(
                                        beans.getBean(TestClock.class).instant()),
                                now.givenOn())
                        .update());
    }
}
