package org.hidewright.distribution;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.ModifiersTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** What others can see of some sources and nothing is said of. What takes the place of something of its parent need not say it again. */
final class UncommentedMembers extends TreePathScanner<Void, Boolean> {
    private final CompilationUnitTree unit;
    private final DocTrees comments;
    private final List<String> without;

    private UncommentedMembers(CompilationUnitTree unit, DocTrees comments, List<String> without) {
        this.unit = unit;
        this.comments = comments;
        this.without = without;
    }

    /** Each with its file and line. */
    static List<String> in(List<Path> sources) throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        List<String> without = new ArrayList<>();
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, null)) {
            JavacTask task = (JavacTask)
                    compiler.getTask(null, manager, null, null, null, manager.getJavaFileObjectsFromPaths(sources));
            for (CompilationUnitTree unit : task.parse()) {
                new UncommentedMembers(unit, DocTrees.instance(task), without).scan(unit, false);
            }
        }
        return without;
    }

    private static boolean isSeen(ModifiersTree modifiers, boolean ofInterface) {
        Set<Modifier> flags = modifiers.getFlags();
        return flags.contains(Modifier.PUBLIC)
                || flags.contains(Modifier.PROTECTED)
                || ofInterface && !flags.contains(Modifier.PRIVATE);
    }

    private void look(Tree tree, String name) {
        if (comments.getDocComment(getCurrentPath()) == null) {
            long line = unit.getLineMap()
                    .getLineNumber(comments.getSourcePositions().getStartPosition(unit, tree));
            without.add(Path.of(unit.getSourceFile().getName()).getFileName() + ":" + line + " " + name);
        }
    }

    /** @param ofInterface whether it is inside one, where everything is seen */
    @Override
    public Void visitClass(ClassTree type, Boolean ofInterface) {
        if (!isSeen(type.getModifiers(), ofInterface)) {
            return null;
        }
        look(type, String.valueOf(type.getSimpleName()));
        boolean all = type.getKind() == Tree.Kind.INTERFACE || type.getKind() == Tree.Kind.ANNOTATION_TYPE;
        return super.visitClass(type, all);
    }

    @Override
    public Void visitMethod(MethodTree method, Boolean ofInterface) {
        boolean overrides = method.getModifiers().getAnnotations().stream()
                .anyMatch(annotation -> "Override".equals(String.valueOf(annotation.getAnnotationType())));
        if (isSeen(method.getModifiers(), ofInterface) && !overrides) {
            look(method, String.valueOf(method.getName()));
        }
        return null;
    }

    @Override
    public Void visitVariable(VariableTree field, Boolean ofInterface) {
        if (isSeen(field.getModifiers(), ofInterface)) {
            look(field, String.valueOf(field.getName()));
        }
        return null;
    }
}
