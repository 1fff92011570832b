package org.hidewright.api.declaration;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The texts of a calculator: those beside it, then those beside question records of other packages, so that a record that
 * several bundles ask with brings its own labels.
 */
final class QuestionTexts {
    private final Map<String, Class<?>> homes = new LinkedHashMap<>();

    private QuestionTexts(Class<?> calculator) {
        homes.put(calculator.getPackageName(), calculator);
    }

    /** A class of every package that texts and pictures stand beside. */
    static List<Class<?>> homes(Class<?> calculator, Class<?> questions) {
        QuestionTexts texts = new QuestionTexts(calculator);
        texts.into(questions);
        return List.copyOf(texts.homes.values());
    }

    static Texts of(List<Class<?>> homes) {
        List<Texts> all = homes.stream().map(Texts::beside).toList();
        return all.size() == 1
                ? all.get(0)
                : (key, language) -> all.stream()
                        .map(beside -> beside.find(key, language))
                        .flatMap(Optional::stream)
                        .findFirst();
    }

    private void into(Class<?> type) {
        if (type.isRecord()) {
            homes.putIfAbsent(type.getPackageName(), type);
            for (RecordComponent component : type.getRecordComponents()) {
                into(component.getGenericType());
            }
        } else if (type.isSealed()) {
            for (Class<?> variant : type.getPermittedSubclasses()) {
                into(variant);
            }
        } else if (type.isEnum()) {
            homes.putIfAbsent(type.getPackageName(), type);
        }
    }

    private void into(Type type) {
        if (type instanceof Class<?> plain) {
            into(plain);
        } else if (type instanceof ParameterizedType wrapped) {
            for (Type argument : wrapped.getActualTypeArguments()) {
                into(argument);
            }
        }
    }
}
