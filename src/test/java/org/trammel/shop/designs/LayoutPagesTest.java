package org.trammel.shop.designs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;

/**
 * A layout from whatever is known. What is expected are the inputs and results of the invented workshop's first frame as
 * a script written apart from this project computes them, in {@code geometry/frames.csv}.
 */
class LayoutPagesTest extends AtTheDrawingDesk {

    private static final Map<String, String> TRAIL = Map.ofEntries(
            Map.entry("HEAD_ANGLE", "65,5"),
            Map.entry("SEAT_ANGLE", "74,5"),
            Map.entry("REACH", "458"),
            Map.entry("HEAD_TUBE", "110"),
            Map.entry("LOWER_STACK", "12"),
            Map.entry("FORK_LENGTH", "541"),
            Map.entry("FORK_OFFSET", "44"),
            Map.entry("SHELL_DROP", "58"),
            Map.entry("CHAINSTAY", "432"),
            Map.entry("SEAT_TUBE", "430"),
            Map.entry("SEAT_TUBE_OFFSET", "0"),
            Map.entry("FRONT_WHEEL_RADIUS", "370"),
            Map.entry("REAR_WHEEL_RADIUS", "370"));

    private Map<String, String> given;

    @BeforeEach
    void sitDown() {
        given = new HashMap<>(TRAIL);
    }

    @Test
    void anEmptyDraftSaysWhatALayoutLacks() throws Exception {
        String page = page(frame.begin(), Map.of(), Map.of(), "");
        assertThat(page).contains("No frame yet", "Still missing").doesNotContain("Take it into the draft");
    }

    @Test
    void theNumbersAFrameIsBuiltFromGiveAllOthers() throws Exception {
        String page = page(frame.begin());
        assertThat(page)
                .contains("One frame has these numbers", "Nothing is given beyond need.", "Take it into the draft");
        assertThat(page).contains("643,1\u00a0mm", "1201,1\u00a0mm", "775,2\u00a0mm", "120,3\u00a0mm", "636,3\u00a0mm");
    }

    @Test
    void stackAndWheelbaseMayStandInForHeadTubeAndReach() throws Exception {
        given.remove("HEAD_TUBE");
        given.remove("REACH");
        given.put("STACK", "643,0578");
        given.put("WHEELBASE", "1201,0687");
        long id = frame.begin();
        assertThat(page(id)).contains("One frame has these numbers", "110,0\u00a0mm", "458,0\u00a0mm");
        take(id, frame.owner, true);
        Map<String, String> drawn = designs.revision(id).geometry();
        assertThat(Double.parseDouble(drawn.get("HEAD_TUBE"))).isBetween(109.998, 110.002);
        assertThat(Double.parseDouble(drawn.get("REACH"))).isBetween(457.998, 458.002);
        assertThat(drawn).containsEntry("HEAD_ANGLE", "65.5").containsEntry("STACK_ASKED", "643.0578");
    }

    @Test
    void aStackThatContradictsTheRestIsShownAndMayBeGivenUp() throws Exception {
        given.put("STACK", "640");
        long id = frame.begin();
        String page = page(id);
        assertThat(page)
                .contains("These numbers contradict each other", "the others make it 643,1 mm")
                .contains("Give up the stack of 640 mm: it becomes 643,1 mm.")
                .doesNotContain("Take it into the draft");
        assertThat(page(id, given, Map.of(), "STACK"))
                .contains("One frame has these numbers")
                .doesNotContain("640");
        MockHttpServletResponse refused = take(id, frame.owner, false);
        assertThat(refused.getStatus()).isEqualTo(409);
        assertThat(designs.revision(id).geometry()).isEmpty();
    }

    @Test
    void aStackGivenUpLeavesTheDraftToo() throws Exception {
        long id = frame.begin();
        given.put("STACK", "643,06");
        take(id, frame.owner, true);
        assertThat(designs.revision(id).geometry()).containsEntry("STACK_ASKED", "643.06");
        given.remove("STACK");
        take(id, frame.owner, true);
        assertThat(designs.revision(id).geometry()).doesNotContainKey("STACK_ASKED");
    }

    @Test
    void whatTheDrawingGivesAsNominalFollowsTheLayout() throws Exception {
        long id = frame.begin();
        office.change(hands.act(frame.owner), id, null, frame.draft(Map.of()));
        take(id, frame.owner, true);
        assertThat(designs.revision(id).nominals().get("080-7").nominal()).isEqualByComparingTo("65.5");
        given.put("HEAD_ANGLE", "66,5");
        take(id, frame.owner, true);
        assertThat(designs.revision(id).nominals().get("080-7").nominal()).isEqualByComparingTo("66.5");
    }

    @Test
    void theDraftsOwnNumbersStandInTheFormFirst() throws Exception {
        long id = frame.begin();
        take(id, frame.owner, true);
        assertThat(page(id, Map.of(), Map.of(), "")).contains("value=\"65,5\"", "One frame has these numbers");
    }

    @Test
    void whatCannotBeIsSaidBesideItsField() throws Exception {
        given.put("HEAD_ANGLE", "655");
        given.put("CHAINSTAY", "1.432,0");
        given.put("REAR_WHEEL_RADIUS", "<b>");
        String page = page(frame.begin());
        assertThat(page)
                .contains("A comma and a point in one number can be read two ways.", "&lt;b&gt;")
                .contains("The head angle of 655° is not between 0° and 90°.")
                .doesNotContain("<b>”", "Take it into the draft");
    }

    @Test
    void aChainstayShorterThanItsDropIsSaidInWords() throws Exception {
        given.put("CHAINSTAY", "50");
        assertThat(page(frame.begin())).contains("No frame yet").contains("chainstay of 50 mm");
    }

    /**
     * With wheels of one size the axles stand level again: a fork longer by 20 mm tips the frame by
     * atan(20 sin HA / (wheelbase + 20 cos HA)) = 0,862°. Plane trigonometry, by hand.
     */
    @Test
    void anotherForkSaysWhatItChangesBeforeItIsOrdered() throws Exception {
        String page = page(frame.begin(), given, Map.of("FORK_LENGTH", "561"), "");
        assertThat(page).contains("64,64°", "−0,86").contains("With them");
        assertThat(page(frame.begin(), given, Map.of("FORK_LENGTH", "0"), ""))
                .contains("The fork length of 0 mm cannot be.");
    }

    @Test
    void unusualNumbersAreAskedAboutBeforeTheyAreTaken() throws Exception {
        given.put("REACH", "250");
        long id = frame.begin();
        assertThat(take(id, frame.owner, false).getStatus()).isEqualTo(428);
        assertThat(designs.revision(id).geometry()).isEmpty();
        assertThat(take(id, frame.owner, true).getStatus()).isEqualTo(303);
        assertThat(designs.revision(id).geometry()).containsEntry("REACH", "250");
    }

    @Test
    void onlyWhoDrawsMayTakeALayoutAndOnlyIntoADraft() throws Exception {
        long worker = hands.hire(Role.STATION_WORKER);
        long draft = frame.begin();
        assertThat(take(draft, worker, true).getStatus()).isEqualTo(403);
        assertThat(designs.revision(draft).geometry()).isEmpty();
        long sent = frame.sent();
        assertThat(page(sent)).contains("One frame has these numbers").doesNotContain("Take it into the draft");
        assertThat(take(sent, frame.owner, true).getStatus()).isEqualTo(409);
    }

    private String page(long id) throws Exception {
        return page(id, given, Map.of(), "");
    }

    private String page(long id, Map<String, String> numbers, Map<String, String> parts, String without)
            throws Exception {
        MockHttpServletRequestBuilder asked = get("/designs/{id}/layout", id).with(Signed.on(crew.byId(frame.owner)));
        numbers.forEach((name, amount) -> asked.param("given." + name, amount));
        parts.forEach((name, amount) -> asked.param("part." + name, amount));
        if (!without.isEmpty()) {
            asked.param("without", without);
        }
        return Objects.requireNonNull(
                mvc.perform(asked).andReturn().getResponse().getContentAsString());
    }

    private MockHttpServletResponse take(long id, long by, boolean confirmed) throws Exception {
        MockHttpServletRequestBuilder sent = post("/designs/{id}/layout", id)
                .with(Signed.on(crew.byId(by)))
                .with(csrf())
                .param("actId", UUID.randomUUID().toString());
        given.forEach((name, amount) -> sent.param("given." + name, amount));
        if (confirmed) {
            sent.param("confirm", "true");
        }
        return mvc.perform(sent).andReturn().getResponse();
    }
}
