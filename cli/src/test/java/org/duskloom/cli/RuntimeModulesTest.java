package org.duskloom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The runtime that comes with the download has what the modules of the program require of the JDK. */
class RuntimeModulesTest {
    private static final Pattern REQUIRED = Pattern.compile("requires (?:transitive )?((?:java|jdk)\\.[\\w.]+);");
    private static final Pattern PUT_IN = Pattern.compile("<dist\\.modules>(.*?)</dist\\.modules>");

    /** JOML asks for jdk.unsupported too, at its start, though it then keeps away from it; its descriptor says so. */
    @Test
    void hasTheModulesThatOursRequire() throws IOException {
        Set<String> required = new TreeSet<>(Set.of("java.base", "jdk.unsupported"));
        for (String module : Set.of("engine", "effects", "cli")) {
            String descriptor = Files.readString(Project.file(module + "/src/main/java/module-info.java"));
            for (MatchResult found : REQUIRED.matcher(descriptor).results().toList()) {
                required.add(found.group(1));
            }
        }
        MatchResult putIn = PUT_IN.matcher(Files.readString(Project.file("cli/pom.xml")))
                .results()
                .findFirst()
                .orElseThrow();
        assertThat(required).contains("java.desktop", "java.xml", "jdk.httpserver");
        assertThat(Set.of(putIn.group(1).split(","))).isEqualTo(required);
    }
}
