package org.trammel;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Pages work under a policy that runs no script and no style but those of our own files. */
class TemplatesStructureTest {

    private static final List<Path> TEMPLATES = Sources.files("src/main/resources/templates", ".html", ".svg");
    private static final Pattern INLINE =
            Pattern.compile("<script(?![^>]*\\bsrc=)[^>]*>|<style\\b|\\sstyle=|\\bth:style\\b"
                    + "|\\s(?:th:)?on[a-z]{3,}=|javascript:|th:inline=\"(?:javascript|css)\"");
    private static final Pattern ELSEWHERE = Pattern.compile("(?:src|href)=\"(?:https?:)?//[^\"]*\"");
    private static final Pattern RAW_MARKUP = Pattern.compile("th:utext");

    @Test
    void noTemplateCarriesScriptOrStyle() {
        assertThat(Sources.findings(TEMPLATES, file -> Sources.matches(INLINE, Sources.text(file))))
                .isEmpty();
    }

    @Test
    void noTemplateFetchesFromAnotherHost() {
        assertThat(Sources.findings(TEMPLATES, file -> Sources.matches(ELSEWHERE, Sources.text(file))))
                .isEmpty();
    }

    @Test
    void whatPeopleTypeIsNeverMarkup() {
        assertThat(Sources.findings(TEMPLATES, file -> Sources.matches(RAW_MARKUP, Sources.text(file))))
                .isEmpty();
    }

    @Test
    void aSlipIsFound() {
        assertThat(Sources.matches(INLINE, "<p style=\"x\"> <script>a</script> <button onclick=\"x\">"))
                .hasSize(3);
        assertThat(Sources.matches(INLINE, "<script type=\"module\" src=\"/a.js\"></script><link rel=\"stylesheet\">"))
                .isEmpty();
    }
}
