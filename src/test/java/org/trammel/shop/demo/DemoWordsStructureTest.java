package org.trammel.shop.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The invented workshop lives in its own folders only: nothing of it shows in a shop that never loaded it. */
class DemoWordsStructureTest {

    private static final Pattern CODE = Pattern.compile("\"([A-Z]{2,3}-[A-Z0-9-]*\\d[A-Z0-9-]*)\"");

    @Test
    void nothingOutsideTheDemoNamesItsCrewItsFramesItsGaugesOrItsLots() {
        Set<String> words = words();
        assertThat(words).hasSizeGreaterThan(60).contains("Wendelin", "O-101", "Aldervik");
        List<String> found = new ArrayList<>();
        for (Path file : outside()) {
            String text = read(file);
            words.stream()
                    .filter(text::contains)
                    .filter(word -> Pattern.compile("\\b" + Pattern.quote(word) + "\\b")
                            .matcher(text)
                            .find())
                    .forEach(word -> found.add(file + ": " + word));
        }
        assertThat(found).isEmpty();
    }

    /** What only the demo may say; codes of gauges and lots are those its own sources write. */
    static Set<String> words() {
        Set<String> words = new LinkedHashSet<>(List.of("Aldervik", "AV26"));
        for (DemoCast.Member member : DemoCast.ALL) {
            words.addAll(List.of(member.name().split(" ")));
        }
        DemoOrders.read().forEach(order -> words.add(order.order()));
        for (String seeder : List.of("DemoGauges", "DemoLots")) {
            Matcher code = CODE.matcher(read(Path.of("src/main/java/org/trammel/shop/demo/" + seeder + ".java")));
            while (code.find()) {
                words.add(code.group(1));
            }
        }
        return words;
    }

    private static List<Path> outside() {
        try (Stream<Path> all = Files.walk(Path.of("src/main"))) {
            return all.filter(Files::isRegularFile)
                    .filter(file -> !file.toString().contains("/demo/"))
                    .filter(file -> file.toString().matches(".*\\.(html|java|js|css|yaml|properties|svg|json)"))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
