package org.hidewright.api.declaration;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.List;
import org.hidewright.api.workshop.Tabulates;
import org.hidewright.api.workshop.WorkshopTable;

/** The columns of a {@link WorkshopTable}, derived from its record and checked. */
public final class DeclaredTable {
    private static final List<String> RESERVED = List.of("id", "currency");

    private final String id;
    private final List<Question> columns;
    private final Texts texts;

    private DeclaredTable(String id, List<Question> columns, Texts texts) {
        this.id = id;
        this.columns = List.copyOf(columns);
        this.texts = texts;
    }

    /**
     * Derives the declaration of a table.
     *
     * @throws InvalidDeclaration if its annotations or record cannot be one; the message says where and why
     */
    public static DeclaredTable of(WorkshopTable<?> table) {
        Class<?> type = table.getClass();
        Tabulates tabulates = type.getAnnotation(Tabulates.class);
        if (tabulates == null) {
            throw new InvalidDeclaration(type, "annotate it with @Tabulates(\"its-id\")");
        }
        Keys.checkId(type, tabulates.value());
        Class<?> record = record(type);
        List<Question> columns = QuestionReader.questions(record, tabulates.value());
        for (Question column : columns) {
            if (!column.questions().isEmpty() || !column.variants().isEmpty()) {
                throw new InvalidDeclaration(record, column.key(), "a column holds single values or a list of them");
            }
            if (RESERVED.contains(column.key())) {
                throw new InvalidDeclaration(
                        record, column.key(), "every row has an id and may have a currency; they are not declared");
            }
        }
        return new DeclaredTable(tabulates.value(), columns, Texts.beside(type));
    }

    private static Class<?> record(Class<?> type) {
        for (Type implemented : type.getGenericInterfaces()) {
            if (implemented instanceof ParameterizedType of
                    && of.getRawType() == WorkshopTable.class
                    && of.getActualTypeArguments()[0] instanceof Class<?> record) {
                return record;
            }
        }
        throw new InvalidDeclaration(type, "implement WorkshopTable<Row> directly, with its record class");
    }

    /** The table's id. */
    public String id() {
        return id;
    }

    /** In the order declared; labels and help are under their keys in {@link #texts()}. */
    public List<Question> columns() {
        return columns;
    }

    public Texts texts() {
        return texts;
    }

    /** Message keys of the title and of the one line that says what is kept there. */
    public String titleKey() {
        return id + ".title";
    }

    public String purposeKey() {
        return id + ".purpose";
    }
}
