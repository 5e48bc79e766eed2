package org.trammel.shop.badinput;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.annotation.Annotation;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Whatever people do wrong in a shop, in a table: each line names the test that shows it, or why it cannot happen here. */
class BadInputTest {

    private static final int LINES = 224;

    private static final Set<Integer> SEEN = new TreeSet<>();

    @ParameterizedTest(name = "{0} {1}")
    @CsvFileSource(resources = "/bad-input.csv", numLinesToSkip = 1)
    void everyLineNamesATestThatIsThereOrAReason(int number, String row, @Nullable String test, @Nullable String reason)
            throws Exception {
        assertThat(SEEN.add(number)).as("line " + number + " stands there once").isTrue();
        assertThat(row).isNotBlank();
        if (test == null) {
            assertThat(reason).as("line " + number).isNotNull().hasSizeGreaterThan(25);
            return;
        }
        int at = test.indexOf('#');
        Class<?> of = Class.forName("org.trammel." + test.substring(0, at));
        String method = test.substring(at + 1);
        assertThat(Arrays.stream(of.getDeclaredMethods())
                        .filter(m -> m.getName().equals(method))
                        .flatMap(m -> Arrays.stream(m.getAnnotations()))
                        .map(Annotation::annotationType))
                .as(test)
                .containsAnyOf(Test.class, ParameterizedTest.class);
    }

    @AfterAll
    static void noLineIsLeftOut() {
        assertThat(SEEN)
                .isEqualTo(IntStream.rangeClosed(1, LINES).boxed().collect(Collectors.toCollection(TreeSet::new)));
    }
}
