package org.hidewright.api.document;

import java.util.List;
import java.util.Objects;

/** A heading and what stands under it. */
public final class Section {
    private final String id;
    private final String title;
    private final boolean newPage;
    private final List<Block> blocks;

    private Section(String id, String title, boolean newPage, List<Block> blocks) {
        this.id = Objects.requireNonNull(id, "id");
        this.title = Objects.requireNonNull(title, "title");
        this.newPage = newPage;
        this.blocks = List.copyOf(blocks);
    }

    /**
     * A section.
     *
     * @param id stable key, the same in every language; of a contributed section it begins with the bundle's name
     * @param title heading; empty for none
     */
    public static Section of(String id, String title, List<? extends Block> blocks) {
        return new Section(id, title, false, List.copyOf(blocks));
    }

    public static Section of(String id, String title, Block... blocks) {
        return of(id, title, List.of(blocks));
    }

    /** The same section, begun on a page of its own. */
    public Section onNewPage() {
        return new Section(id, title, true, blocks);
    }

    public String id() {
        return id;
    }

    public String title() {
        return title;
    }

    public boolean startsPage() {
        return newPage;
    }

    public List<Block> blocks() {
        return blocks;
    }
}
