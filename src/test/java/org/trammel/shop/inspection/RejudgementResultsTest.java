package org.trammel.shop.inspection;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.CharacteristicState;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.HoldReason;
import org.trammel.shop.travellers.Holds;

/** What comes of the frames that were measured with a gauge found wrong. */
class RejudgementResultsTest extends AfterAFailure {

    @Autowired
    private Holds holds;

    @Test
    void aHeldFrameGetsItsResultOnceItIsMeasuredAgain() {
        String gauge = offsetGauge();
        WholeShop.Frame frame = frame(offset());
        ReadingLine old = readConfirmed(frame, gauge, "-0.80");
        RejudgementLine done = failed(gauge, "0.18");
        long hold = holdsOf(frame, done).get(0).holdId();
        assertThat(refusal(() -> holds.lift(shop.act(qa), hold, "looks right")).instead())
                .contains("result");
        assertThat(refusal(() -> settle(qa, done, frame)).why()).contains("080-1");
        assertThat(refusal(() -> rejudgements.close(shop.act(qa), done.id(), null))
                        .why())
                .contains("1 frame has no result yet", frame.serial());
        assertThat(refusal(() -> settle(qa, done, frame, FrameResult.OWNER_CONTACTED, "rang"))
                        .field())
                .isEqualTo("result");
        correct(qa, old, offsetGauge(), "-0.85");
        assertThat(only(done).waits()).isFalse();
        assertThat(refusal(() -> settle(second, done, frame)).kind()).isEqualTo(Refusal.Kind.PERSON);
        settle(qa, done, frame);
        assertThat(holdsOf(frame, done)).isEmpty();
        assertThat(refusal(() -> settle(qa, done, frame)).kind()).isEqualTo(Refusal.Kind.STALE);
        assertThat(rejudgements.close(shop.act(qa), done.id(), "all measured").closedWords())
                .isEqualTo("all measured");
    }

    @Test
    void whoReadItDoesNotLiftTheHold() {
        String gauge = offsetGauge();
        WholeShop.Frame frame = frame(offset());
        ReadingLine old = read(qa, frame, gauge, "-0.80");
        RejudgementLine done = failed(gauge, "0.18");
        correct(qa, old, offsetGauge(), "-0.85");
        assertThat(refusal(() -> settle(qa, done, frame)).kind()).isEqualTo(Refusal.Kind.PERSON);
        settle(shop.hire(Role.QA_LEAD), done, frame);
        assertThat(holdsOf(frame, done)).isEmpty();
    }

    /** The owner of a frame that left hears of it from somebody who has no part in what was read. */
    @Test
    void whoReadItDoesNotSayWhatItsOwnerWasTold() {
        String gauge = offsetGauge();
        SmallRoute.Op at = SmallRoute.op("080");
        at.characteristic(offset());
        WholeShop.Frame frame = shop.frame(SmallRoute.of(at.sheet()).sheet());
        readings.read(shop.act(qa), characteristic(frame), input(gauge, true, "-0.80"));
        shipping.ship(shop.act(qa), frame.travellerId(), frame.serial());
        RejudgementLine done = failed(gauge, "0.18");
        assertThat(outcome(done, frame)).isEqualTo(FrameOutcome.CONTACT_OWNER);
        assertThat(refusal(() -> settle(qa, done, frame, FrameResult.OWNER_CONTACTED, "rang"))
                        .kind())
                .isEqualTo(Refusal.Kind.PERSON);
        settle(shop.hire(Role.QA_LEAD), done, frame, FrameResult.OWNER_CONTACTED, "rang");
        assertThat(frameOf(done, frame).result()).isEqualTo(FrameResult.OWNER_CONTACTED);
    }

    @Test
    void aNewVerdictThatDoesNotConformDoesWhatItAlwaysDoes() {
        String gauge = offsetGauge();
        WholeShop.Frame frame = frame(offset());
        ReadingLine old = readConfirmed(frame, gauge, "-0.80");
        RejudgementLine done = failed(gauge, "0.18");
        correct(qa, old, offsetGauge(), "-1.20");
        settle(qa, done, frame);
        assertThat(travellers.holdsOf(frame.serial()))
                .filteredOn(hold -> hold.liftedAt() == null)
                .extracting(FrameSheet.HoldLine::reason)
                .containsExactly(HoldReason.NONCONFORMANCE);
        assertThat(state(frame)).isEqualTo(CharacteristicState.NOT_CONFORMING);
    }
}
