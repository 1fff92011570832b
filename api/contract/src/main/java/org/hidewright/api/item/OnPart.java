package org.hidewright.api.item;

/**
 * Something on a part: one of its stitch lines, holes, folds or edges.
 *
 * @param part id of the part
 * @param id of what is on it
 */
public record OnPart(String part, String id) {
    /** Neither is empty. */
    public OnPart {
        Ids.of(part);
        Ids.of(id);
    }

    /** As links write it: {@code part.id}. */
    @Override
    public String toString() {
        return part + "." + id;
    }
}
