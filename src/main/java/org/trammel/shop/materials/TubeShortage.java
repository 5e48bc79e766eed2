package org.trammel.shop.materials;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Component;
import org.trammel.shop.designs.TubePlace;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/**
 * Tells who waits for the same section when a tube is cut again and the pieces that are counted no longer reach. Where a lot
 * that holds it is not counted by the piece nobody knows how many are left, and nothing is told.
 */
@Component
class TubeShortage {

    private final TubeRecords records;
    private final LotRepository lots;
    private final LotSections sections;
    private final Travellers travellers;

    TubeShortage(TubeRecords records, LotRepository lots, LotSections sections, Travellers travellers) {
        this.records = records;
        this.lots = lots;
        this.sections = sections;
        this.travellers = travellers;
    }

    /** In words, once a piece of a frame was scrapped; empty where all may have theirs, or nobody knows. */
    Optional<String> after(MadeOf gone, String metal, String serial) {
        FrameSheet.Head own = travellers.heads(serial).stream()
                .filter(head -> head.part().equals(gone.part()) && head.currentOperationId() != null)
                .findFirst()
                .orElse(null);
        if (own == null) {
            return Optional.empty();
        }
        TubePlace place = records.of(Objects.requireNonNull(own.currentOperationId())).lines().stream()
                .map(TubeSheet.Line::place)
                .filter(one -> one.code().equals(gone.place()))
                .findFirst()
                .orElse(null);
        Section section = place == null
                ? null
                : Section.of(place.outside_mm(), place.wall_mm(), place.middle_mm(), place.other_mm());
        return section == null ? Optional.empty() : told(own, section, metal);
    }

    private Optional<String> told(FrameSheet.Head own, Section section, String metal) {
        List<Lot> holding = lots.page(null, LotKind.TUBE, LotState.RELEASED, Limit.unlimited()).stream()
                .map(LotRow::lot)
                .filter(lot ->
                        metal.equals(lot.metal()) && sections.of(lot.id()).contains(section))
                .toList();
        if (holding.stream()
                .anyMatch(lot -> lot.quantityLeft() == null || !lot.unit().equals("pc"))) {
            return Optional.empty();
        }
        BigDecimal left = holding.stream()
                .map(lot -> Objects.requireNonNull(lot.quantityLeft()))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        List<String> waiting = travellers.inShop().stream()
                .filter(head ->
                        head.travellerId() != own.travellerId() && head.metal().equals(own.metal()))
                .filter(this::waits)
                .flatMap(head -> records.of(Objects.requireNonNull(head.currentOperationId())).lines().stream()
                        .filter(line -> line.issued() == null && asks(line.place(), section))
                        .map(line -> head.mark() + " " + line.place().called()))
                .toList();
        return waiting.isEmpty() || left.compareTo(BigDecimal.valueOf(waiting.size() + 1L)) >= 0
                ? Optional.empty()
                : Optional.of(LotRow.bare(left) + " left of its section, and these wait for the same: "
                        + waiting.stream().collect(Collectors.joining(", ")));
    }

    /** Whether tubes are still issued to it: a frame of an older route is not issued any by its places. */
    private boolean waits(FrameSheet.Head head) {
        return head.state().open()
                && head.currentOperationId() != null
                && travellers.whole(head.travellerId()).stream()
                        .flatMap(operation -> operation.steps().stream())
                        .anyMatch(step -> step.proof() == Proof.TUBES && !step.ticked());
    }

    private static boolean asks(TubePlace place, Section section) {
        return section.equals(Section.of(place.outside_mm(), place.wall_mm(), place.middle_mm(), place.other_mm()));
    }
}
