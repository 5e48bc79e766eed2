package org.trammel;

import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.trammel.shop.TrammelApplication;

/** There is one clock, so that the demo day and the tests can set it. */
class ClockStructureTest {

    private static final ArchRule RULE = noClasses()
            .that()
            .doNotBelongToAnyOf(TrammelApplication.class)
            .should()
            .accessTargetWhere(target(new AsksTheMachine()))
            .because("whoever needs the time asks the clock bean");

    private static final JavaClasses OURS = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.trammel");

    private static final Pattern CLOCK_OF_THE_DATABASE =
            Pattern.compile("\"[^\"\\n]*\\b(current_timestamp|current_date|localtimestamp|now\\(\\))[^\"\\n]*\"");

    @Test
    void nobodyAsksTheMachineForTheTime() {
        RULE.check(OURS);
    }

    @Test
    void aSlipIsFound() {
        JavaClasses slips = new ClassFileImporter().importClasses(Slip.class);
        Assertions.assertThatThrownBy(() -> RULE.check(slips))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("calls()")
                .hasMessageContaining("refers()")
                .hasMessageContaining("dates()");
    }

    @Test
    void nobodyAsksTheDatabaseForTheTime() {
        List<Path> code = Sources.files("src/main/java", ".java");
        Assertions.assertThat(
                        Sources.findings(code, file -> Sources.matches(CLOCK_OF_THE_DATABASE, Sources.text(file))))
                .isEmpty();
    }

    /** What nobody may write. */
    private static final class Slip {

        Instant calls() {
            return Instant.now();
        }

        Supplier<LocalDate> refers() {
            return LocalDate::now;
        }

        java.util.Date dates() {
            return new java.util.Date();
        }
    }

    private static final class AsksTheMachine extends DescribedPredicate<AccessTarget> {

        AsksTheMachine() {
            super("something that asks the machine for the time");
        }

        @Override
        public boolean test(AccessTarget accessed) {
            if (!(accessed instanceof CodeUnitAccessTarget target)) {
                return false;
            }
            String owner = target.getOwner().getName();
            boolean given = !target.getRawParameterTypes().isEmpty();
            return switch (target.getName()) {
                case "now" ->
                    owner.startsWith("java.time.")
                            && target.getRawParameterTypes().stream()
                                    .noneMatch(type -> type.isEquivalentTo(Clock.class));
                case "systemUTC", "systemDefaultZone", "system" -> owner.equals(Clock.class.getName());
                case "currentTimeMillis" -> owner.equals(System.class.getName());
                case "<init>" -> owner.equals(java.util.Date.class.getName()) && !given;
                default -> false;
            };
        }
    }
}
