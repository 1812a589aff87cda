package org.duskloom.cli;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where the parts of the JDK stay that know pictures: in one class of each module that reads photos. */
class ArchitectureTest {
    private static final JavaClasses ALL = new ClassFileImporter()
            .importPaths(Stream.of("engine", "effects", "cli")
                    .map(module -> Path.of("..", module, "target", "classes"))
                    .toList());

    private static ArchRule confined(String jdkPackage, Set<String> names) {
        return noClasses()
                .that(describe("are none of " + names, type -> !names.contains(outermost(type))))
                .should()
                .dependOnClassesThat()
                .resideInAPackage(jdkPackage + "..");
    }

    private static String outermost(JavaClass type) {
        return type.getEnclosingClass().map(ArchitectureTest::outermost).orElse(type.getFullName());
    }

    @ParameterizedTest
    @ValueSource(strings = {"javax.imageio", "java.awt"})
    void picturesAreReadInOneClassOfAModule(String jdkPackage) {
        confined(jdkPackage, Set.of("org.duskloom.cli.PhotoFile", "org.duskloom.effects.image.JpegFile"))
                .check(ALL);
        assertThat(confined(jdkPackage, Set.of("org.duskloom.cli.PhotoFile"))
                        .evaluate(ALL)
                        .hasViolation())
                .isTrue();
    }
}
