package org.duskloom.engine.architecture;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LineMap;
import com.sun.source.tree.MethodTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreeScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** How many lines stand between the brackets of each method, as the compiler sees it. */
final class MethodLengths {
    private MethodLengths() {}

    /** By file, line and name, such as {@code Plan.java:30 frames}; constructors too. */
    static Map<String, Integer> of(List<Path> files) throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        Map<String, Integer> lengths = new TreeMap<>();
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, StandardCharsets.UTF_8)) {
            JavacTask task = (JavacTask) compiler.getTask(
                    null, manager, fault -> {}, null, null, manager.getJavaFileObjectsFromPaths(files));
            SourcePositions positions = Trees.instance(task).getSourcePositions();
            for (CompilationUnitTree unit : task.parse()) {
                measure(unit, positions, lengths);
            }
        }
        return lengths;
    }

    private static void measure(CompilationUnitTree unit, SourcePositions positions, Map<String, Integer> lengths) {
        LineMap lines = unit.getLineMap();
        String file = Path.of(unit.getSourceFile().getName()).getFileName().toString();
        new TreeScanner<Void, Void>() {
            @Override
            public Void visitMethod(MethodTree method, Void unused) {
                if (method.getBody() != null) {
                    long first = lines.getLineNumber(positions.getStartPosition(unit, method.getBody()));
                    long last = lines.getLineNumber(positions.getEndPosition(unit, method.getBody()));
                    int between = (int) Math.max(0, last - first - 1);
                    lengths.put(file + ":" + first + " " + method.getName(), between);
                }
                return super.visitMethod(method, unused);
            }
        }.scan(unit, null);
    }
}
