package org.trammel.shop.bench;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.calc.drawing.DrawnSheet;
import org.trammel.calc.drawing.StationPicture;
import org.trammel.shop.designs.SideViews;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.web.DrawnLetters;

/** The frame in small, with the part that the step at hand is about. */
@Component
class AtHandPictures {

    private static final double WIDTH_MM = 124;
    private static final double HEIGHT_MM = 50;

    private final SideViews views;
    private final DrawnLetters letters;

    AtHandPictures(SideViews views, DrawnLetters letters) {
        this.views = views;
        this.letters = letters;
    }

    /** The picture; null where the step names no part, or the frame cannot be computed. */
    @Nullable
    DrawnSheet of(FrameSheet.Head head, FrameSheet.@Nullable StepLine step) {
        Long design = head.designRevisionId();
        if (design == null || step == null || !StationPicture.names(step.text())) {
            return null;
        }
        Optional<DrawnSheet> drawn =
                views.of(design).flatMap(view -> StationPicture.of(view, step.text(), letters, WIDTH_MM, HEIGHT_MM));
        return drawn.orElse(null);
    }
}
