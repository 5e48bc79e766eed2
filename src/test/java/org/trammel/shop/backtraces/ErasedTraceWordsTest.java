package org.trammel.shop.backtraces;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.transaction.support.TransactionTemplate;
import org.trammel.calc.thermal.HardnessMethod;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.orders.CustomerErased;
import org.trammel.shop.ovens.Run;
import org.trammel.shop.people.Asking;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Words;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.travellers.Shipping;
import org.trammel.shop.travellers.Travellers;

/** What was said about a frame's owner after a thermocouple was found wrong goes when the customer asks to be erased. */
class ErasedTraceWordsTest extends AfterADrift {

    @Autowired
    private Shipping shipping;

    @Autowired
    private Travellers travellers;

    @Autowired
    private Words words;

    @Autowired
    private ActLog log;

    @Autowired
    private ApplicationEventPublisher events;

    @Autowired
    private TransactionTemplate transaction;

    @Autowired
    private Crew people;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private MockMvc mvc;

    private void ship(Floor.Frame frame) {
        signing.sign(crew.act(second), floor.at(frame).line().operationId(), second, Signer.SECOND);
        floor.tickAll(frame, heat);
        shipping.ship(crew.act(qa), frame.travellerId(), frame.serial());
    }

    @Test
    void whatAnOwnerWasToldIsErasedWithTheCustomerAndTheRestStays() throws Exception {
        Floor.Frame told = frame();
        Floor.Frame other = frame();
        released(told, other);
        ship(told);
        ship(other);
        OvenTrace trace = found(oven.load(), "7");
        tell(trace, told, "Rider Seven of Fir Lane 4 stops riding");
        tell(trace, other, "the other one rides on");
        assertThat(page(trace, qa)).contains("owner contacted: Rider Seven of Fir Lane 4 stops riding");
        assertThat(page(trace, floor.hire(Role.AUDITOR)))
                .contains("owner contacted: its words are kept from you")
                .doesNotContain("Fir Lane", "rides on");
        erase(told);
        assertThat(frameOf(trace, told).resultWords()).isEqualTo("(erased)");
        assertThat(frameOf(trace, told).result()).isEqualTo(TraceResult.OWNER_CONTACTED);
        assertThat(page(trace, qa))
                .contains("owner contacted: (erased)", "owner contacted: the other one rides on")
                .doesNotContain("Fir Lane");
        assertThat(said("Fir Lane")).isZero();
    }

    private void tell(OvenTrace trace, Floor.Frame frame, String what) {
        assertThat(settle(qa, trace, frameOf(trace, frame).id(), TraceResult.OWNER_CONTACTED, what))
                .isTrue();
    }

    @Test
    void whatACustomerAgreedToIsErasedInEveryDecisionEverPutForwardAndTheReasonStays() throws Exception {
        Floor.Frame frame = frame();
        released(frame);
        OvenTrace trace = found(oven.load(), "7");
        long listed = frameOf(trace, frame).id();
        long lead = floor.hire(Role.QA_LEAD);
        for (String customer : new String[] {"Rider Three by telephone", "Rider Three by letter"}) {
            results.settle(
                    crew.act(lead),
                    trace.id(),
                    listed,
                    new TraceSettling(TraceResult.DECIDED, "softer, for show", true, customer));
        }
        results.agree(crew.act(floor.hire(Role.OWNER)), trace.id(), listed, 2);
        assertThat(page(trace, qa)).contains("Customer: Rider Three by letter");
        assertThat(said("Rider Three by")).isEqualTo(2);
        erase(frame);
        assertThat(page(trace, qa)).contains("Customer: (erased)", "decided otherwise: softer, for show");
        assertThat(said("Rider Three by")).isZero();
    }

    /** The hold that a result lifted has no words of its own to erase, and neither has the log. */
    @Test
    void wordsAreKeptOnceAndCanBeErasedByThemselves() {
        Floor.Frame frame = frame();
        Run run = released(frame);
        OvenTrace trace = found(oven.load(), "7");
        closing.widen(crew.act(qa), trace.id(), "Rider Four saw the bath");
        hard(run.code(), HardnessMethod.BRINELL, "95", "95");
        settle(qa, trace, frameOf(trace, frame).id(), TraceResult.HARDNESS, "measured in the yard of Rider Four");
        closing.close(crew.act(qa), trace.id(), "Rider Four was shown it");
        assertThat(travellers.holdsOf(frame.serial()))
                .extracting(hold -> hold.liftWords())
                .containsExactly(trace.number() + ": hardness was measured");
        assertThat(said("Rider Four")).isEqualTo(3);
        words.erase(crew.act(qa), id("result_words_id", "oven_trace_frame where trace_id = " + trace.id()));
        words.erase(crew.act(qa), id("closed_words_id", "oven_trace where id = " + trace.id()));
        words.erase(crew.act(qa), id("widened_words_id", "oven_trace where id = " + trace.id()));
        assertThat(said("Rider Four")).isZero();
        assertThat(frameOf(trace, frame).resultWords()).isEqualTo("(erased)");
        assertThat(traces.one(trace.id()).closedWords()).isEqualTo("(erased)");
        assertThat(traces.one(trace.id()).widenedWords()).isEqualTo("(erased)");
    }

    /** As the customer's sheet does it, for the frames of their orders. */
    private void erase(Floor.Frame frame) {
        Act act = crew.act(floor.hire(Role.OWNER));
        transaction.executeWithoutResult(status -> {
            log.opens(act, "erase customer", "customer of " + frame.serial(), Chains.SHOP);
            events.publishEvent(new CustomerErased(act, frame.serial()));
        });
    }

    private String page(OvenTrace trace, long by) throws Exception {
        return new Asking(mvc, Signed.on(people.byId(by))).page("/oven-traces/" + trace.id());
    }

    private long id(String column, String from) {
        return jdbc.sql("select " + column + " from " + from).query(Long.class).single();
    }

    /** Places anywhere in the records that still say it. */
    private long said(String what) {
        return jdbc.sql("select (select count(*) from kept_words_text where words like :what)"
                        + " + (select count(*) from hold where lift_words like :what or words like :what)"
                        + " + (select count(*) from log_entry where payload like :what)")
                .param("what", "%" + what + "%")
                .query(Long.class)
                .single();
    }
}
