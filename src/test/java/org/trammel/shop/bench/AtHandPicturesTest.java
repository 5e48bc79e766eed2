package org.trammel.shop.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.ArgumentMatchers.anyLong;
import static org.mockito.Mockito.when;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.springframework.test.context.bean.override.mockito.MockitoBean;
import org.trammel.calc.drawing.DrawnFrames;
import org.trammel.shop.designs.SideViews;
import org.trammel.shop.floor.Floor;

/** The part at hand on the sheet of a station. */
class AtHandPicturesTest extends AtTheTablet {

    @MockitoBean
    private SideViews views;

    private String sheet(Floor.Frame frame) throws Exception {
        return mvc.perform(get(address(frame)).session(browser).with(signedOn(worker)))
                .andReturn()
                .getResponse()
                .getContentAsString();
    }

    @Test
    void theStepsPartStandsOutOnTheFrame() throws Exception {
        when(views.of(anyLong()))
                .thenReturn(Optional.of(DrawnFrames.demo("O-101").side()));
        Floor.Frame frame = floor.frame(BenchRoute.route());
        assertThat(sheet(frame)).as("a step that names no part").doesNotContain("class=\"at-hand\"");
        floor.tickAll(frame, worker);
        assertThat(sheet(frame))
                .contains("aria-label=\"At hand: down tube to shell.\"", ">down tube to shell</text>")
                .contains("stroke-width=\"12\"");
    }

    @Test
    void withoutAComputedFrameTheSheetIsAsItWas() throws Exception {
        when(views.of(anyLong())).thenReturn(Optional.empty());
        Floor.Frame frame = floor.frame(BenchRoute.route());
        floor.tickAll(frame, worker);
        assertThat(sheet(frame)).contains("The way ahead").doesNotContain("at-hand");
    }
}
