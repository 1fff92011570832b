package org.hidewright.testkit;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.declaration.InvalidDeclaration;
import org.hidewright.api.declaration.RecordCalculator;

/** What a contract looks at: the calculators of a bundle, their texts, and where their sources lie. */
final class Bundle {
    private final List<RecordCalculator> calculators = new ArrayList<>();
    private final List<Class<?>> types = new ArrayList<>();
    private final List<String> undeclared = new ArrayList<>();
    private final String messages;
    private final Path sources;

    /**
     * A bundle of these calculators.
     *
     * @param messages its texts, as they stand in {@code messages.properties}
     */
    Bundle(List<Calculator<?, ?>> calculators, String messages, Path sources) {
        for (Calculator<?, ?> calculator : calculators) {
            try {
                this.calculators.add(RecordCalculator.of(calculator));
                types.add(calculator.getClass());
            } catch (InvalidDeclaration wrong) {
                undeclared.add(wrong.getMessage() + ".");
            }
        }
        this.messages = messages;
        this.sources = sources;
    }

    /** The calculators and texts beside a class, its sources in the folder the build runs in. */
    static Bundle beside(Class<?> one) {
        return new Bundle(BundleCalculators.beside(one), messages(one), Path.of("src", "main", "java"));
    }

    private static String messages(Class<?> one) {
        try (InputStream texts = one.getResourceAsStream("messages.properties")) {
            if (texts == null) {
                throw new AssertionError("there is no messages.properties beside " + one.getName() + "; write one");
            }
            return new String(texts.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Those that can be declared. */
    List<RecordCalculator> calculators() {
        return calculators;
    }

    /** Of each that cannot be declared, where it is wrong and why. */
    List<String> undeclared() {
        return undeclared;
    }

    /** The class of each calculator, in their order. */
    List<Class<?>> types() {
        return types;
    }

    Path sources() {
        return sources;
    }

    Properties texts() {
        return read(messages);
    }

    /** The texts beside a class. */
    static Properties texts(Class<?> one) {
        return read(messages(one));
    }

    private static Properties read(String messages) {
        Properties texts = new Properties();
        try {
            texts.load(new StringReader(messages));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return texts;
    }

    /** The lines of the file of texts. */
    List<String> lines() {
        return messages.lines().toList();
    }
}
