package org.hidewright.testkit;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URL;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.declaration.RecordCalculator;

/** The classes of a bundle loaded once more, as after a start: what they keep in static fields is empty again. */
final class FreshCopy extends ClassLoader {
    private final String home;

    private FreshCopy(Class<?> one) {
        super(one.getClassLoader());
        this.home = home(one);
    }

    /** A calculator of newly loaded classes. */
    static RecordCalculator of(Class<?> calculator) {
        try {
            Class<?> copy = new FreshCopy(calculator).loadClass(calculator.getName());
            return RecordCalculator.of((Calculator<?, ?>) BundleCalculators.create(copy));
        } catch (ClassNotFoundException e) {
            throw new AssertionError(e);
        }
    }

    /** Where the classes of the same bundle lie, as their addresses begin. */
    static String home(Class<?> one) {
        String itself = one.getResource(
                        file(one.getName()).substring(one.getPackageName().length() + 1))
                .toString();
        return itself.substring(0, itself.length() - file(one.getName()).length());
    }

    private static String file(String name) {
        return name.replace('.', '/') + ".class";
    }

    @Override
    protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
        synchronized (getClassLoadingLock(name)) {
            Class<?> loaded = findLoadedClass(name);
            URL source = loaded == null ? getParent().getResource(file(name)) : null;
            if (source != null && source.toString().startsWith(home)) {
                loaded = defined(name, source);
            }
            return loaded == null ? super.loadClass(name, resolve) : loaded;
        }
    }

    private Class<?> defined(String name, URL source) {
        try (InputStream bytes = source.openStream()) {
            byte[] code = bytes.readAllBytes();
            return defineClass(name, code, 0, code.length);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
