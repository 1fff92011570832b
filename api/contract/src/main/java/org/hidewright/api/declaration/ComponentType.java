package org.hidewright.api.declaration;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.lang.reflect.WildcardType;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.api.item.Item;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Density;
import org.hidewright.api.measure.Duration;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Mass;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Size;
import org.hidewright.api.measure.Unit;
import org.hidewright.api.measure.Units;
import org.hidewright.api.measure.Volume;

/** What the Java type of a record component means: its kind, what its items are, whether it may be absent. */
final class ComponentType {
    private final Kind kind;
    private final Kind itemKind;
    private final boolean optional;
    private final Class<?> type;

    private ComponentType(Kind kind, Kind itemKind, boolean optional, Class<?> type) {
        this.kind = kind;
        this.itemKind = itemKind;
        this.optional = optional;
        this.type = type;
    }

    static ComponentType of(Class<?> record, RecordComponent component) {
        Type declared = component.getGenericType();
        boolean optional = component.getType() == Optional.class;
        if (optional) {
            declared = argument(record, component, declared);
        }
        if (raw(declared) == List.class) {
            Class<?> item = raw(argument(record, component, declared));
            Kind itemKind = single(record, component, item);
            boolean rows = itemKind == Kind.GROUP || itemKind == Kind.VARIANTS;
            return new ComponentType(rows ? Kind.ROWS : Kind.LIST, itemKind, optional, item);
        }
        Class<?> type = raw(declared);
        Kind kind = single(record, component, type);
        return new ComponentType(kind, kind, optional, type);
    }

    private static Kind single(Class<?> record, RecordComponent component, Class<?> type) {
        if (type == Length.class) {
            return Kind.LENGTH;
        } else if (type == Angle.class) {
            return Kind.ANGLE;
        } else if (type == Area.class) {
            return Kind.AREA;
        } else if (type == Mass.class) {
            return Kind.MASS;
        } else if (type == Density.class) {
            return Kind.DENSITY;
        } else if (type == Volume.class) {
            return Kind.VOLUME;
        } else if (type == Duration.class) {
            return Kind.DURATION;
        } else if (type == Money.class) {
            return Kind.MONEY;
        } else if (type == LocalDate.class) {
            return Kind.DATE;
        } else if (type == Size.class) {
            return Kind.SIZE;
        } else if (type == int.class || type == Integer.class) {
            return Kind.COUNT;
        } else if (type == double.class || type == Double.class) {
            return Kind.RATIO;
        } else if (type == boolean.class || type == Boolean.class) {
            return Kind.FLAG;
        } else if (type == String.class) {
            return Kind.TEXT;
        } else if (type == Phrase.class) {
            return Kind.PHRASE;
        } else if (type == Drawing.class) {
            return Kind.DRAWING;
        } else if (type == Item.class) {
            return Kind.ITEM;
        } else if (type.isEnum()) {
            return Kind.CHOICE;
        } else if (type.isRecord()) {
            return Kind.GROUP;
        } else if (type.isSealed()) {
            return Kind.VARIANTS;
        }
        throw new InvalidDeclaration(
                record,
                component.getName(),
                type.getName() + " is no kind of question or answer; see Asked and Answered");
    }

    private static Type argument(Class<?> record, RecordComponent component, Type declared) {
        if (declared instanceof ParameterizedType
                && !(((ParameterizedType) declared).getActualTypeArguments()[0] instanceof WildcardType)) {
            return ((ParameterizedType) declared).getActualTypeArguments()[0];
        }
        throw new InvalidDeclaration(record, component.getName(), "say what it holds, for example List<Length>");
    }

    private static Class<?> raw(Type type) {
        if (type instanceof ParameterizedType) {
            return raw(((ParameterizedType) type).getRawType());
        }
        return type instanceof Class<?> ? (Class<?>) type : Object.class; // a type variable says nothing of its own
    }

    Kind kind() {
        return kind;
    }

    Kind itemKind() {
        return itemKind;
    }

    boolean optional() {
        return optional;
    }

    /** The type of the value, or of each item or row. */
    Class<?> type() {
        return type;
    }

    List<Option> options() {
        if (itemKind != Kind.CHOICE) {
            return List.of();
        }
        List<String> keys = Arrays.stream(type.getEnumConstants())
                .map(constant -> Keys.of(((Enum<?>) constant).name()))
                .toList();
        Keys.checkDistinct(type, "constants", keys);
        return keys.stream()
                .map(key -> new Option(key, Keys.of(type) + "." + key))
                .toList();
    }

    /** The unit with this symbol that fits the kind; null where the kind has none. */
    Unit unit(Class<?> record, RecordComponent component, String symbol) {
        return unit(InvalidDeclaration.where(record, component.getName()), itemKind, symbol);
    }

    static Unit unit(String where, Kind itemKind, String symbol) {
        Kind unitKind = itemKind == Kind.SIZE ? Kind.LENGTH : itemKind;
        if (unitKind.dimension().isEmpty() || unitKind == Kind.COUNT || unitKind == Kind.MONEY) {
            if (!symbol.isEmpty()) {
                throw new InvalidDeclaration(
                        where, Keys.of(itemKind.name()) + " has no unit, but \"" + symbol + "\" is given");
            }
            return null;
        }
        if (symbol.isEmpty() && unitKind != Kind.RATIO) {
            throw new InvalidDeclaration(
                    where,
                    "it has no unit; give it one, such as "
                            + Units.base(unitKind.dimension().get()));
        }
        return Units.find(unitKind.dimension().get(), symbol)
                .orElseThrow(() ->
                        new InvalidDeclaration(where, "\"" + symbol + "\" is no unit of " + Keys.of(unitKind.name())));
    }

    static boolean isRowId(RecordComponent component) {
        if (component.isAnnotationPresent(RowId.class) && component.getType() != String.class) {
            throw new InvalidDeclaration(component.getDeclaringRecord(), component.getName(), "a row's id is a String");
        }
        return component.isAnnotationPresent(RowId.class);
    }
}
