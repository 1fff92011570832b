package org.hidewright.core.jobcard;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.hidewright.api.document.Block;
import org.hidewright.api.document.Paragraph;
import org.hidewright.api.document.TickList;
import org.hidewright.api.item.Fitting;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Operation;
import org.hidewright.api.item.Part;
import org.hidewright.core.wording.ItemNames;
import org.hidewright.core.wording.Wording;

/** What is done to make an item, step by step, to tick off. */
final class WorkSteps {
    private final Item item;
    private final ItemNames names;
    private final Wording wording;

    /**
     * The steps of an item.
     *
     * @param item in the words of the maker’s language
     * @param names what its seams are called
     */
    WorkSteps(Item item, ItemNames names, Wording wording) {
        this.item = item;
        this.names = names;
        this.wording = wording;
    }

    /** None where the item says nothing of its making. */
    List<Block> blocks() {
        if (item.operations().isEmpty()) {
            return List.of();
        }
        return List.of(
                Paragraph.of(wording.host("work-order.title")),
                TickList.of(item.operations().stream()
                        .map(operation -> TickList.Step.of(operation.what(), detail(operation)))
                        .toList()));
    }

    private String detail(Operation operation) {
        List<String> said = new ArrayList<>();
        if (!operation.on().isEmpty()) {
            said.add(wording.host(
                    "work-order.on", operation.on().stream().map(this::name).collect(Collectors.joining(", "))));
        }
        if (!operation.tool().isEmpty()) {
            said.add(operation.tool());
        }
        operation.handsOn().ifPresent(time -> said.add(wording.host("work-order.hands-on", time)));
        operation.leastWait().ifPresent(time -> said.add(wording.host("work-order.wait", time)));
        operation.mostWait().ifPresent(time -> said.add(wording.host("work-order.wait-most", time)));
        return String.join("; ", said);
    }

    /** The part, fitting or seam of this id; there is one. */
    private String name(String id) {
        return item.part(id)
                .map(Part::name)
                .or(() -> item.fittings().stream()
                        .filter(fitting -> fitting.id().equals(id))
                        .map(Fitting::name)
                        .findFirst())
                .or(() -> item.seams().stream()
                        .filter(seam -> seam.id().equals(id))
                        .map(names::seam)
                        .findFirst())
                .orElseThrow();
    }
}
