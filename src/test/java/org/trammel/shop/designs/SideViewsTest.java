package org.trammel.shop.designs;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.calc.geometry.SideView;
import org.trammel.shop.Statements;

/** The view that a station shows is that of the drawing, read with one statement. */
class SideViewsTest extends AtTheTemplates {

    @Autowired
    private SideViews views;

    @Autowired
    private Statements statements;

    @Test
    void itIsTheOneOfTheDrawing() throws Exception {
        long id = revision(Map.of());
        SideView view = views.of(id).orElseThrow();
        assertThat(view.geometry().layout().reach_mm()).isEqualTo(458);
        assertThat(view.members())
                .extracting(SideView.Member::part)
                .contains(SideView.Part.DOWN_TUBE, SideView.Part.CHAINSTAY);
        assertThat(statements.during(() -> views.of(id))).hasSize(1);
    }

    @Test
    void whatCannotBeComputedHasNone() {
        assertThat(views.of(frame.begin())).isEmpty();
        assertThat(views.of(-1)).isEmpty();
    }
}
