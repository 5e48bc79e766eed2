package org.trammel.shop.travellers;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;

/** Where the modules that an operation waited for, see {@link Awaited}, tell that what it waited for has come. */
@Service
public class HasCome {

    private final Locator locator;
    private final OperationRepository operations;
    private final TravellerRepository travellers;
    private final Bench bench;
    private final Progress progress;
    private final ActLog log;

    HasCome(
            Locator locator,
            OperationRepository operations,
            TravellerRepository travellers,
            Bench bench,
            Progress progress,
            ActLog log) {
        this.locator = locator;
        this.operations = operations;
        this.travellers = travellers;
        this.bench = bench;
        this.progress = progress;
        this.log = log;
    }

    /**
     * Locks the frames of these operations, and other chains, and opens an act that concerns them all.
     *
     * @return false if the act was carried out before
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public boolean opens(Act act, String kind, String subject, Collection<Long> operationIds, String... chains) {
        List<String> all = new ArrayList<>(List.of(chains));
        if (!operationIds.isEmpty()) {
            all.addAll(List.of(Bench.chains(locator.ofOperations(operationIds))));
        }
        return log.opens(act, kind, subject, all.toArray(String[]::new));
    }

    /**
     * The operation goes on, where nothing else is left. Whoever signed a point that is not passed yet did so for what was
     * recorded before: its signatures are asked for anew, so that nobody signs first and does the work after.
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public void to(Act act, long operationId) {
        Operation operation = operations.findById(operationId).orElseThrow(() -> Bench.noSuch("operation"));
        Traveller traveller = travellers.findById(operation.travellerId()).orElseThrow(() -> Bench.noSuch("traveller"));
        if (traveller.state().open()) {
            if (operation.state() == OperationState.AT_POINT && bench.signed(operation)) {
                bench.reopen(act, traveller, operation);
            }
            progress.settle(act, traveller, operation);
        }
    }
}
