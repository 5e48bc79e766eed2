package org.trammel.shop.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.cookie;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import jakarta.servlet.http.Cookie;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.http.HttpHeaders;
import org.springframework.test.web.servlet.MockMvc;

class ShellTest {

    private final MockMvc mvc = Face.with(Samples.class);

    @Test
    void aPageHasItsLanguageOneHeadingASkipLinkAndTheOpenSheetMarked() throws Exception {
        String html = page("/samples/desk");
        assertThat(html).contains("<html lang=\"en-GB\" data-theme=\"paper\">");
        assertThat(html.split("<h1", -1)).hasSize(2);
        assertThat(html).contains("href=\"#sheet\"").contains("href=\"/shop\" aria-current=\"page\"");
        assertThat(html.split("aria-current", -1)).hasSize(2);
    }

    @Test
    void noScriptAndNoStyleStandsInThePage() throws Exception {
        assertThat(page("/samples/desk") + page("/samples/station"))
                .doesNotContain("<style")
                .doesNotContain("style=")
                .doesNotContain("javascript:");
    }

    @Test
    void everyFieldHasALabelAndItsHintIsTiedToIt() throws Exception {
        String html = page("/samples/desk");
        for (String name : List.of("name", "wall", "from", "pin", "metal", "outside", "picture", "reason")) {
            assertThat(html).contains("for=\"f-" + name + "\"").contains("id=\"f-" + name + "\"");
        }
        assertThat(html).contains("aria-describedby=\"f-name-h\"").contains("id=\"f-name-h\"");
        assertThat(html).contains("value=\"0,9\"");
    }

    @Test
    void theNightSheetIsAChoiceOfTheDeviceKeptInACookie() throws Exception {
        mvc.perform(post("/theme").param("theme", "night").header(HttpHeaders.REFERER, "http://localhost/orders?open"))
                .andExpect(status().isSeeOther())
                .andExpect(redirectedUrl("/orders?open"))
                .andExpect(cookie().value("trammel-theme", "night"));
        String html = mvc.perform(get("/samples/desk").cookie(new Cookie("trammel-theme", "night")))
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(html).contains("data-theme=\"night\"");
    }

    private String page(String path) throws Exception {
        return mvc.perform(get(path))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
    }
}
