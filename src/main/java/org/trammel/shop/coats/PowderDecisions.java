package org.trammel.shop.coats;

import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.nonconformance.NonconformanceReads;
import org.trammel.shop.nonconformance.RecordedFaults;

/** No word says that a powder is right after all while what is entered of its lot says that it is wrong. */
@Component
@Transactional(readOnly = true)
class PowderDecisions implements RecordedFaults {

    private final WrongPowders powders;
    private final NonconformanceReads reads;

    PowderDecisions(WrongPowders powders, NonconformanceReads reads) {
        this.powders = powders;
        this.reads = reads;
    }

    @Override
    public Optional<String> neverStays(String serial, String number) {
        return Optional.empty();
    }

    @Override
    public Optional<String> notCleared(String serial, String number) {
        return reads.of(serial).stream()
                .filter(one -> one.number().equals(number))
                .filter(one -> powders.on(serial, one.part()).stream()
                        .anyMatch(wrong -> CoatFaults.same(wrong.words(), one.words())))
                .map(one -> "By what is entered of its lot it is so still. " + one.words())
                .findFirst();
    }
}
