package org.trammel.shop.travellers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.TestClock;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.FloorTest;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Refusal;

/** The crew and the verbs that tests of the shop floor share. */
@FloorTest
abstract class AtTheBench {

    @Autowired
    protected Floor floor;

    @Autowired
    protected Bench bench;

    @Autowired
    protected Signing signing;

    @Autowired
    protected Holds holds;

    @Autowired
    protected Rework rework;

    @Autowired
    protected Shipping shipping;

    @Autowired
    protected Outside outside;

    @Autowired
    protected Remarks remarks;

    @Autowired
    protected TestClock clock;

    protected long worker;
    protected long second;
    protected long qa;
    protected long owner;

    @BeforeEach
    void crew() {
        floor.open();
        worker = floor.hire(Role.STATION_WORKER);
        second = floor.hire(Role.STATION_WORKER);
        qa = floor.hire(Role.QA_LEAD);
        owner = floor.hire(Role.OWNER);
    }

    @Autowired
    protected Travellers travellers;

    protected Floor.Frame part(Floor.Frame whole, String part) {
        return new Floor.Frame(
                whole.orderId(), travellers.inForce(whole.serial(), part).travellerId(), whole.serial());
    }

    protected long hold(Floor.Frame frame, HoldScope scope, HoldReason reason, Set<Long> causers) {
        return holds.place(
                floor.act(worker),
                new Holds.Request(frame.travellerId(), scope, null, reason, "to be looked at", "by hand", causers));
    }

    protected static void refused(org.assertj.core.api.ThrowableAssert.ThrowingCallable deed, String... facts) {
        assertThatThrownBy(deed).isInstanceOfSatisfying(Refusal.class, refusal -> {
            String all = refusal.what() + " " + refusal.why() + " " + refusal.instead();
            assertThat(all).contains(facts);
        });
    }
}
