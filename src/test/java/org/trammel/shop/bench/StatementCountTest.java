package org.trammel.shop.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.request.AbstractMockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.RequestPostProcessor;
import org.trammel.shop.Statements;
import org.trammel.shop.floor.Floor;

/**
 * How many statements a request sends, whatever stands in the shop. Not counted: the one that finds who is signed on, and
 * the settings and the names of the stations, which are read anew every few seconds.
 */
class StatementCountTest extends AtTheTablet {

    @Autowired
    private Statements statements;

    /**
     * Some of them ask whether a finish, a procedure or a component guards the operation. The first operation's step names
     * no part of the frame; the weld's does, and the drawing is one statement more.
     */
    @Test
    void theSheetOfAFrameTakesThirteenAndFourteenWithItsDrawing() throws Exception {
        Floor.Frame frame = floor.frame(BenchRoute.route());
        assertThat(sentBy(get(address(frame)))).hasSize(13);
        floor.tickAll(frame, worker);
        assertThat(sentBy(get(address(frame)))).hasSize(14);
    }

    /** Two of them ask whether a record gives the figure, of a run or of a coat; two whether the frame has components to torque. */
    @Test
    void theReadingSheetTakesNineteen() throws Exception {
        Floor.Frame frame = onTheTable();
        floor.gauge("TWIST", "°", "0.020");
        assertThat(sentBy(get(address(frame)))).hasSize(19);
    }

    @Test
    void theListOfATabletTakesFiveHoweverManyFramesWait() throws Exception {
        floor.frame(BenchRoute.route());
        List<String> one = sentBy(get("/station").param("at", "2"));
        floor.frame(BenchRoute.route());
        floor.frame(BenchRoute.route());
        assertThat(sentBy(get("/station").param("at", "2"))).hasSameSizeAs(one).hasSize(5);
    }

    @Test
    void aTickInTheMiddleOfAnOperationTakesTwelve() throws Exception {
        Floor.Frame frame = floor.frame(BenchRoute.route());
        floor.tickAll(frame, worker);
        sent(tick(frame));
        assertThat(sentBy(tick(frame))).hasSize(12);
    }

    @Test
    void aTickThatBeginsAnOperationTakesSixteen() throws Exception {
        Floor.Frame frame = floor.frame(BenchRoute.route());
        floor.tickAll(frame, worker);
        assertThat(sentBy(tick(frame))).hasSize(16);
    }

    private Floor.Frame onTheTable() {
        Floor.Frame frame = floor.frame(BenchRoute.route());
        floor.tickAll(frame, worker);
        floor.tickAll(frame, worker);
        floor.tickAll(frame, worker);
        return frame;
    }

    private List<String> sentBy(AbstractMockHttpServletRequestBuilder<?> request) throws Exception {
        RequestPostProcessor who = signedOn(worker);
        return statements
                .during(() -> mvc.perform(request.session(browser).with(who)).andReturn())
                .stream()
                .filter(sql -> !sql.matches("(?s).* from (setting|setting_definition|station) .*"))
                .toList();
    }
}
