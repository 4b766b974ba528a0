package org.plumbrow.house;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreePathScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/**
 * Counts lines of code as a reader meets them: blank lines and comments are not counted.
 *
 * @param classes each top-level class with its code lines
 * @param methods each method and constructor with its code lines, signature included
 */
record SourceMeasure(List<Size> classes, List<Size> methods) {

    /** @param exempt a table that holds nothing but constants */
    record Size(String name, int codeLines, boolean exempt) {}

    static SourceMeasure of(Path sources) {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (Stream<Path> all = Files.walk(sources);
                StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null)) {
            List<Path> paths = all.filter(path -> path.toString().endsWith(".java"))
                    .filter(path -> !path.endsWith("package-info.java"))
                    .toList();
            Iterable<? extends JavaFileObject> units = files.getJavaFileObjectsFromPaths(paths);
            JavacTask task = (JavacTask) compiler.getTask(null, files, null, List.of("-proc:none"), null, units);
            Counter counter = new Counter(Trees.instance(task).getSourcePositions());
            for (CompilationUnitTree unit : task.parse()) {
                counter.scan(unit, null);
            }
            return new SourceMeasure(counter.classes, counter.methods);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static final class Counter extends TreePathScanner<Void, Void> {

        private final SourcePositions positions;
        private final List<Size> classes = new ArrayList<>();
        private final List<Size> methods = new ArrayList<>();

        Counter(SourcePositions positions) {
            this.positions = positions;
        }

        @Override
        public Void visitClass(ClassTree tree, Void nothing) {
            if (getCurrentPath().getParentPath().getLeaf() instanceof CompilationUnitTree) {
                String name = tree.getSimpleName().toString();
                classes.add(new Size(name, codeLines(tree), name.endsWith("Table") && holdsOnlyConstants(tree)));
            }
            return super.visitClass(tree, nothing);
        }

        @Override
        public Void visitMethod(MethodTree tree, Void nothing) {
            if (tree.getBody() != null) {
                String unit = Path.of(getCurrentPath()
                                .getCompilationUnit()
                                .getSourceFile()
                                .getName())
                        .getFileName()
                        .toString();
                methods.add(new Size(unit + "#" + tree.getName(), codeLines(tree), false));
            }
            return super.visitMethod(tree, nothing);
        }

        private int codeLines(Tree tree) {
            CompilationUnitTree unit = getCurrentPath().getCompilationUnit();
            try {
                String text = unit.getSourceFile()
                        .getCharContent(true)
                        .toString()
                        .substring((int) positions.getStartPosition(unit, tree), (int)
                                positions.getEndPosition(unit, tree));
                return (int) withoutComments(text)
                        .lines()
                        .filter(line -> !line.isBlank())
                        .count();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        private static boolean holdsOnlyConstants(ClassTree tree) {
            return tree.getMembers().stream()
                    .allMatch(member -> member instanceof VariableTree variable
                                    && variable.getModifiers().getFlags().contains(Modifier.STATIC)
                                    && variable.getModifiers().getFlags().contains(Modifier.FINAL)
                            || member instanceof MethodTree method
                                    && method.getName().contentEquals("<init>")
                                    && method.getBody().getStatements().isEmpty());
        }
    }

    /** Line ends stay, so that lines can be counted; text in quotes is no comment. */
    static String withoutComments(String source) {
        StringBuilder kept = new StringBuilder();
        int at = 0;
        while (at < source.length()) {
            int end = endOfPiece(source, at);
            String piece = source.substring(at, end);
            kept.append(piece.startsWith("//") || piece.startsWith("/*") ? piece.replaceAll("[^\n]", "") : piece);
            at = end;
        }
        return kept.toString();
    }

    private static int endOfPiece(String source, int at) {
        if (source.startsWith("//", at)) {
            return endOrAll(source, source.indexOf('\n', at), 0);
        }
        if (source.startsWith("/*", at)) {
            return endOrAll(source, source.indexOf("*/", at + 2), 2);
        }
        if (source.startsWith("\"\"\"", at)) {
            return endOrAll(source, source.indexOf("\"\"\"", at + 3), 3);
        }
        char first = source.charAt(at);
        return first == '"' || first == '\'' ? endOfQuote(source, at, first) : at + 1;
    }

    private static int endOfQuote(String source, int start, char quote) {
        int at = start + 1;
        while (at < source.length() && source.charAt(at) != quote) {
            at += source.charAt(at) == '\\' ? 2 : 1;
        }
        return Math.min(source.length(), at + 1);
    }

    private static int endOrAll(String source, int found, int length) {
        return found < 0 ? source.length() : found + length;
    }
}
