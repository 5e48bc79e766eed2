package org.trammel.shop.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.trammel.shop.floor.SmallRoute.op;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.floor.SmallRoute;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Signed;

/** The paper that tells how a bicycle was built, with what its record lacks, and without a word that promises more. */
class BuildPaperTest extends AtTheDoor {

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Crew people;

    @Test
    void thePaperTellsEachTorqueWithToolAndWitnessTheRideAndWhatIsMissing() throws Exception {
        Floor.Frame frame = floor.frame(SmallRoute.of(
                        op(fit).step("parts").sheet(),
                        op(check).step("looked over").sheet(),
                        op(pack).step("in the box").sheet())
                .sheet());
        give(frame, component(ComponentKind.STEM, plate(null)), "");
        assertThat(paper(frame, ""))
                .contains("What the record lacks", "torques: none", "nobody is recorded to have ridden");
        tightenAll(frame);
        witness(frame, second);
        floor.tickAll(frame, fitter);
        bed(frame, BuildRecord.Brake.FRONT, 20, "25", true);
        bed(frame, BuildRecord.Brake.REAR, 20, "25", true);
        builds.ride(crew.act(fitter), at(frame), second, true, "tracks straight, no noise");
        builds.item(crew.act(fitter), at(frame), "bell", true);
        builds.item(crew.act(fitter), at(frame), "manual", true);
        floor.tickAll(frame, fitter);
        String named = paper(frame, "");
        assertThat(named)
                .contains("face plate", "5,5", "5 to 6", tool, name(fitter), name(second))
                .contains("Front brake bedded: 20 stops", "tracks straight", "bell; manual")
                .doesNotContain("What the record lacks");
        String customers = paper(frame, "?named=false");
        assertThat(customers)
                .contains("face plate", "a second person", "nobody of the shop is named")
                .doesNotContain(name(fitter), name(second));
        for (String text : new String[] {named, customers}) {
            assertThat(text.toLowerCase(java.util.Locale.ROOT))
                    .doesNotContain("certif")
                    .doesNotContain("complian")
                    .doesNotContain("complies")
                    .doesNotContainPattern("\\bsafe");
        }
    }

    @Test
    void aProgramReadsTheSame() throws Exception {
        Floor.Frame frame = atItsCheck();
        MockHttpServletResponse answer = mvc.perform(get("/api/v1/frames/" + frame.serial() + "/build-record")
                        .with(Signed.on(people.byId(fitter))))
                .andReturn()
                .getResponse();
        assertThat(answer.getStatus()).isEqualTo(200);
        assertThat(answer.getContentAsString(StandardCharsets.UTF_8)).contains("\"missing\"", "torques: none");
    }

    private String name(long person) {
        return people.byId(person).name();
    }

    /** What is printed, without what is around it. */
    private String paper(Floor.Frame frame, String query) throws Exception {
        MockHttpServletResponse answer = mvc.perform(get("/frames/" + frame.serial() + "/build-record" + query)
                        .with(Signed.on(people.byId(qa))))
                .andReturn()
                .getResponse();
        String page = answer.getContentAsString(StandardCharsets.UTF_8);
        assertThat(answer.getStatus()).as(page).isEqualTo(200);
        return page.substring(page.indexOf("<main"), page.indexOf("</main>"));
    }
}
