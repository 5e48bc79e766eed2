package org.trammel.shop.ovens;

import java.util.Optional;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.Awaited;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/** Tells others whether the heat of an operation is still outstanding. */
@Service
@Transactional(readOnly = true)
public class Curing {

    private final GuardedOperations guarded;
    private final Travellers travellers;

    Curing(GuardedOperations guarded, Travellers travellers) {
        this.guarded = guarded;
        this.travellers = travellers;
    }

    /** The run that an operation waits for, told of something else that waits for it too; empty if it waits for none. */
    public Optional<Refusal> outstanding(long operationId, String deed) {
        FrameSheet.OperationSheetOfFrame at = travellers.operation(operationId);
        FrameSheet.Head head = travellers.headOf(operationId);
        return guarded.outstanding(new Awaited.AtItsGate(
                        operationId,
                        head.travellerId(),
                        head.serial(),
                        head.mark(),
                        head.metal(),
                        at.line().code(),
                        at.line().code(),
                        at.line().startedAt(),
                        at.outside()))
                .map(why -> Refusal.state(deed, why.why(), why.instead()));
    }
}
