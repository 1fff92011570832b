package org.hidewright.core.workshop;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hidewright.api.calculator.Notice;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.json.JsonNode;
import org.hidewright.core.json.JsonNode.JsonArray;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonNode.JsonScalar;
import org.hidewright.core.json.JsonNode.Member;
import org.hidewright.core.json.JsonNotices;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.json.JsonTrouble;
import org.hidewright.core.json.Place;
import org.hidewright.core.wording.Remark;

/**
 * Reads the text of a workshop file: its head, and which rows are sound. Cells are read where they are used. What it does
 * not understand it names and leaves in place.
 */
public final class WorkshopReader {
    /** The format of workshop files written by this version. */
    public static final int FORMAT = 1;

    private static final String MARK = "workshop";
    private static final String A_ROW = "{\"id\": \"…\", …}";
    private static final List<String> HEAD = List.of(MARK, "name", "about", Workshop.CURRENCY, Workshop.TABLES);

    private final List<Remark> remarks = new ArrayList<>();

    private WorkshopReader() {}

    /** What reading came to: a workshop, or the reason there is none. */
    public record Result(Optional<Workshop> workshop, List<Remark> remarks) {}

    /** Reads a workshop file's text. */
    public static Result read(String text) {
        return read(text, HEAD);
    }

    /**
     * Reads a text that is a workshop file and holds something more.
     *
     * @param head every key it may hold
     */
    public static Result read(String text, List<String> head) {
        return new WorkshopReader().readText(text, head);
    }

    private Result readText(String text, List<String> known) {
        JsonText source;
        try {
            source = JsonText.read(text);
        } catch (JsonTrouble e) {
            say(
                    e.kind() == JsonTrouble.Kind.SYNTAX
                            ? JsonNotices.NOT_JSON.with(e.words())
                            : WorkshopNotices.NOT_A_WORKSHOP.with(),
                    e.place());
            return new Result(Optional.empty(), remarks);
        }
        if (!(source.root() instanceof JsonObject head) || head.get(MARK).isEmpty()) {
            say(WorkshopNotices.NOT_A_WORKSHOP.with(), source.root().place());
            return new Result(Optional.empty(), remarks);
        }
        format(source, head.members().get(MARK));
        check(head, known);
        return new Result(Optional.of(Workshop.in(source, head)), List.copyOf(remarks));
    }

    /** What is wrong with the copies that a project keeps. */
    public static List<Remark> checkKept(JsonObject node) {
        WorkshopReader reader = new WorkshopReader();
        reader.check(node, List.of("name", Workshop.CURRENCY, Workshop.TABLES, Workshop.WHOLE));
        return List.copyOf(reader.remarks);
    }

    private void check(JsonObject node, List<String> known) {
        for (Map.Entry<String, Member> member : node.members().entrySet()) {
            if (!known.contains(member.getKey())) {
                remarks.add(Remark.of(JsonNotices.unknownKey(member.getKey(), known), CoreTexts.TEXTS)
                        .atPlace(member.getValue().place()));
            }
        }
        for (String text : List.of("name", "about", Workshop.CURRENCY)) {
            node.get(text)
                    .filter(value -> !(value instanceof JsonScalar scalar && scalar.type() == JsonScalar.Type.TEXT))
                    .ifPresent(value -> wrongShape(text, "\"…\"", value));
        }
        node.text(Workshop.CURRENCY)
                .filter(code -> Workshop.currency(node).isEmpty())
                .ifPresent(code -> say(
                        WorkshopNotices.NO_SUCH_CURRENCY.with(code),
                        node.get(Workshop.CURRENCY).orElseThrow().place()));
        JsonNode tables = node.get(Workshop.TABLES).orElse(null);
        if (tables instanceof JsonObject object) {
            object.members().forEach((table, member) -> table(table, member.value()));
        } else if (tables != null) {
            wrongShape(Workshop.TABLES, "{\"leather\": [" + A_ROW + "]}", tables);
        }
    }

    private void format(JsonText source, Member member) {
        String format = source.textOf(member.value());
        if (!format.matches("[1-9]\\d{0,5}")) {
            wrongShape(MARK, String.valueOf(FORMAT), member.value());
        } else if (Integer.parseInt(format) > FORMAT) {
            say(WorkshopNotices.NEWER_WORKSHOP.with(format, FORMAT), member.place());
        }
    }

    private void table(String table, JsonNode node) {
        if (!(node instanceof JsonArray rows)) {
            wrongShape(table, "[" + A_ROW + "]", node);
            return;
        }
        Set<String> ids = new HashSet<>();
        for (int i = 0; i < rows.items().size(); i++) {
            JsonNode item = rows.items().get(i);
            Optional<String> id = item instanceof JsonObject row ? row.text(Row.ID) : Optional.empty();
            if (!(item instanceof JsonObject)) {
                wrongShape(JsonNotices.item(table, i), A_ROW, item);
            } else if (id.filter(text -> !text.isEmpty()).isEmpty()) {
                say(WorkshopNotices.WORKSHOP_ROW_WITHOUT_ID.with(table), item.place());
            } else if (!ids.add(id.get())) {
                say(JsonNotices.ROW_ID_TWICE.with(id.get()), item.place());
            }
        }
    }

    private void wrongShape(String key, String like, JsonNode found) {
        say(JsonNotices.wrongShape(key, like, found), found.place());
    }

    private void say(Notice notice, Place place) {
        remarks.add(Remark.of(notice, CoreTexts.TEXTS).atPlace(place));
    }
}
