package org.hidewright.core.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.hidewright.api.calculator.Notice;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.json.JsonNode;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonNode.Member;
import org.hidewright.core.json.JsonNotices;
import org.hidewright.core.json.Place;
import org.hidewright.core.project.ProjectNotices;
import org.hidewright.core.wording.Remark;

/** What is said of the entries of a slip: what is wrong, of which question, and where in the file. */
final class EntryRemarks {
    private final String slip;
    private final List<Remark> all = new ArrayList<>();
    private boolean inPreset;

    EntryRemarks(String slip) {
        this.slip = slip;
    }

    List<Remark> all() {
        return all;
    }

    /** Whether a preset is being read, which stands at no place of the file. */
    boolean inPreset() {
        return inPreset;
    }

    void inPreset(boolean now) {
        inPreset = now;
    }

    Place place(JsonNode node) {
        return place(node.place());
    }

    Place place(Place written) {
        return inPreset ? null : written;
    }

    void unknownKey(Map.Entry<String, Member> member, List<String> known, String path) {
        String key = member.getKey();
        say(
                JsonNotices.unknownKey(key, known),
                below(path, key),
                place(member.getValue().place()));
    }

    /** A key that has to be there, written as another: one thing to mend, told once. */
    Entry misspelt(JsonObject typed, String written, String meant, String path) {
        return bad(
                ProjectNotices.MISSPELT_KEY.with(written, meant),
                below(path, written),
                place(typed.members().get(written).place()));
    }

    Entry wrongShape(String key, String shape, String path, JsonNode node) {
        return bad(JsonNotices.wrongShape(key, shape, node), path, place(node));
    }

    Entry bad(Notice notice, String path, Place place) {
        say(notice, path, place);
        return new Entry.Bad();
    }

    private void say(Notice notice, String path, Place place) {
        say(Remark.of(notice, CoreTexts.TEXTS), path, place);
    }

    void say(Remark remark, String path, Place place) {
        all.add(remark.onSlip(slip).atQuestion(path).atPlace(place));
    }

    static String below(String path, String key) {
        return path.isEmpty() ? key : path + "." + key;
    }
}
