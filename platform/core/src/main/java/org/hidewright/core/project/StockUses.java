package org.hidewright.core.project;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.hidewright.core.json.JsonNode;
import org.hidewright.core.json.JsonNode.JsonArray;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonNode.Member;
import org.hidewright.core.workshop.StockLink;

/** Where a project takes something from the workshop, as it is written down: without working anything out. */
public final class StockUses {
    private final List<Use> uses = new ArrayList<>();

    private StockUses() {}

    /**
     * A question that takes something.
     *
     * @param path where it stands on the slip
     */
    public record Use(Slip slip, AnswerPath path, StockLink link) {}

    /** Every question that takes something, in the order of the file. */
    public static List<Use> of(Project project) {
        StockUses found = new StockUses();
        for (Slip slip : project.slips()) {
            slip.questions().members().forEach((key, member) -> found.look(slip, AnswerPath.of(key), member.value()));
        }
        return List.copyOf(found.uses);
    }

    private void look(Slip slip, AnswerPath path, JsonNode node) {
        StockLink.in(node).ifPresent(link -> uses.add(new Use(slip, path, link)));
        if (node instanceof JsonObject object) {
            for (Map.Entry<String, Member> member : object.members().entrySet()) {
                look(slip, path.key(member.getKey()), member.getValue().value());
            }
        } else if (node instanceof JsonArray array) {
            for (int i = 0; i < array.items().size(); i++) {
                if (array.items().get(i) instanceof JsonObject row) {
                    look(slip, path.row(AnswerEdit.idOf(row, i)), row);
                }
            }
        }
    }
}
