package org.duskloom.effects.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import org.duskloom.engine.effect.EffectRegistry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the effects' code may use, and what it may not. */
class ArchitectureTest {
    private static final List<String> KNOWN =
            List.of("effect", "color", "font", "geometry", "random", "time", "problem", "text");
    private static final JavaClasses EFFECTS = new ClassFileImporter().importPath(Path.of("target", "classes"));

    static Stream<ArchRule> rules() {
        return Stream.of(
                Rules.exactMathOnly(), Rules.noChanceAndNoClock(), Rules.useOfTheEngine(KNOWN), Rules.noUtilPackage());
    }

    @ParameterizedTest
    @MethodSource("rules")
    void everyEffectKeepsTheRules(ArchRule rule) {
        EffectRegistry.installed()
                .effects()
                .forEach(
                        effect -> assertThat(EFFECTS.contain(effect.getClass())).isTrue());
        rule.check(EFFECTS);
    }

    /** An effect can be read, and taken out, without the others; what they share knows none of them. */
    @Test
    void packagesDoNotGoRoundInCircles() {
        noCycles("org.duskloom.effects.(**)").check(EFFECTS);
        JavaClasses listsAndStreams = new ClassFileImporter().importClasses(List.class, Collection.class, Stream.class);
        assertThat(noCycles("java.(**)").evaluate(listsAndStreams).hasViolation())
                .isTrue();
    }

    private static ArchRule noCycles(String packages) {
        return SlicesRuleDefinition.slices().matching(packages).should().beFreeOfCycles();
    }

    /** Every rule finds what it is meant to find. */
    @ParameterizedTest
    @MethodSource("rules")
    void everyRuleCanFail(ArchRule rule) {
        JavaClasses bad = new ClassFileImporter().importClasses(org.duskloom.effects.architecture.util.Habits.class);
        assertThat(rule.evaluate(bad).hasViolation()).isTrue();
    }
}
