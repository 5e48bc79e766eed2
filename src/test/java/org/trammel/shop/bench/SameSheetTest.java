package org.trammel.shop.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.trammel.shop.floor.Floor;

/** A form of one frame, sent to the address of another frame's sheet. */
class SameSheetTest extends AtTheTablet {

    private Floor.Frame open;
    private Floor.Frame other;

    @BeforeEach
    void twoFramesStandAtTheStation() {
        open = floor.frame(BenchRoute.route());
        other = floor.frame(BenchRoute.route());
    }

    @Test
    void aTickOfAnotherFrameIsRefusedAndNotDone() throws Exception {
        long step = nextStep(other).stepId();
        refused(form(address(open) + "/tick", address(open)).param("step", String.valueOf(step)));
        assertThat(nextStep(other).stepId()).isEqualTo(step);
    }

    @ParameterizedTest
    @CsvSource({"break-off", "resume", "sign", "send-out", "call", "hold", "note"})
    void soIsWhatNamesItsOperationOrItself(String deed) throws Exception {
        refused(form(address(open) + "/" + deed, address(open))
                .param("operation", String.valueOf(floor.at(other).line().operationId()))
                .param("traveller", String.valueOf(other.travellerId()))
                .param("reason", "OTHER")
                .param("as", "WORKER")
                .param("words", "The wrong frame."));
    }

    @Test
    void aTickOfItsOwnIsTaken() throws Exception {
        long step = nextStep(open).stepId();
        MockHttpServletResponse answer = answer(tick(open), worker);
        assertThat(answer.getStatus()).isEqualTo(303);
        assertThat(nextStep(open).stepId()).isNotEqualTo(step);
    }

    private void refused(MockHttpServletRequestBuilder form) throws Exception {
        MockHttpServletResponse answer = answer(form, worker);
        String shown = answer.getStatus() == 303
                ? page(String.valueOf(answer.getRedirectedUrl()).replace("http://localhost", ""))
                : answer.getContentAsString();
        assertThat(shown).contains("Nothing was done.").contains("but what was sent belongs to");
        assertThat(answer(get(address(open)), worker).getStatus()).isEqualTo(200);
    }
}
