package org.trammel.shop.designs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;

import java.math.BigDecimal;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.test.web.servlet.MvcResult;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.RequestPostProcessor;
import org.trammel.shop.people.Signed;

/** Two have a draft open; what the first keeps is not carried off by the second, however often they press. */
class LateDraftTest extends AtTheDrawingDesk {

    private static final Pattern VERSION = Pattern.compile("name=\"version\" value=\"([0-9]+)\"");

    private RequestPostProcessor owner;

    @BeforeEach
    void sitDown() {
        owner = Signed.on(crew.byId(frame.owner));
    }

    @Test
    void theSecondPressOfALateDraftIsRefusedAgainAndTheFirstOnesNumbersStay() throws Exception {
        long id = frame.begin();
        String edit = "/designs/" + id + "/edit";
        String seen = version(page(edit, Map.of()));
        office.change(hands.act(frame.owner), id, null, frame.draft(TrailFrame.inputs()));

        String refused = press(edit, seen);
        assertThat(version(refused)).isEqualTo(seen);
        assertThat(refused)
                .contains("value=\"Another description\"", "Kept by now: Hardtail 29.", "Kept by now: 432.")
                .contains("target=\"_blank\" rel=\"noopener\" href=\"" + edit + "\"");
        press(edit, version(refused));
        assertThat(designs.revision(id).geometry()).hasSize(TrailFrame.inputs().size());
        assertThat(designs.revision(id).description()).isEqualTo("Hardtail 29");

        String fresh = page(edit, Map.of());
        mvc.perform(draft(edit, version(fresh)).param("geometry.CHAINSTAY", "434"))
                .andExpect(redirectedUrl("/designs/" + id));
    }

    @Test
    void theSecondPressOfALateNominalIsRefusedAgain() throws Exception {
        long id = frame.draft();
        String list = "/designs/" + id + "/characteristics";
        String seen = version(page(list, Map.of()));
        office.give(hands.act(frame.owner), id, null, Map.of("080-7", Nominal.of(new BigDecimal("66"))));
        String mine = seen;
        for (int press = 0; press < 2; press++) {
            MvcResult late = mvc.perform(form(list, mine).param("nominal.080-7", "65"))
                    .andExpect(redirectedUrl(list))
                    .andReturn();
            String refused = page(list, late.getFlashMap());
            assertThat(refused).contains("value=\"65\"", "Kept by now: 66.");
            mine = version(refused);
        }
        assertThat(mine).isEqualTo(seen);
        assertThat(designs.revision(id).nominals().get("080-7").nominal()).isEqualByComparingTo("66");
    }

    private String press(String edit, String seen) throws Exception {
        MvcResult late = mvc.perform(draft(edit, seen).param("geometry.CHAINSTAY", ""))
                .andExpect(redirectedUrl(edit))
                .andReturn();
        return page(edit, late.getFlashMap());
    }

    private MockHttpServletRequestBuilder draft(String edit, String seen) {
        return form(edit, seen)
                .param("description", "Another description")
                .param("metal", "AL6061")
                .param("kind", "HARDTAIL");
    }

    private MockHttpServletRequestBuilder form(String path, String seen) {
        return post(path)
                .param("actId", UUID.randomUUID().toString())
                .param("version", seen)
                .header("Referer", "http://localhost" + path)
                .with(csrf())
                .with(owner);
    }

    private String page(String path, Map<String, Object> flash) throws Exception {
        MockHttpServletRequestBuilder get = get(path).with(owner);
        flash.forEach(get::flashAttr);
        return mvc.perform(get).andReturn().getResponse().getContentAsString();
    }

    private static String version(String page) {
        Matcher found = VERSION.matcher(page);
        assertThat(found.find()).isTrue();
        return found.group(1);
    }
}
