package org.hidewright.core.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Map;

/** Writes maps, lists, texts, numbers and truth values as indented JSON, with line feeds on every system. */
public final class JsonOut {
    private static final JsonFactory FACTORY = new JsonFactory();

    /** JSON text put into the tree as it is. */
    public record Raw(String json) {}

    private JsonOut() {}

    /** The tree as JSON text, ended by a line feed. */
    public static String write(Object tree) {
        StringWriter text = new StringWriter();
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        try (JsonGenerator generator = FACTORY.createGenerator(text)) {
            generator.setPrettyPrinter(new DefaultPrettyPrinter(
                            Separators.createDefaultInstance().withObjectFieldValueSpacing(Separators.Spacing.AFTER))
                    .withObjectIndenter(indenter)
                    .withArrayIndenter(indenter));
            value(generator, tree);
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory cannot fail", e);
        }
        return text + "\n";
    }

    /** The tree as JSON text in one line, as it is shown inside a sentence. */
    public static String line(Object tree) {
        StringWriter text = new StringWriter();
        try (JsonGenerator generator = FACTORY.createGenerator(text)) {
            value(generator, tree);
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory cannot fail", e);
        }
        return text.toString();
    }

    private static void value(JsonGenerator generator, Object value) throws IOException {
        if (value instanceof Map<?, ?> map) {
            generator.writeStartObject();
            for (Map.Entry<?, ?> entry : map.entrySet()) {
                generator.writeFieldName(String.valueOf(entry.getKey()));
                value(generator, entry.getValue());
            }
            generator.writeEndObject();
        } else if (value instanceof Iterable<?> items) {
            generator.writeStartArray();
            for (Object item : items) {
                value(generator, item);
            }
            generator.writeEndArray();
        } else if (value instanceof Raw raw) {
            generator.writeRawValue(raw.json());
        } else if (value instanceof Integer || value instanceof Long) {
            generator.writeNumber(((Number) value).longValue());
        } else if (value instanceof Number number) {
            generator.writeNumber(number.doubleValue());
        } else if (value instanceof Boolean flag) {
            generator.writeBoolean(flag);
        } else if (value == null) {
            generator.writeNull();
        } else {
            generator.writeString(value.toString());
        }
    }
}
