package org.trammel;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Pages work under a policy that runs no script and no style but those of our own files. */
class TemplatesStructureTest {

    private static final List<Path> TEMPLATES = Sources.files("src/main/resources/templates", ".html", ".svg");
    private static final Pattern INLINE =
            Pattern.compile("<script(?![^>]*\\bsrc=)[^>]*>|<style\\b|\\sstyle=|\\bth:style\\b"
                    + "|\\s(?:th:)?on[a-z]{3,}=|javascript:|th:inline=\"(?:javascript|css)\"");
    private static final Pattern ELSEWHERE = Pattern.compile("(?:src|href)=\"(?:https?:)?//[^\"]*\"");
    /** Drawings of the server are markup; they escape the text in them themselves. */
    private static final Pattern DRAWN =
            Pattern.compile("th:with=\"drawn=\\$\\{@(?:draw|qr|axis)\\.[^\"]*\" th:utext=\"\\$\\{drawn\\}\"");

    private static final Pattern TAG = Pattern.compile("<[\\w:]+(?:\\s+[\\w:-]+(?:=\"[^\"]*\")?)*\\s*/?>");

    private static final Pattern BEAN_ARGUMENT =
            Pattern.compile("th:(?:replace|insert)=\"[^\"]*\\$\\{[^\"}]*@[^\"]*\"");

    private static final Pattern CONDITION = Pattern.compile("th:(?:if|unless|each)=\"");

    private static final Pattern RAW_MARKUP = Pattern.compile("th:utext");

    private static final Pattern VERSION = Pattern.compile("<input\\b[^>]*\\sname=\"(?:version|seen)\"[^>]*>");
    private static final Pattern TYPED = Pattern.compile(
            "parts :: (?:field|number|area|select|day|tick|secret|reading|sourced)\\b|<textarea|<select|type=\"text\"");

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
        assertThat(Sources.findings(TEMPLATES, file -> rawMarkup(Sources.text(file))))
                .isEmpty();
    }

    private static List<String> rawMarkup(String template) {
        return Sources.matches(RAW_MARKUP, DRAWN.matcher(template).replaceAll(""));
    }

    /** The engine replaces a tag before it looks at its condition, so a condition beside th:replace is never asked. */
    @Test
    void noTagCarriesAConditionBesideItsReplacement() {
        assertThat(Sources.findings(TEMPLATES, file -> unasked(Sources.text(file))))
                .isEmpty();
    }

    /** The engine refuses a bean among the arguments of a fragment when the page is drawn; th:with takes it before. */
    @Test
    void noFragmentTakesABeanAsItsArgument() {
        assertThat(Sources.findings(TEMPLATES, file -> Sources.matches(BEAN_ARGUMENT, Sources.text(file))))
                .isEmpty();
    }

    /**
     * A form in which somebody types takes the version it was filled in over from the fragment that keeps the one that was
     * seen; with the newest one instead, the second press of a refused form would wipe what was kept meanwhile.
     */
    @Test
    void aFormThatWasRefusedKeepsTheVersionThatWasSeen() {
        assertThat(Sources.findings(TEMPLATES, file -> newestVersions(Sources.text(file))))
                .isEmpty();
    }

    private static List<String> newestVersions(String template) {
        List<String> found = new ArrayList<>();
        Matcher version = VERSION.matcher(template);
        while (version.find()) {
            String rest = template.substring(version.end()).split("</form>", 2)[0];
            if (TYPED.matcher(rest).find()) {
                found.add(version.group());
            }
        }
        return found;
    }

    private static List<String> unasked(String template) {
        return Sources.matches(TAG, template).stream()
                .filter(tag ->
                        tag.contains("th:replace=\"") && CONDITION.matcher(tag).find())
                .toList();
    }

    @Test
    void aSlipIsFound() {
        String seen = "<form><input type=\"hidden\" name=\"version\" th:value=\"${d.version}\">";
        assertThat(newestVersions(
                        seen + "<p th:replace=\"~{parts :: number('Reach', 'r', null, 'mm', null)}\"></p></form>"))
                .hasSize(1);
        assertThat(newestVersions(seen + "<button>Retire</button></form><textarea></textarea>"))
                .isEmpty();
        assertThat(Sources.matches(BEAN_ARGUMENT, "<p th:replace=\"~{parts :: frame(${@fmt.mark(s)})}\"></p>"))
                .hasSize(1);
        assertThat(unasked("<p th:if=\"${a > b}\" th:replace=\"~{x}\"></p>")).hasSize(1);
        assertThat(unasked("<th:block th:if=\"${a > b}\"><p th:replace=\"~{x}\"></p></th:block>"))
                .isEmpty();
        assertThat(rawMarkup("<p th:utext=\"${name}\">")).hasSize(1);
        assertThat(rawMarkup("<p th:with=\"drawn=${@draw.punch(1)}\" th:utext=\"${drawn}\">"))
                .isEmpty();
        assertThat(Sources.matches(INLINE, "<p style=\"x\"> <script>a</script> <button onclick=\"x\">"))
                .hasSize(3);
        assertThat(Sources.matches(INLINE, "<script type=\"module\" src=\"/a.js\"></script><link rel=\"stylesheet\">"))
                .isEmpty();
    }
}
