package org.trammel;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** One word for one thing, in templates, in messages, in sentences of the code and in the names others program by. */
class WordsStructureTest {

    private static final Pattern BANNED = Pattern.compile(
            "(?i:\\b(furnaces?|stoves?|dispositions?|use as is|boards?|cards?|tickets?|chips?|tasks?|backlogs?|workflows?"
                    + "|dashboards?|pass/fail|accepted|rejected|proven out|oops|please|sync error|percent complete"
                    + "|safe|certified|compliant)\\b)|\\b(OK|ETA)\\b|\\w!(?!=)");

    /** Legal uses, each as it is written: a word of a standard's title, a media type and the like. */
    private static final List<String> MEANT = List.of();

    private static final Set<String> BANNED_NAMES = Set.of(
            "furnace",
            "stove",
            "disposition",
            "board",
            "card",
            "ticket",
            "chip",
            "task",
            "backlog",
            "workflow",
            "dashboard",
            "accepted",
            "rejected",
            "eta",
            "oops",
            "ok");

    @Test
    void templatesUseTheShopsWords() {
        List<Path> templates = Sources.files("src/main/resources/templates", ".html", ".txt", ".svg");
        assertThat(Sources.findings(templates, file -> banned(seen(Sources.text(file)))))
                .isEmpty();
    }

    @Test
    void messagesUseTheShopsWords() {
        List<Path> messages = Sources.files("src/main/resources", ".properties");
        assertThat(Sources.findings(messages, file -> banned(Sources.text(file).replaceAll("(?m)^[^=]*=", ""))))
                .isEmpty();
    }

    @Test
    void sentencesInTheCodeUseTheShopsWords() {
        List<Path> code = Sources.files("src/main/java", ".java");
        assertThat(Sources.findings(
                        code,
                        file -> Sources.sentences(file).stream()
                                .flatMap(sentence -> banned(sentence).stream().map(found -> found + " in: " + sentence))
                                .toList()))
                .isEmpty();
    }

    @Test
    void scriptsSayTheShopsWords() {
        List<Path> scripts = Sources.files("src/main/resources/static", ".js");
        assertThat(Sources.findings(
                        scripts,
                        file -> Sources.sentences(file).stream()
                                .flatMap(sentence -> banned(sentence).stream())
                                .toList()))
                .isEmpty();
    }

    @Test
    void publicNamesUseTheShopsWords() {
        List<String> names = new ArrayList<>();
        for (JavaClass type : new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests())
                .importPackages("org.trammel")) {
            if (!type.getModifiers().contains(JavaModifier.PUBLIC)) {
                continue;
            }
            names.add(type.getSimpleName());
            type.getMethods().stream()
                    .filter(method -> method.getModifiers().contains(JavaModifier.PUBLIC))
                    .filter(method -> !inherited(method))
                    .forEach(method -> names.add(type.getSimpleName() + "." + method.getName()));
        }
        assertThat(names)
                .isNotEmpty()
                .noneMatch(name -> words(name).anyMatch(BANNED_NAMES::contains))
                .noneMatch(name -> name.matches(".*(Util|Utils|Manager|Helper|Impl)(\\..*)?"))
                .noneMatch(name -> name.matches(".*\\.setStat(us|e)"));
    }

    @Test
    void aSlipIsFound() {
        assertThat(banned("The oven run was accepted.")).hasSize(1);
        assertThat(banned("Well done!")).hasSize(1);
        assertThat(banned(seen("<p title=\"Please wait\" th:if=\"${!held}\">The keyboard</p>")))
                .hasSize(1);
        assertThat(banned("kept on the tablet, tokens and discards")).isEmpty();
    }

    private static List<String> banned(String text) {
        String judged = text;
        for (String meant : MEANT) {
            judged = judged.replace(meant, "");
        }
        return Sources.matches(BANNED, judged);
    }

    /** What a reader of the page sees or hears: text between tags, and attributes that are read out. */
    private static String seen(String template) {
        String markup = template.replaceAll("(?s)<!--.*?-->", "").replaceAll("\\$\\{[^}]*}", "");
        StringBuilder seen = new StringBuilder(markup.replaceAll("(?s)<(?:[^>\"']|\"[^\"]*\"|'[^']*')*>", "\n"));
        Pattern.compile("(?:title|alt|aria-label|placeholder|aria-description|label|hint)=\"([^\"]*)\"")
                .matcher(markup)
                .results()
                .forEach(attribute -> seen.append('\n').append(attribute.group(1)));
        // Texts handed to fragments are literals inside expressions.
        Pattern.compile("th:[a-z:-]+=\"([^\"]*)\"")
                .matcher(template)
                .results()
                .forEach(expression -> Pattern.compile("'([^']*)'")
                        .matcher(expression.group(1))
                        .results()
                        .forEach(literal -> seen.append('\n').append(literal.group(1))));
        return seen.toString();
    }

    private static boolean inherited(JavaMethod method) {
        List<String> parameters =
                method.getRawParameterTypes().stream().map(JavaClass::getName).toList();
        return Stream.concat(
                        method.getOwner().getAllRawSuperclasses().stream(),
                        method.getOwner().getAllRawInterfaces().stream())
                .anyMatch(type -> type.getMethods().stream()
                        .anyMatch(above -> above.getName().equals(method.getName())
                                && above.getRawParameterTypes().stream()
                                        .map(JavaClass::getName)
                                        .toList()
                                        .equals(parameters)));
    }

    private static Stream<String> words(String name) {
        return Stream.of(name.split("(?<=[a-z0-9])(?=[A-Z])|[._$]")).map(word -> word.toLowerCase(Locale.ROOT));
    }
}
