package org.duskloom.engine.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.conditions.ArchConditions;
import java.nio.Buffer;
import java.util.Arrays;
import java.util.Formatter;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.random.RandomGenerator;

/** The rules that keep frames pure, texts the same everywhere and libraries in their place. */
final class Rules {
    /** Methods of {@link Math} that give the same bits on every JDK. */
    private static final Set<String> EXACT = Set.of(
            "abs",
            "absExact",
            "addExact",
            "ceil",
            "copySign",
            "decrementExact",
            "floor",
            "floorDiv",
            "floorMod",
            "incrementExact",
            "max",
            "min",
            "multiplyExact",
            "multiplyFull",
            "multiplyHigh",
            "negateExact",
            "nextDown",
            "nextUp",
            "rint",
            "round",
            "signum",
            "sqrt",
            "subtractExact",
            "toIntExact");

    private static final Set<String> FORMATTING = Set.of("format", "printf", "formatted");
    private static final Set<String> CASING = Set.of("toLowerCase", "toUpperCase");

    private Rules() {}

    /** Sines, powers and the like come from {@link StrictMath}. */
    static ArchRule exactMathOnly() {
        return noClasses()
                .should(access(
                        "Math other than its exact methods",
                        access -> access.getTargetOwner().isEquivalentTo(Math.class)
                                && !EXACT.contains(access.getTarget().getName())))
                .because("other methods of Math differ in their last bits between JDKs");
    }

    /** Random choices come from stable hashes, but for the classes named. */
    static ArchRule noRandomGenerators(String... except) {
        ArchRule rule = noClasses()
                .that(areNone(except))
                .should()
                .dependOnClassesThat(describe(
                        "are generators of random numbers", type -> type.isAssignableTo(RandomGenerator.class)));
        return rule.because("a frame depends on the input files and its number alone");
    }

    /** Texts are made the same way in every country. */
    static ArchRule noDefaultLocale() {
        return noClasses()
                .should(access("the default locale", access -> isCaseless(access) || isUnlocalisedFormat(access)))
                .because("frames and messages must not depend on where the program runs");
    }

    /** The engine says nothing by itself. */
    static ArchRule noConsole() {
        return noClasses()
                .should(access(
                        "the console",
                        access -> access.getTargetOwner().isEquivalentTo(System.class)
                                        && Set.of("out", "err", "in")
                                                .contains(access.getTarget().getName())
                                || access.getTarget().getName().equals("printStackTrace")))
                .because("problems go into Problems, frames into sinks");
    }

    /** A library is known to a few named classes only, and to what is nested in them. */
    static ArchRule confined(String libraryPackage, String... classNames) {
        return noClasses()
                .that(areNone(classNames))
                .should()
                .dependOnClassesThat()
                .resideInAPackage(libraryPackage + "..")
                .allowEmptyShould(true);
    }

    /** A library that breaks the JVM when it is given a buffer never meets one. */
    static ArchRule noBuffersNear(String libraryPackage) {
        return noClasses()
                .that(describe(
                        "use " + libraryPackage,
                        type -> type.getDirectDependenciesFromSelf().stream()
                                .anyMatch(dependency ->
                                        resideInAPackage(libraryPackage + "..").test(dependency.getTargetClass()))))
                .should()
                .dependOnClassesThat()
                .areAssignableTo(Buffer.class)
                .allowEmptyShould(true);
    }

    /** A package has a purpose; {@code util} is none. */
    static ArchRule noUtilPackage() {
        return classes()
                .should()
                .resideOutsideOfPackages("..util", "..util..", "..utils..", "..helper..", "..common..", "..misc..");
    }

    /** Neither one of the classes nor nested in one, nor in one of the packages, which end in two dots. */
    private static DescribedPredicate<JavaClass> areNone(String... names) {
        return describe(
                "are none of " + List.of(names),
                type -> Arrays.stream(names)
                        .noneMatch(name -> type.getName().equals(name)
                                || type.getName().startsWith(name + "$")
                                || name.endsWith("..") && resideInAPackage(name).test(type)));
    }

    private static boolean isCaseless(JavaAccess<?> access) {
        return access.getTargetOwner().isEquivalentTo(String.class)
                && CASING.contains(access.getTarget().getName())
                && !takesLocale(access);
    }

    private static boolean isUnlocalisedFormat(JavaAccess<?> access) {
        boolean formatter = access.getTargetOwner().isEquivalentTo(Formatter.class)
                && access.getTarget().getName().equals("<init>");
        return (formatter || FORMATTING.contains(access.getTarget().getName()))
                && access.getTargetOwner().getPackageName().startsWith("java.")
                && !access.getTargetOwner().getPackageName().startsWith("java.time")
                && !takesLocale(access);
    }

    private static boolean takesLocale(JavaAccess<?> access) {
        return access.getTarget().getFullName().contains(Locale.class.getName());
    }

    private static ArchCondition<JavaClass> access(String what, Predicate<JavaAccess<?>> predicate) {
        DescribedPredicate<JavaAccess<?>> described = DescribedPredicate.describe(what, predicate);
        return ArchConditions.accessTargetWhere(described);
    }
}
