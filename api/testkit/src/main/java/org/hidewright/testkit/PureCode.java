package org.hidewright.testkit;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.objectweb.asm.ClassReader;

/**
 * What the code of a calculator calls that no pure function does, read off its class files: those of the calculator and all of
 * the same bundle that it leads to.
 */
final class PureCode {
    private static final int CLASS = 7;
    private static final int FIELD = 9;
    private static final int METHOD = 10;
    private static final int INTERFACE_METHOD = 11;

    private final String id;
    private final ClassLoader loader;
    private final String home;
    private final Set<String> seen = new HashSet<>();
    private final Deque<String> next = new ArrayDeque<>();
    private final Set<String> wrong = new TreeSet<>();

    private PureCode(String id, Class<?> type) {
        this.id = id;
        this.loader = type.getClassLoader();
        this.home = FreshCopy.home(type);
        next.add(type.getName().replace('.', '/'));
    }

    /** What is called that should not be, each with what to do instead. */
    static List<String> wrong(String id, Class<?> type) {
        PureCode code = new PureCode(id, type);
        while (!code.next.isEmpty()) {
            code.read(code.next.remove());
        }
        return new ArrayList<>(code.wrong);
    }

    private void read(String type) {
        var source = loader.getResource(type + ".class");
        if (!seen.add(type) || source == null || !source.toString().startsWith(home)) {
            return;
        }
        try (InputStream bytes = source.openStream()) {
            constants(type, new ClassReader(bytes.readAllBytes()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Every class and method a class file names stands in its table of constants. */
    private void constants(String type, ClassReader file) {
        char[] buffer = new char[file.getMaxStringLength()];
        for (int i = 1; i < file.getItemCount(); i++) {
            int at = file.getItem(i);
            int tag = at == 0 ? 0 : file.readByte(at - 1);
            if (tag == CLASS) {
                next.add(file.readUTF8(at, buffer));
            } else if (tag == METHOD || tag == INTERFACE_METHOD || tag == FIELD) {
                int member = file.getItem(file.readUnsignedShort(at + 2));
                called(
                        type,
                        file.readClass(at, buffer),
                        file.readUTF8(member, buffer),
                        file.readUTF8(member + 2, buffer));
            }
        }
    }

    private void called(String from, String owner, String name, String descriptor) {
        Impure.of(owner, name, descriptor)
                .ifPresent(impure -> wrong.add(id + ": " + from.replace('/', '.') + " calls "
                        + owner.substring(owner.lastIndexOf('/') + 1) + (name.equals("<init>") ? "" : "." + name) + ", "
                        + impure.what() + ". " + impure.mend() + "."));
    }
}
