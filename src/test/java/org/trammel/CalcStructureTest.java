package org.trammel;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

class CalcStructureTest {

    private static final JavaClasses CALC = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.trammel.calc");

    @Test
    void computationIsPure() {
        classes()
                .that()
                .resideInAPackage("org.trammel.calc..")
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage("org.trammel.calc..", "java..", "org.jspecify..", "org.hipparchus..")
                .allowEmptyShould(true)
                .check(CALC);
    }

    @Test
    void computationReadsNoFileNetworkOrDatabase() {
        classes()
                .that()
                .resideInAPackage("org.trammel.calc..")
                .should()
                .onlyDependOnClassesThat()
                .resideOutsideOfPackages("java.net..", "java.sql..", "java.nio.file..", "java.nio.channels..")
                .allowEmptyShould(true)
                .check(CALC);
    }
}
