package org.trammel;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What a reader should never meet in the project's files. */
class SourcesStructureTest {

    private static final int LINES_AT_MOST = 400;

    /** Written in two parts, so that this file does not find itself. */
    private static final Pattern LEFT_UNDONE = Pattern.compile("\\bTO" + "DO\\b|\\bFIX" + "ME\\b|\\bX" + "XX\\b|@Dis"
            + "abled\\b|assume" + "True|assume" + "False|Thread\\.sl" + "eep|disabledWithout"
            + "Docker|System\\.out\\.pr"
            + "int|printStack" + "Trace");

    private static final Set<String> TOP_LEVEL = Set.of("pom.xml", "README.md", "DEVELOPERS.md", "src", "db", "ops");

    @Test
    void nothingIsLeftUndoneSwitchedOffOrWaitedFor() {
        assertThat(Sources.findings(
                        Sources.files("src", ".java", ".html", ".js", ".css", ".yaml", ".properties"),
                        file -> Sources.matches(LEFT_UNDONE, Sources.text(file))))
                .isEmpty();
    }

    @Test
    void filesStaySmall() {
        List<Path> files = Sources.files("src", ".java", ".html", ".js", ".css");
        assertThat(files)
                .isNotEmpty()
                .allSatisfy(file -> assertThat(Sources.text(file).lines().count())
                        .as("lines of " + file)
                        .isLessThanOrEqualTo(LINES_AT_MOST));
    }

    @Test
    void theTopLevelIsShort() throws java.io.IOException {
        try (Stream<Path> top = Files.list(Path.of("."))) {
            assertThat(top.map(path -> path.getFileName().toString())
                            .filter(name -> !name.startsWith(".") && !name.equals("target")))
                    .isSubsetOf(TOP_LEVEL);
        }
    }
}
