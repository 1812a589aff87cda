package org.duskloom.effects.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.conditions.ArchConditions.accessTargetWhere;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.Set;
import java.util.random.RandomGenerator;

/** The rules that keep effects pure, and unaware of how shows are read and frames are made. */
final class Rules {
    /** Methods of {@link Math} that give the same bits on every JDK. */
    private static final Set<String> EXACT = Set.of(
            "abs",
            "addExact",
            "ceil",
            "copySign",
            "floor",
            "floorDiv",
            "floorMod",
            "max",
            "min",
            "multiplyExact",
            "negateExact",
            "nextDown",
            "nextUp",
            "rint",
            "round",
            "signum",
            "sqrt",
            "subtractExact",
            "toIntExact");

    private Rules() {}

    /** Sines, powers and the like come from {@link StrictMath}. */
    static ArchRule exactMathOnly() {
        DescribedPredicate<JavaAccess<?>> inexact = describe(
                "Math other than its exact methods",
                access -> access.getTargetOwner().isEquivalentTo(Math.class)
                        && !EXACT.contains(access.getTarget().getName()));
        return noClasses()
                .should(accessTargetWhere(inexact))
                .because("other methods of Math differ in their last bits between JDKs");
    }

    /** Random choices come from stable hashes, instants from the cue. */
    static ArchRule noChanceAndNoClock() {
        DescribedPredicate<JavaAccess<?>> clock = describe(
                "the clock",
                access -> access.getTargetOwner().isEquivalentTo(System.class)
                        && Set.of("currentTimeMillis", "nanoTime")
                                .contains(access.getTarget().getName()));
        return noClasses()
                .should()
                .dependOnClassesThat()
                .areAssignableTo(RandomGenerator.class)
                .orShould(accessTargetWhere(clock))
                .because("what is painted depends on the kernel and the time alone");
    }

    /** What an effect may know of the engine. */
    static ArchRule useOfTheEngine(List<String> enginePackages) {
        return noClasses()
                .should()
                .dependOnClassesThat(describe(
                        "lie in other packages of the engine than " + enginePackages,
                        type -> type.getPackageName().startsWith("org.duskloom.engine")
                                && !enginePackages.contains(
                                        type.getPackageName().replace("org.duskloom.engine.", ""))));
    }

    /** A package has a purpose; {@code util} is none. */
    static ArchRule noUtilPackage() {
        return classes().should().resideOutsideOfPackages("..util..", "..utils..", "..helper..", "..common..");
    }
}
