package org.hidewright.testkit;

import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreeScanner;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/**
 * How many arguments each kind of notice is raised with, read off the sources of the bundle: a text may only call for
 * as many as every place in the code that raises it gives.
 */
final class RaisedNotices {
    private final Map<String, String> keyByConstant = new HashMap<>();
    private final Map<String, Integer> fewestByConstant = new HashMap<>();

    /** By key of the notice, the fewest arguments it is raised with anywhere in a folder of sources. */
    static Map<String, Integer> fewestArguments(Path sources) {
        RaisedNotices raised = new RaisedNotices();
        raised.read(sources);
        Map<String, Integer> fewest = new HashMap<>();
        raised.fewestByConstant.forEach((constant, arguments) -> {
            String key = raised.keyByConstant.get(constant);
            if (key != null) {
                fewest.merge(key, arguments, Math::min);
            }
        });
        return fewest;
    }

    private void read(Path sources) {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (Stream<Path> files = Files.walk(sources);
                StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, null)) {
            List<Path> java =
                    files.filter(file -> file.toString().endsWith(".java")).toList();
            JavacTask task = (JavacTask)
                    compiler.getTask(null, manager, null, null, null, manager.getJavaFileObjectsFromPaths(java));
            for (var unit : task.parse()) {
                String file =
                        Path.of(unit.getSourceFile().getName()).getFileName().toString();
                unit.accept(new Calls(file.substring(0, file.length() - ".java".length())), null);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private final class Calls extends TreeScanner<Void, Void> {
        private final String type;

        Calls(String type) {
            this.type = type;
        }

        @Override
        public Void visitVariable(VariableTree variable, Void nothing) {
            if ("NoticeKind".equals(String.valueOf(variable.getType()))
                    && variable.getInitializer() instanceof MethodInvocationTree call
                    && call.getArguments().get(0) instanceof LiteralTree key) {
                keyByConstant.put(type + "." + variable.getName(), String.valueOf(key.getValue()));
            }
            return super.visitVariable(variable, nothing);
        }

        @Override
        public Void visitMethodInvocation(MethodInvocationTree call, Void nothing) {
            if (call.getMethodSelect() instanceof MemberSelectTree method) {
                int places = method.getIdentifier().contentEquals("at") ? 1 : 0;
                if (places == 1 || method.getIdentifier().contentEquals("with")) {
                    fewestByConstant.merge(
                            constant(method.getExpression()),
                            call.getArguments().size() - places,
                            Math::min);
                }
            }
            return super.visitMethodInvocation(call, nothing);
        }

        private String constant(ExpressionTree raised) {
            return raised instanceof IdentifierTree ? type + "." + raised : String.valueOf(raised);
        }
    }
}
