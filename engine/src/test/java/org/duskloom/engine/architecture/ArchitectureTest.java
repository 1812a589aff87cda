package org.duskloom.engine.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the engine's code may use, and what it may not. */
class ArchitectureTest {
    /** Each package may use only those before it. */
    static final List<String> ORDER = List.of(
            "text",
            "problem",
            "digest",
            "document",
            "random",
            "css",
            "font",
            "time",
            "color",
            "geometry",
            "map",
            "group",
            "wire",
            "display.svg",
            "display",
            "find",
            "locate",
            "survey",
            "survey.fit",
            "survey.text",
            "sound",
            "sound.music",
            "timeline",
            "effect",
            "show",
            "frame",
            "plan",
            "render",
            "file",
            "png",
            "format",
            "schema",
            "shard",
            "compare",
            "packet",
            "live",
            "label",
            "preview",
            "film",
            "locate.picture",
            "sheet",
            "proof",
            "meter",
            "meter.light",
            "report",
            "report.page");

    private static final JavaClasses ENGINE = new ClassFileImporter().importPath(Path.of("target", "classes"));

    @Test
    void seesTheWholeEngine() {
        assertThat(ENGINE).extracting(type -> type.getSimpleName()).contains("Problems", "Plan", "FramePainter");
    }

    @Test
    void packagesUseOnlyThoseBeforeThem() {
        PackageOrder.of("org.duskloom.engine", ORDER).check(ENGINE);
    }

    @Test
    void noPackageIsCalledUtil() {
        Rules.noUtilPackage().check(ENGINE);
    }

    @Test
    void librariesStayInTheirPlace() {
        Rules.confined("tools.jackson", "org.duskloom.engine.document.JsonReader")
                .check(ENGINE);
        Rules.confined("org.apache.commons.csv", "org.duskloom.engine.document.CsvReader")
                .check(ENGINE);
        Rules.confined("org.joml", "org.duskloom.engine.display..", "org.duskloom.engine.survey.fit..")
                .check(ENGINE);
        Rules.confined("org.hipparchus", "org.duskloom.engine.sound.music.Fourier")
                .check(ENGINE);
        Rules.noBuffersNear("org.joml").check(ENGINE);
    }

    @Test
    void mathsIsTheSameOnEveryJdk() {
        Rules.exactMathOnly().check(ENGINE);
    }

    @Test
    void nothingIsLeftToChance() {
        Rules.noRandomGenerators().check(ENGINE);
    }

    @Test
    void nothingDependsOnTheCountry() {
        Rules.noDefaultLocale().check(ENGINE);
    }

    @Test
    void nothingIsPrinted() {
        Rules.noConsole().check(ENGINE);
    }
}
