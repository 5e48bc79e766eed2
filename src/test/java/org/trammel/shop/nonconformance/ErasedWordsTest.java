package org.trammel.shop.nonconformance;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.orders.Customers;
import org.trammel.shop.travellers.Shipping;

/** What a customer said about a decision goes when the customer asks to be erased. */
class ErasedWordsTest extends AtTheDesk {

    @Autowired
    private Customers customers;

    @Autowired
    private Shipping shipping;

    @Test
    void whatACustomerAgreedToIsErasedWithTheCustomerInEveryDecisionEverPutForward() {
        WholeShop.Frame frame = found();
        long id = of(frame);
        LocalDate later = LocalDate.of(2026, 12, 31);
        deciding.propose(shop.act(qa), id, concession(later, "Rider One wrote on 17 March"));
        deciding.propose(shop.act(qa), id, concession(later, "Rider One, by telephone"));
        agree(owner, id);
        shop.tickAll(frame, worker);
        shipping.ship(shop.act(worker), frame.travellerId(), frame.serial());
        assertThat(deciding.byId(id).customerAgreement()).isEqualTo("Rider One, by telephone");
        long customer = jdbc.sql("select customer_id from shop_order where id = ?")
                .param(frame.orderId())
                .query(Long.class)
                .single();
        customers.erase(shop.act(owner), customer);
        assertThat(deciding.byId(id).customerAgreement()).isEqualTo("(erased)");
        assertThat(deciding.byId(id).limits()).isEqualTo("this frame");
        assertThat(jdbc.sql(
                                "select count(*) from kept_words_text t join nonconformance_wording w on w.words_id = t.words_id"
                                        + " where w.nonconformance_id = ? and t.words like '%Rider One%'")
                        .param(id)
                        .query(Long.class)
                        .single())
                .isZero();
        assertThat(jdbc.sql("select count(*) from log_entry where chain = ? and payload like '%Rider One%'")
                        .param("frame:" + frame.serial())
                        .query(Long.class)
                        .single())
                .isZero();
    }

    private static Proposal concession(LocalDate until, String customer) {
        return new Proposal(
                Decision.CONCESSION,
                "looked at it",
                null,
                "this frame",
                until,
                true,
                customer,
                false,
                null,
                null,
                Set.of());
    }
}
