package org.trammel.shop.materials;

import java.util.List;
import java.util.Map;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.travellers.PieceGone;

/** What a scrapped piece consumed stays in its history, and does not count for the piece that is made in its place. */
@Component
class GoneWithPiece {

    private final LotUseRepository uses;
    private final ActLog log;
    private final ApplicationEventPublisher events;

    GoneWithPiece(LotUseRepository uses, ActLog log, ApplicationEventPublisher events) {
        this.uses = uses;
        this.log = log;
        this.events = events;
    }

    @EventListener
    void on(PieceGone gone) {
        List<LotUseRow> consumed = uses.findBySerialAndPartAndGoneWithIsNull(gone.serial(), gone.part()).stream()
                .filter(use -> !gone.kept().contains(use.operation()))
                .toList();
        if (consumed.isEmpty()) {
            return;
        }
        consumed.forEach(use -> use.goneWith(gone.travellerId()));
        log.event(
                Lots.chain(gone.serial()),
                "pieces-gone-with-part",
                Map.of(
                        "part",
                        gone.part(),
                        "traveller",
                        gone.travellerId(),
                        "uses",
                        consumed.stream().map(LotUseRow::id).toList()));
        events.publishEvent(new MadeOfChanged(gone.act(), gone.serial()));
    }
}
