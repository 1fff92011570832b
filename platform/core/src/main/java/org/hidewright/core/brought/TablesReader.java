package org.hidewright.core.brought;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.declaration.DeclaredTable;
import org.hidewright.api.declaration.InvalidDeclaration;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Texts;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonNode.Member;
import org.hidewright.core.json.JsonNotices;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.json.JsonTrouble;
import org.hidewright.core.json.Place;
import org.hidewright.core.template.Shapes;
import org.hidewright.core.template.TemplateNotices;
import org.hidewright.core.template.WrittenQuestions;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.workshop.Bringer;
import org.hidewright.core.workshop.Tables.Brought;
import org.hidewright.core.workshop.Workshop;
import org.hidewright.core.workshop.WorkshopReader;

/**
 * Reads the text of tables that a bundle carries. What is wrong is told with its place; a text with a fault in its head or in a
 * column brings nothing, a row with a fault is left out.
 */
public final class TablesReader {
    /** More than any catalogue of fittings has, and still read in an instant. */
    public static final int MOST_ROWS = 2_000;

    static final String COLUMNS = "columns";
    static final String ROWS = "tables";
    private static final String SOURCE = "source";
    private static final String TITLE = "title";
    private static final String PURPOSE = "purpose";
    /** What a text holds. */
    public static final List<String> HEAD = List.of("workshop", "name", "about", SOURCE, "currency", COLUMNS, ROWS);
    /** What is said of the columns of a table. */
    public static final List<String> OF_TABLE = List.of(TITLE, PURPOSE, COLUMNS);

    private static final Pattern NAME = Pattern.compile("[a-z0-9]+(?:-[a-z0-9]+)*");
    private static final String LIKE_TABLE = "{\"columns\": [{\"key\": \"bar-length\", \"kind\": \"length\"}]}";

    private final String bundle;
    private final List<Remark> remarks = new ArrayList<>();
    private final Shapes shapes = new Shapes(this::say);

    private TablesReader(String bundle) {
        this.bundle = bundle;
    }

    /** What reading came to: what the text brings, or the reason it brings nothing. */
    public record Result(Optional<BroughtTables> tables, List<Remark> remarks) {}

    /**
     * Reads a text.
     *
     * @param bundle symbolic name of the bundle that carries it
     */
    public static Result read(String text, String bundle) {
        TablesReader reader = new TablesReader(bundle);
        Optional<BroughtTables> tables = reader.text(text);
        return new Result(tables, List.copyOf(reader.remarks));
    }

    private void say(Notice notice, Place place) {
        remarks.add(Remark.of(notice, CoreTexts.TEXTS).atPlace(place));
    }

    private Optional<BroughtTables> text(String text) {
        WorkshopReader.Result read = WorkshopReader.read(text, HEAD);
        remarks.addAll(read.remarks());
        if (read.workshop().isEmpty()) {
            return Optional.empty();
        }
        JsonObject head = head(text);
        int before = stops();
        String source = shapes.text(head, SOURCE);
        List<Brought> columns = new ArrayList<>();
        if (head.get(COLUMNS).isPresent()) {
            shapes.object(head, COLUMNS, "{\"hardware\": " + LIKE_TABLE + "}")
                    .ifPresent(tables -> tables.members()
                            .forEach((id, member) -> table(id, member).ifPresent(columns::add)));
        }
        Workshop rows = read.workshop().get();
        count(rows);
        return stops() > before
                ? Optional.empty()
                : Optional.of(new BroughtTables(columns, rows, new Bringer(bundle, source)));
    }

    /** It was read before, so that nothing is wrong with its form. */
    private static JsonObject head(String text) {
        try {
            return (JsonObject) JsonText.read(text).root();
        } catch (JsonTrouble e) {
            throw new IllegalStateException("what was read can be read", e);
        }
    }

    private int stops() {
        return (int) remarks.stream().filter(Remark::stops).count();
    }

    private Optional<Brought> table(String id, Member member) {
        if (!(member.value() instanceof JsonObject object)) {
            say(JsonNotices.wrongShape(id, LIKE_TABLE, member.value()), member.place());
            return Optional.empty();
        }
        shapes.known(object, OF_TABLE);
        Map<String, String> texts = new HashMap<>();
        for (String part : List.of(TITLE, PURPOSE)) {
            if (object.get(part).isPresent()) {
                texts.put(id + "." + part, shapes.text(object, part));
            }
        }
        WrittenQuestions written = new WrittenQuestions(this::say, texts);
        List<Question> columns = new ArrayList<>();
        shapes.objects(object, COLUMNS, "{\"key\": \"bar-length\", \"kind\": \"length\", \"unit\": \"mm\"}")
                .forEach(column -> {
                    if (named(column.text("key").orElse("x"), column)) {
                        written.column(column, id).ifPresent(columns::add);
                    }
                });
        return declared(id, columns, texts, member.place()).map(table -> new Brought(table, bundle));
    }

    private Optional<DeclaredTable> declared(
            String id, List<Question> columns, Map<String, String> texts, Place place) {
        Texts own = (key, language) -> Optional.ofNullable(texts.get(key)).map(text -> text.replace("'", "''"));
        try {
            return Optional.of(DeclaredTable.written(id, columns, own));
        } catch (InvalidDeclaration e) {
            say(TemplateNotices.TEMPLATE_DECLARATION.with(e.getMessage()), place);
            return Optional.empty();
        }
    }

    private void count(Workshop rows) {
        int count = rows.tables().stream()
                .mapToInt(table -> rows.rows(table).size())
                .sum();
        if (count > MOST_ROWS) {
            say(BroughtNotices.BROUGHT_TOO_MANY.with(count, MOST_ROWS), new Place(1, 1));
        }
    }

    private boolean named(String name, JsonObject node) {
        boolean named = isName(name);
        if (!named) {
            say(BroughtNotices.BROUGHT_BAD_NAME.with(name), node.place());
        }
        return named;
    }

    /** Columns and rows are named by keys, as those of the program are. */
    static boolean isName(String name) {
        return NAME.matcher(name).matches();
    }
}
