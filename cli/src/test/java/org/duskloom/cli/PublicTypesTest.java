package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What a package shows to others is what others use: a public type of the engine that nobody outside of its package
 * names, tests included, could as well be hidden.
 */
class PublicTypesTest {
    private static final JavaClasses ALL = new ClassFileImporter()
            .importPaths(Stream.of("engine", "effects", "cli")
                    .flatMap(module ->
                            Stream.of("classes", "test-classes").map(kind -> Path.of("..", module, "target", kind)))
                    .toList());

    @Test
    void everyPublicTypeOfTheEngineIsUsedOutsideOfItsPackage() {
        List<String> idle = ALL.stream()
                .filter(PublicTypesTest::isShown)
                .filter(type -> !isUsedOutside(type) && !isPartOfWhatIsShown(type))
                .map(JavaClass::getSimpleName)
                .toList();
        assertThat(idle).isEmpty();
    }

    /** What the test rests on is seen: users in other packages, other modules and tests. */
    @Test
    void usersAreFound() {
        assertThat(isShown(type("engine.problem.Problems"))).isTrue();
        assertThat(isUsedOutside(type("engine.problem.Problems"))).isTrue();
        assertThat(isShown(type("engine.problem.NearestName"))).isTrue();
        assertThat(isShown(type("engine.color.OkLab"))).isFalse();
        assertThat(isUsedOutside(type("engine.color.OkLab"))).isFalse();
        assertThat(isPartOfWhatIsShown(type("engine.wire.Curve"))).isTrue();
        assertThat(isPartOfWhatIsShown(type("engine.color.OkLab"))).isFalse();
    }

    private static JavaClass type(String name) {
        return ALL.get("org.duskloom." + name);
    }

    /** A type of the program that is public, and stands in no type that is not, nor in one that makes it so. */
    private static boolean isShown(JavaClass type) {
        return type.getPackageName().startsWith("org.duskloom.engine")
                && !isOfTests(type)
                && !type.isAnonymousClass()
                && isPublic(type)
                && type.getEnclosingClass()
                        .map(outer -> isShown(outer) && !outer.isInterface())
                        .orElse(true);
    }

    private static boolean isPublic(JavaClass type) {
        return type.getModifiers().contains(JavaModifier.PUBLIC);
    }

    private static boolean isOfTests(JavaClass type) {
        return type.getSource().orElseThrow().getUri().getPath().contains("/test-classes/");
    }

    /** By what uses it or a type that stands in it. */
    private static boolean isUsedOutside(JavaClass type) {
        return ALL.stream()
                .filter(part -> part.equals(type) || part.getName().startsWith(type.getName() + "$"))
                .flatMap(part -> part.getDirectDependenciesToSelf().stream())
                .map(Dependency::getOriginClass)
                .anyMatch(user -> !user.getPackageName().equals(type.getPackageName()));
    }

    /** What public types take, give or are must be public too, though it may be that nobody names it. */
    private static boolean isPartOfWhatIsShown(JavaClass type) {
        return ALL.stream()
                .filter(other -> other.getPackageName().equals(type.getPackageName()) && isPublic(other))
                .anyMatch(other -> other.getRawInterfaces().contains(type)
                        || other.getCodeUnits().stream()
                                .filter(unit -> unit.getModifiers().contains(JavaModifier.PUBLIC))
                                .anyMatch(unit -> isInSignature(type, unit)));
    }

    private static boolean isInSignature(JavaClass type, JavaCodeUnit unit) {
        return Stream.concat(Stream.of(unit.getReturnType()), unit.getParameterTypes().stream())
                .anyMatch(named -> named.getAllInvolvedRawTypes().contains(type));
    }
}
