package org.hidewright.api.declaration;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Carries values into the records of an author and answers back out of them. Built once for each record class. */
final class RecordBinder {
    private final Class<?> record;
    private final Constructor<?> constructor;
    private final List<Slot> slots;

    private record Slot(RecordComponent component, String key, ComponentType type, boolean rowId) {}

    RecordBinder(Class<?> record) {
        this.record = record;
        RecordComponent[] components = record.getRecordComponents();
        try {
            constructor = record.getDeclaredConstructor(
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException(record + " has lost its canonical constructor", e);
        }
        constructor.setAccessible(true);
        slots = Arrays.stream(components)
                .map(component -> {
                    component.getAccessor().setAccessible(true);
                    boolean rowId = ComponentType.isRowId(component);
                    return new Slot(
                            component,
                            Keys.of(component.getName()),
                            rowId ? null : ComponentType.of(record, component),
                            rowId);
                })
                .toList();
    }

    Record bind(Values values) {
        Object[] arguments = new Object[slots.size()];
        for (int i = 0; i < arguments.length; i++) {
            Slot slot = slots.get(i);
            arguments[i] = slot.rowId ? values.rowId() : argument(slot, values.get(slot.key));
        }
        return (Record) call(() -> constructor.newInstance(arguments));
    }

    private Object argument(Slot slot, Optional<Object> value) {
        if (slot.type.optional()) {
            return value.map(present -> inJava(slot.type, present));
        }
        return inJava(
                slot.type,
                value.orElseThrow(() -> new IllegalArgumentException(record.getName() + ": no value for " + slot.key)));
    }

    private static Object inJava(ComponentType type, Object value) {
        if (value instanceof List<?>) {
            List<Object> items = new ArrayList<>();
            for (Object item : (List<?>) value) {
                items.add(oneInJava(type, item));
            }
            return List.copyOf(items);
        }
        return oneInJava(type, value);
    }

    private static Object oneInJava(ComponentType type, Object value) {
        if (value instanceof Values) {
            return of(type.type()).bind((Values) value);
        }
        if (value instanceof Chosen) {
            return bindChosen(type.type(), (Chosen) value);
        }
        if (type.itemKind() == Kind.CHOICE) {
            return Arrays.stream(type.type().getEnumConstants())
                    .filter(constant -> Keys.of(((Enum<?>) constant).name()).equals(value))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException(
                            "no " + value + " in " + type.type().getName()));
        }
        return value;
    }

    private static Object bindChosen(Class<?> sealed, Chosen chosen) {
        for (Class<?> variant : sealed.getPermittedSubclasses()) {
            if (Keys.of(variant).equals(chosen.variant())) {
                return of(variant).bind(chosen.values());
            }
        }
        throw new IllegalArgumentException("no variant " + chosen.variant() + " in " + sealed.getName());
    }

    /** The values held by a record of this class. */
    Values take(Record from) {
        Map<String, Object> entries = new LinkedHashMap<>();
        String rowId = "";
        for (Slot slot : slots) {
            Object value = call(() -> slot.component.getAccessor().invoke(from));
            if (slot.rowId) {
                rowId = (String) value;
            } else if (value instanceof Optional<?>) {
                ((Optional<?>) value).ifPresent(present -> entries.put(slot.key, asValue(slot.type, present)));
            } else {
                entries.put(slot.key, asValue(slot.type, value));
            }
        }
        return Values.row(rowId == null ? "" : rowId, entries);
    }

    private static Object asValue(ComponentType type, Object value) {
        if (value instanceof List<?>) {
            return ((List<?>) value).stream().map(item -> asValue(type, item)).toList();
        }
        if (value instanceof Enum<?>) {
            return Keys.of(((Enum<?>) value).name());
        }
        if (value instanceof Record) {
            Values inside = of(value.getClass()).take((Record) value);
            return type.itemKind() == Kind.VARIANTS ? Chosen.of(Keys.of(value.getClass()), inside) : inside;
        }
        return value;
    }

    /** Held by class, so that a class and its binder go together when its bundle is removed. */
    private static final ClassValue<RecordBinder> BINDERS = new ClassValue<>() {
        @Override
        protected RecordBinder computeValue(Class<?> type) {
            return new RecordBinder(type);
        }
    };

    static RecordBinder of(Class<?> record) {
        return BINDERS.get(record);
    }

    private interface Reflective {
        Object get() throws ReflectiveOperationException;
    }

    private Object call(Reflective reflective) {
        try {
            return reflective.get();
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof RuntimeException) {
                throw (RuntimeException) e.getCause();
            }
            throw new IllegalStateException(record.getName(), e.getCause());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(record.getName(), e);
        }
    }
}
