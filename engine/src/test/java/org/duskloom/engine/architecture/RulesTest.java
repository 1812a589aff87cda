package org.duskloom.engine.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.duskloom.engine.architecture.bad.Habits;
import org.duskloom.engine.architecture.bad.render.Late;
import org.duskloom.engine.architecture.bad.time.Early;
import org.duskloom.engine.architecture.bad.util.Things;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every rule finds what it is meant to find. */
class RulesTest {
    private static final String BAD = "org.duskloom.engine.architecture.bad";
    private static final Pattern HABIT = Pattern.compile("Habits\\.((?:bad|good)\\w+)\\(");

    static Stream<Arguments> habits() {
        return Stream.of(
                Arguments.of(Rules.exactMathOnly(), Set.of("badSine", "badCubeRoot", "badChance")),
                Arguments.of(Rules.noRandomGenerators(), Set.of("badGenerator", "badThreadGenerator")),
                Arguments.of(Rules.noDefaultLocale(), Set.of("badCase", "badCases", "badFormat", "badFormatted")),
                Arguments.of(Rules.noConsole(), Set.of("badPrint", "badTrace")),
                Arguments.of(Rules.confined("tools.jackson", BAD + ".Tidy"), Set.of("badJson")),
                Arguments.of(Rules.confined("org.apache.commons.csv"), Set.of("badCsv")),
                Arguments.of(Rules.noBuffersNear("org.apache.commons.csv"), Set.of("badBuffer")),
                Arguments.of(Rules.noBuffersNear("org.joml"), Set.of()));
    }

    @ParameterizedTest
    @MethodSource("habits")
    void findsBadHabitsOnly(ArchRule rule, Set<String> expected) {
        assertThat(broken(rule, Habits.class)).isEqualTo(expected);
    }

    @Test
    void allowsALibraryWhereItBelongs() {
        assertThat(broken(Rules.confined("tools.jackson", BAD + ".Habits"), Habits.class))
                .isEmpty();
        assertThat(broken(Rules.confined("tools.jackson", BAD + ".."), Habits.class))
                .isEmpty();
    }

    @Test
    void findsAPackageThatUsesALaterOne() {
        List<String> early = details(PackageOrder.of(BAD, List.of("time", "render")), Early.class, Late.class);
        assertThat(early).isNotEmpty().allSatisfy(line -> assertThat(line).contains("Early", "Late"));
        assertThat(details(PackageOrder.of(BAD, List.of("render", "time")), Early.class, Late.class))
                .isEmpty();
        assertThat(details(PackageOrder.of(BAD, List.of("render")), Early.class, Late.class))
                .contains(Early.class.getName() + " lies in a package of no known place");
    }

    @Test
    void findsAPackageWithoutAPurpose() {
        assertThat(details(Rules.noUtilPackage(), Things.class, Late.class))
                .singleElement()
                .asString()
                .contains("Things");
    }

    private static Set<String> broken(ArchRule rule, Class<?>... types) {
        Set<String> methods = new TreeSet<>();
        for (String line : details(rule, types)) {
            HABIT.matcher(line)
                    .results()
                    .map(MatchResult::group)
                    .forEach(method -> methods.add(method.substring(method.indexOf('.') + 1, method.length() - 1)));
        }
        return methods;
    }

    private static List<String> details(ArchRule rule, Class<?>... types) {
        JavaClasses classes = new ClassFileImporter().importClasses(types);
        return rule.evaluate(classes).getFailureReport().getDetails();
    }
}
