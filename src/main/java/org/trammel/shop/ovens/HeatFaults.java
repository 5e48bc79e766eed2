package org.trammel.shop.ovens;

import org.springframework.stereotype.Component;
import org.trammel.shop.nonconformance.Opening;
import org.trammel.shop.records.Act;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;
import org.trammel.shop.web.Formats;

/**
 * What a run brought above the limit of its heat opens a nonconformance as the run is decided: the load was let in by what
 * the programme is worth, and the record may show more.
 */
@Component
class HeatFaults {

    private final HeatLedgers ledgers;
    private final Travellers travellers;
    private final Opening opening;
    private final Formats formats;

    HeatFaults(HeatLedgers ledgers, Travellers travellers, Opening opening, Formats formats) {
        this.ledgers = ledgers;
        this.travellers = travellers;
        this.opening = opening;
        this.formats = formats;
    }

    void open(Act act, RunRow run, Programme programme, LoadedRow frame) {
        FrameSheet.Head head = travellers.head(frame.travellerId());
        Long operation = frame.operationId() == null ? head.currentOperationId() : frame.operationId();
        if (operation == null || !head.state().open() || !programme.purpose().addsToTheLedger()) {
            return;
        }
        ledgers.of(head.serial(), head.part(), head.metal(), null, null)
                .filter(sheet -> !sheet.sums().holds())
                .ifPresent(sheet -> opening.ofRecord(
                        act,
                        head.travellerId(),
                        operation,
                        "Above the limit of its heat by the record of run " + run.code() + ". "
                                + formats.sentence(sheet.words())));
    }
}
