package org.hidewright.core.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hidewright.api.declaration.Declaration;
import org.hidewright.api.declaration.Values;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.json.JsonTrouble;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.workshop.Shelf;
import org.hidewright.core.workshop.Stock;
import org.hidewright.core.workshop.Tables;

/**
 * The values of questions that are all typed, as one calculator asks them of another.
 *
 * @param values empty where one cannot be read or is outside its limits
 * @param said why, in sentences for who wrote what was typed
 */
public record TypedValues(Optional<Values> values, List<String> said) {

    /**
     * Reads what is typed as a slip is read, but without links and workshop.
     *
     * @param json an object, by the keys of the questions
     */
    public static TypedValues read(Declaration declaration, String json) {
        JsonObject typed = object(json);
        EntryReader reader = new EntryReader("", Shelf.of(Optional.empty(), Stock.of(() -> Tables.of(List.of()))));
        Map<String, Entry.Answered> entries = reader.read(declaration.questions(), typed, "", List.of());
        Resolver resolver = new Resolver(
                "",
                link -> {
                    throw new IllegalStateException("nothing is linked here");
                },
                RangePick.NOMINAL);
        List<Remark> remarks = new ArrayList<>(reader.remarks());
        Optional<Values> values = resolver.resolve(declaration.questions(), entries);
        remarks.addAll(resolver.remarks());
        List<String> said = remarks.stream()
                .filter(Remark::stops)
                .map(remark -> remark.question() + ": " + words().what(remark))
                .toList();
        return new TypedValues(said.isEmpty() ? values : Optional.empty(), said);
    }

    private static JsonObject object(String json) {
        try {
            return (JsonObject) JsonText.read(json).root();
        } catch (JsonTrouble e) {
            throw new IllegalStateException("it was written by this program", e);
        }
    }

    private static Wording words() {
        return new Wording(Locale.ENGLISH, UnitSystem.METRIC);
    }
}
