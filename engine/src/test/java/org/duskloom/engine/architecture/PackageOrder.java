package org.duskloom.engine.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;

/** Packages in a row, of which each may use only itself and those before it. */
final class PackageOrder extends ArchCondition<JavaClass> {
    private final String base;
    private final List<String> order;

    private PackageOrder(String base, List<String> order) {
        super("lie in one of the packages " + order + " of " + base + " and use only those before");
        this.base = base + ".";
        this.order = order;
    }

    static ArchRule of(String base, List<String> order) {
        return classes().that().resideInAPackage(base + "..").should(new PackageOrder(base, order));
    }

    @Override
    public void check(JavaClass type, ConditionEvents events) {
        int place = order.indexOf(name(type));
        if (place < 0) {
            events.add(SimpleConditionEvent.violated(type, type.getName() + " lies in a package of no known place"));
        }
        for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
            JavaClass target = dependency.getTargetClass().getBaseComponentType();
            if (target.getPackageName().startsWith(base) && order.indexOf(name(target)) > place) {
                events.add(SimpleConditionEvent.violated(dependency, dependency.getDescription()));
            }
        }
    }

    /** The package's name below the base, without packages inside unless these have a place of their own. */
    private String name(JavaClass type) {
        String below =
                type.getPackageName().startsWith(base) ? type.getPackageName().substring(base.length()) : "";
        int dot = below.indexOf('.');
        return dot < 0 || order.contains(below) ? below : below.substring(0, dot);
    }
}
