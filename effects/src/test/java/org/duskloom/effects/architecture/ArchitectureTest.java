package org.duskloom.effects.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.duskloom.engine.effect.EffectRegistry;
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

    /** Every rule finds what it is meant to find. */
    @ParameterizedTest
    @MethodSource("rules")
    void everyRuleCanFail(ArchRule rule) {
        JavaClasses bad = new ClassFileImporter().importClasses(org.duskloom.effects.architecture.util.Habits.class);
        assertThat(rule.evaluate(bad).hasViolation()).isTrue();
    }
}
