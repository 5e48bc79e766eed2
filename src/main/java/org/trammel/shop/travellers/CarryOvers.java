package org.trammel.shop.travellers;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.orders.CustomerErased;
import org.trammel.shop.people.SeenAs;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.KeptWords;
import org.trammel.shop.records.Words;

/** Keeps what a newer revision said of what was done; who of the customer agreed to it can be erased. */
@Component
class CarryOvers {

    private final CarryOverRepository carries;
    private final TravellerRepository travellers;
    private final OperationRepository operations;
    private final Words words;

    CarryOvers(
            CarryOverRepository carries, TravellerRepository travellers, OperationRepository operations, Words words) {
        this.carries = carries;
        this.travellers = travellers;
        this.operations = operations;
        this.words = words;
    }

    void keep(Act act, Operation old, @Nullable Operation fresh, Revising.Said said, Revising.@Nullable Agreed agreed) {
        boolean conceded = said.verdict() == Carry.CONCESSION && agreed != null;
        carries.save(new CarryOver(
                old,
                fresh,
                said,
                act,
                conceded ? agreed : null,
                conceded ? words.keep(agreed.customer()).id() : null));
    }

    /** What was said of operations, oldest first; an auditor does not read who of the customer agreed. */
    List<FrameStory.Carried> of(Collection<Long> operationIds) {
        List<CarryOver> found = carries.findByOldOperationIdInOrderById(operationIds);
        boolean hidden = SeenAs.hidden();
        List<Long> kept = found.stream()
                .map(CarryOver::customerWordsId)
                .filter(Objects::nonNull)
                .toList();
        Map<Long, KeptWords> texts = hidden || kept.isEmpty() ? Map.of() : words.findAll(kept);
        return found.stream()
                .map(c -> new FrameStory.Carried(
                        c.oldOperationId(),
                        c.newOperationId(),
                        c.verdict(),
                        c.reason(),
                        c.personId(),
                        c.at(),
                        c.ownerId(),
                        hidden ? null : customer(c, texts),
                        c.limits(),
                        c.expiresOn()))
                .toList();
    }

    private static @Nullable String customer(CarryOver c, Map<Long, KeptWords> texts) {
        KeptWords said = c.customerWordsId() == null ? null : texts.get(c.customerWordsId());
        return said == null ? c.customerAgreement() : said.shown();
    }

    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    void erased(CustomerErased event) {
        List<Long> theirs = operations.ofSamePiece(travellers.findBySerialOrderById(event.serial())).stream()
                .map(Operation::id)
                .toList();
        words.eraseAll(
                event.act(),
                carries.findByOldOperationIdInOrderById(theirs).stream()
                        .map(CarryOver::customerWordsId)
                        .filter(Objects::nonNull)
                        .toList());
    }
}
