package org.trammel;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.modulith.core.ApplicationModules;
import org.trammel.shop.TrammelApplication;

class ModulesStructureTest {

    @Test
    void modulesUseOnlyWhatTheyDeclareAndNeverInACircle() {
        ApplicationModules.of(TrammelApplication.class).verify();
    }

    @Test
    void everyPackageSaysWhatItIsForAndIsNullMarked() {
        List<Path> folders = Sources.files("src/main/java/org/trammel", ".java").stream()
                .map(Path::getParent)
                .distinct()
                .filter(folder -> !folder.endsWith("org/trammel/shop"))
                .toList();
        assertThat(folders).isNotEmpty().allSatisfy(folder -> {
            Path info = folder.resolve("package-info.java");
            assertThat(Files.exists(info)).as(info + " exists").isTrue();
            assertThat(Sources.text(info)).contains("NullMarked").startsWith("/**");
        });
    }

    @Test
    void modulesAreFlat() {
        assertThat(Sources.files("src/main/java/org/trammel/shop", ".java"))
                .allSatisfy(file -> assertThat(
                                Path.of("src/main/java/org/trammel/shop").relativize(file))
                        .as(file + " lies in its module, in no folder below")
                        .satisfies(inside -> assertThat(inside.getNameCount()).isLessThanOrEqualTo(2)));
    }
}
