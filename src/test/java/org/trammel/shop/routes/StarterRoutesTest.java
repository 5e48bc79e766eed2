package org.trammel.shop.routes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class StarterRoutesTest {

    private static final List<RouteFile> ALL = StarterRoutes.all();

    private static final RouteCheck.Shop SHOP = new RouteCheck.Shop(
            Set.of("1", "2", "3", "4", "5", "6", "7", "8", "9"),
            Set.of("FEELER", "GO-NO-GO", "JIG-SCALE", "LEVEL", "OHM", "TAPE", "TIMER"));

    private static final Pattern NOT_OURS = Pattern.compile(
            "(?i)\\b(furnaces?|stoves?|dispositions?|boards?|cards?|tickets?|chips?|tasks?|backlogs?|workflows?|accepted"
                    + "|rejected|please|safe|certified|compliant)\\b|\\bOK\\b|!");

    static Stream<RouteFile> starters() {
        return ALL.stream();
    }

    @ParameterizedTest
    @MethodSource("starters")
    void everyStarterRouteCanBeReleasedAsItIs(RouteFile file) {
        RouteSheet sheet = file.sheet();
        List<ChildSheet> children = file.children().stream()
                .map(child -> new ChildSheet(child.part(), child.name(), sheet))
                .toList();
        RouteSheet whole = new RouteSheet(
                0,
                sheet.code(),
                sheet.name(),
                "A",
                sheet.metal(),
                sheet.kind(),
                sheet.operations(),
                sheet.clocks(),
                children);
        assertThat(RouteCheck.of(whole, SHOP)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("starters")
    void everyOperationHasStepsThatFitTheStationScreen(RouteFile file) {
        assertThat(file.sheet().operations()).allSatisfy(operation -> {
            assertThat(operation.steps()).as(operation.code()).isNotEmpty();
            assertThat(operation.steps()).allSatisfy(step -> {
                assertThat(step.text()).hasSizeLessThanOrEqualTo(60);
                assertThat(step.instruction()).hasSizeLessThanOrEqualTo(80);
            });
        });
    }

    @ParameterizedTest
    @MethodSource("starters")
    void everyTextUsesTheShopsWords(RouteFile file) {
        RouteSheet sheet = file.sheet();
        Stream<String> texts = sheet.operations().stream()
                .flatMap(o -> Stream.concat(
                        Stream.of(o.name(), o.caution()),
                        Stream.concat(
                                o.steps().stream().flatMap(s -> Stream.of(s.text(), s.instruction())),
                                o.characteristics().stream().map(CharacteristicSheet::name))));
        assertThat(texts).noneMatch(text -> NOT_OURS.matcher(text).find());
    }
}
