package org.hidewright.api.declaration;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.List;
import org.hidewright.api.workshop.Tabulates;
import org.hidewright.api.workshop.WorkshopTable;

/** The columns of a table of the workshop, derived from the record of a {@link WorkshopTable} or written down, and checked. */
public final class DeclaredTable {
    private static final List<String> RESERVED = List.of("id", "currency", "from");

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
            checkKey(InvalidDeclaration.where(record, column.key()), column);
        }
        return new DeclaredTable(tabulates.value(), columns, Texts.beside(type));
    }

    /**
     * A table that is written down as a text, for a host that reads tables without Java.
     *
     * @param columns as {@link Written#column} makes them
     * @param texts with the labels and help of the columns; of a new table its title and purpose as well
     * @throws InvalidDeclaration if the id is none, or a key stands twice or is kept for something else
     */
    public static DeclaredTable written(String id, List<Question> columns, Texts texts) {
        Keys.checkId(Written.class, id);
        Keys.checkDistinct(
                Written.class, "columns", columns.stream().map(Question::key).toList());
        columns.forEach(column -> checkKey(column.key(), column));
        return new DeclaredTable(id, columns, texts);
    }

    private static void checkKey(String where, Question column) {
        if (RESERVED.contains(column.key())) {
            throw new InvalidDeclaration(
                    where,
                    "every row has an id, may have a currency, and may say where it is from; they are not declared");
        }
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

    /** Where labels and help are found. */
    public Texts texts() {
        return texts;
    }

    /** Message key of the title. */
    public String titleKey() {
        return id + ".title";
    }

    /** Message key of the one line that says what is kept there. */
    public String purposeKey() {
        return id + ".purpose";
    }
}
