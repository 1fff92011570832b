package org.hidewright.api.document;

import java.util.List;
import java.util.Objects;

/** A heading and what stands under it. */
public final class Section {
    private final String id;
    private final String title;
    private final boolean newPage;
    private final boolean apart;
    private final List<Block> blocks;

    private Section(String id, String title, boolean newPage, boolean apart, List<Block> blocks) {
        this.id = Objects.requireNonNull(id, "id");
        this.title = Objects.requireNonNull(title, "title");
        this.newPage = newPage;
        this.apart = apart;
        this.blocks = List.copyOf(blocks);
    }

    /**
     * A section.
     *
     * @param id stable key, the same in every language; of a contributed section it begins with the bundle's name
     * @param title heading; empty for none
     */
    public static Section of(String id, String title, List<? extends Block> blocks) {
        return new Section(id, title, false, false, List.copyOf(blocks));
    }

    /** A section of blocks, in their order. */
    public static Section of(String id, String title, Block... blocks) {
        return of(id, title, List.of(blocks));
    }

    /** The same section, begun on a page of its own. */
    public Section onNewPage() {
        return new Section(id, title, true, apart, blocks);
    }

    /**
     * The same section as a document of its own beside the job card, such as a quote that a customer is handed. Its file
     * is named by what stands in the id after the last point, in small letters, digits and hyphens; its title is the
     * document's.
     */
    public Section apart() {
        return new Section(id, title, newPage, true, blocks);
    }

    /** Its key, the same in every language; of a contributed section it begins with the bundle’s name. */
    public String id() {
        return id;
    }

    /** What stands over it. */
    public String title() {
        return title;
    }

    /** Whether it begins on a new page. */
    public boolean startsPage() {
        return newPage;
    }

    /** Whether it is a document of its own beside the job card. */
    public boolean standsApart() {
        return apart;
    }

    /** In the order they are printed. */
    public List<Block> blocks() {
        return blocks;
    }
}
