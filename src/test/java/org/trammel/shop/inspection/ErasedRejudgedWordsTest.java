package org.trammel.shop.inspection;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.orders.Customers;
import org.trammel.shop.people.Asking;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;
import org.trammel.shop.records.Words;

/** What was said about a frame's owner after a gauge failed goes when the customer asks to be erased. */
class ErasedRejudgedWordsTest extends AfterAFailure {

    @Autowired
    private Customers customers;

    @Autowired
    private Words words;

    @Autowired
    private Crew crew;

    @Autowired
    private MockMvc mvc;

    @Test
    void whatAnOwnerWasToldIsErasedWithTheCustomerAndTheRestStays() throws Exception {
        String gauge = offsetGauge();
        WholeShop.Frame told = shipped(gauge, "-0.80");
        WholeShop.Frame other = shipped(gauge, "-0.81");
        RejudgementLine done = failed(gauge, "0.18");
        settle(qa, done, told, FrameResult.OWNER_CONTACTED, "Rider One of Elm Lane 4 stops riding");
        settle(qa, done, other, FrameResult.OWNER_CONTACTED, "the other one rides on");
        assertThat(page(done)).contains("owner contacted: Rider One of Elm Lane 4 stops riding");
        erase(told);
        assertThat(frameOf(done, told).resultWords()).isEqualTo("(erased)");
        assertThat(frameOf(done, told).result()).isEqualTo(FrameResult.OWNER_CONTACTED);
        assertThat(page(done))
                .contains("owner contacted: (erased)", "owner contacted: the other one rides on")
                .doesNotContain("Elm Lane");
        assertThat(said("Elm Lane")).isZero();
    }

    @Test
    void whatACustomerAgreedToIsErasedInEveryDecisionEverPutForwardAndTheReasonStays() throws Exception {
        String gauge = offsetGauge();
        WholeShop.Frame gone = shipped(gauge, "-0.80");
        RejudgementLine done = failed(gauge, "0.18");
        for (String customer : new String[] {"Rider One by telephone", "Rider One by letter"}) {
            results.settle(
                    shop.act(qa),
                    done.id(),
                    gone.serial(),
                    new FrameSettling(FrameResult.DECIDED, "0,03 past the limit", true, customer));
        }
        results.agree(shop.act(shop.hire(Role.OWNER)), done.id(), gone.serial(), 2);
        assertThat(page(done)).contains("Customer: Rider One by letter");
        erase(gone);
        assertThat(page(done)).contains("Customer: (erased)", "decided without measuring: 0,03 past the limit");
        assertThat(said("Rider One by")).isZero();
    }

    /** The hold that a result lifted has no words of its own to erase, and neither has the log. */
    @Test
    void wordsAreKeptOnceAndCanBeErasedByThemselves() {
        String gauge = offsetGauge();
        WholeShop.Frame frame = frame(offset());
        ReadingLine old = readConfirmed(frame, gauge, "-0.80");
        RejudgementLine done = failed(gauge, "0.18");
        correct(qa, old, offsetGauge(), "-0.85");
        settle(qa, done, frame, FrameResult.MEASURED_AGAIN, "looked at in the yard of Rider Two");
        rejudgements.close(shop.act(qa), done.id(), "Rider Two was shown it");
        assertThat(travellers.holdsOf(frame.serial()))
                .extracting(hold -> hold.liftWords())
                .containsExactly(done.number() + ": measured again");
        assertThat(said("Rider Two")).isEqualTo(2);
        words.erase(shop.act(qa), id("result_words_id", "rejudged_frame where rejudgement_id = " + done.id()));
        words.erase(shop.act(qa), id("closed_words_id", "rejudgement where id = " + done.id()));
        assertThat(said("Rider Two")).isZero();
        assertThat(frameOf(done, frame).resultWords()).isEqualTo("(erased)");
        assertThat(rejudgements.one(done.id()).closedWords()).isEqualTo("(erased)");
    }

    private void erase(WholeShop.Frame frame) {
        customers.erase(shop.act(shop.hire(Role.OWNER)), id("customer_id", "shop_order where id = " + frame.orderId()));
    }

    private String page(RejudgementLine done) throws Exception {
        return new Asking(mvc, Signed.on(crew.byId(qa))).page("/rejudgements/" + done.id());
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
