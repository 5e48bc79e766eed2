package org.trammel.shop.overview;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.trammel.shop.designs.FrameMasses;
import org.trammel.shop.inspection.ReadingLine;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.FrameStory;
import org.trammel.shop.travellers.TravellerState;

/** Weighings of a frame that its traveller asked for, each beside what the drawing in force for it says. */
@Component
class Weighings {

    private final FrameMasses masses;

    Weighings(FrameMasses masses) {
        this.masses = masses;
    }

    /** Of each traveller in force the newest weighing that stands; none where nothing was weighed. */
    List<Story.Weighed> of(FrameStory told, List<ReadingLine> read) {
        List<Story.Weighed> found = new ArrayList<>();
        for (FrameStory.Of traveller : told.travellers()) {
            FrameSheet.Head head = traveller.head();
            Long design = head.designRevisionId();
            if (design == null || head.state() == TravellerState.WITHDRAWN) {
                continue;
            }
            Set<Long> asked = asked(traveller);
            read.stream()
                    .filter(r -> asked.contains(r.characteristicId()) && !r.replaced())
                    .max(Comparator.comparing(ReadingLine::readingId))
                    .flatMap(r -> masses.compared(
                                    design, head.kind(), r.value(), Objects.requireNonNullElse(r.u(), BigDecimal.ZERO))
                            .map(compared -> new Story.Weighed(head.letter(), r.at(), compared)))
                    .ifPresent(found::add);
        }
        return found;
    }

    private static Set<Long> asked(FrameStory.Of traveller) {
        return traveller.operations().stream()
                .flatMap(operation -> operation.characteristics().stream())
                .filter(c -> FrameMasses.isWeighing(traveller.head().kind(), c.name(), c.unit()))
                .map(FrameSheet.CharacteristicLine::characteristicId)
                .collect(Collectors.toSet());
    }
}
