package org.hidewright.distribution;

import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.Field;
import java.lang.reflect.GenericArrayType;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.lang.reflect.TypeVariable;
import java.lang.reflect.WildcardType;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Finds types of third parties in what a class shows to those who compile against it: its parents, its type parameters,
 * and the fields, methods and constructors that are public or protected. The JDK’s {@code java.*} and the contract’s own
 * packages are no third parties.
 */
final class ForeignTypes {

    private final Set<Type> seen = new HashSet<>();
    private final Set<String> foreign = new TreeSet<>();

    private ForeignTypes() {}

    /** Names of the foreign types, sorted; empty for a class that shows none, or is not shown itself. */
    static List<String> shownBy(Class<?> type) {
        ForeignTypes found = new ForeignTypes();
        if (isShown(type)) {
            found.lookAt(type);
        }
        return List.copyOf(found.foreign);
    }

    private static boolean isShown(Class<?> type) {
        for (Class<?> at = type; at != null; at = at.getDeclaringClass()) {
            if (!isShown(at.getModifiers())) {
                return false;
            }
        }
        return true;
    }

    private static boolean isShown(int modifiers) {
        return Modifier.isPublic(modifiers) || Modifier.isProtected(modifiers);
    }

    private void lookAt(Class<?> type) {
        check(type.getGenericSuperclass());
        check(type.getGenericInterfaces());
        checkAll(type.getTypeParameters());
        for (Field field : type.getDeclaredFields()) {
            if (isShown(field.getModifiers())) {
                check(field.getGenericType());
            }
        }
        for (Method method : type.getDeclaredMethods()) {
            if (isShown(method.getModifiers())) {
                check(method.getGenericReturnType());
                check(method);
            }
        }
        for (Constructor<?> constructor : type.getDeclaredConstructors()) {
            if (isShown(constructor.getModifiers())) {
                check(constructor);
            }
        }
        annotations(type).forEach(this::check);
    }

    /** Annotations kept at run time are part of what a reader of the class file needs. */
    private static Stream<Type> annotations(Class<?> type) {
        List<Type> types = new ArrayList<>();
        Stream.concat(
                        Arrays.stream(type.getAnnotations()),
                        Arrays.stream(type.getDeclaredMethods()).flatMap(m -> Arrays.stream(m.getAnnotations())))
                .forEach(annotation -> types.add(annotation.annotationType()));
        return types.stream();
    }

    private void check(Executable executable) {
        check(executable.getGenericParameterTypes());
        check(executable.getGenericExceptionTypes());
        checkAll(executable.getTypeParameters());
    }

    private void checkAll(TypeVariable<?>[] variables) {
        for (TypeVariable<?> variable : variables) {
            check(variable);
        }
    }

    private void check(Type[] types) {
        for (Type type : types) {
            check(type);
        }
    }

    private void check(Type type) {
        if (type == null || !seen.add(type)) {
            return;
        }
        if (type instanceof Class<?> plain) {
            if (plain.isArray()) {
                check(plain.getComponentType());
            } else if (!isAtHome(plain)) {
                foreign.add(plain.getName());
            }
        } else if (type instanceof ParameterizedType parameterized) {
            check(parameterized.getRawType());
            check(parameterized.getActualTypeArguments());
        } else if (type instanceof GenericArrayType array) {
            check(array.getGenericComponentType());
        } else if (type instanceof WildcardType wildcard) {
            check(wildcard.getUpperBounds());
            check(wildcard.getLowerBounds());
        } else if (type instanceof TypeVariable<?> variable) {
            check(variable.getBounds());
        }
    }

    private static boolean isAtHome(Class<?> type) {
        return type.isPrimitive()
                || type.getName().startsWith("java.")
                || type.getName().startsWith("org.hidewright.api.");
    }
}
