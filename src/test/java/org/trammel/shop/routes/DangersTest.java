package org.trammel.shop.routes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What could hurt somebody is asked for or warned of at the very operation, in every starter route that has it. */
class DangersTest {

    @ParameterizedTest(name = "{1} of {0}: {2}")
    @CsvSource({
        "AL6061, 110, vents open and clear",
        "AL7005, 110, vents open and clear",
        "AL6061, 110, wet",
        "AL7005, 110, wet",
        "TI, 140, titanium dust and sparks burn",
        "TI, 050, protective gear on before any acid",
        "AL6061, 150, powder dust",
        "ST-FILLET, 070, cadmium-free",
        "AL6061, 190, not on public roads",
        "AL6061, 005, do not heat it to check",
        "AL6061, 150.2, hot metal"
    })
    void whatCouldHurtSomebodyIsSaidAtItsOperation(String of, String code, String said) {
        List<List<String>> routes = StarterRoutes.all().stream()
                .map(RouteFile::sheet)
                .filter(sheet -> sheet.metal().equals(of) || sheet.code().equals(of))
                .map(sheet -> sheet.operations().stream()
                        .filter(o -> o.code().startsWith(code))
                        .map(DangersTest::text)
                        .toList())
                .filter(texts -> !texts.isEmpty())
                .toList();
        assertThat(routes).isNotEmpty().allSatisfy(texts -> assertThat(texts).anyMatch(text -> text.contains(said)));
    }

    private static String text(OperationSheet o) {
        return Stream.concat(
                        Stream.of(o.caution()), o.steps().stream().flatMap(s -> Stream.of(s.text(), s.instruction())))
                .collect(Collectors.joining(" "))
                .toLowerCase(Locale.ROOT);
    }
}
