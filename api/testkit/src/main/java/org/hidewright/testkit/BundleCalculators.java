package org.hidewright.testkit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.declaration.RecordCalculator;

/** The calculators of a bundle as a host would find them: every annotated class beside a given one. */
public final class BundleCalculators {
    private BundleCalculators() {}

    /**
     * All of them, made anew, in the order of their class names.
     *
     * @param one any class of the package they are in
     * @throws AssertionError if one cannot be made
     */
    public static List<Calculator<?, ?>> beside(Class<?> one) {
        try {
            Path folder = Path.of(
                            one.getResource(one.getSimpleName() + ".class").toURI())
                    .getParent();
            try (Stream<Path> files = Files.list(folder)) {
                return files.map(file -> file.getFileName().toString())
                        .filter(name -> name.endsWith(".class") && !name.startsWith("package-info"))
                        .sorted()
                        .map(name -> load(one, name.substring(0, name.length() - ".class".length())))
                        .filter(type -> type.isAnnotationPresent(Calculates.class))
                        .<Calculator<?, ?>>map(BundleCalculators::create)
                        .toList();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (URISyntaxException e) {
            throw new AssertionError(e);
        }
    }

    /** The same with their declarations, which are checked on the way. */
    public static List<RecordCalculator> declaredBeside(Class<?> one) {
        return beside(one).stream().map(RecordCalculator::of).toList();
    }

    private static Class<?> load(Class<?> beside, String name) {
        try {
            return Class.forName(beside.getPackageName() + "." + name, true, beside.getClassLoader());
        } catch (ClassNotFoundException e) {
            throw new AssertionError(e);
        }
    }

    static Calculator<?, ?> create(Class<?> type) {
        try {
            return (Calculator<?, ?>) type.getDeclaredConstructor().newInstance();
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(type + " needs a public constructor without arguments", e);
        }
    }
}
