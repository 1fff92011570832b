package org.hidewright.api.document;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/** A whole document: what stands on every page, and its sections in order. */
public final class Document {
    private final String title;
    private final String project;
    private final List<String> meta;
    private final LocalDate date;
    private final String dateText;
    private final String pageText;
    private final Locale language;
    private final List<Section> sections;

    private Document(Builder from) {
        title = from.title;
        project = from.project;
        meta = List.copyOf(from.meta);
        date = Objects.requireNonNull(from.date, "date");
        dateText = from.dateText;
        pageText = from.pageText;
        language = from.language;
        sections = List.copyOf(from.sections);
    }

    /**
     * Starts a document.
     *
     * @param project name of the project, on every page
     * @param title what this document is, on every page
     */
    public static Builder of(String project, String title) {
        return new Builder(project, title);
    }

    /** What stands at its head. */
    public String title() {
        return title;
    }

    /** The name of the project it is of. */
    public String project() {
        return project;
    }

    /** Lines under the title of the first page. */
    public List<String> meta() {
        return meta;
    }

    /** The day it was made; the only clock a writer may use. */
    public LocalDate date() {
        return date;
    }

    /** The day as the reader writes it. */
    public String dateText() {
        return dateText;
    }

    /** "Page 2 of 5" in the reader's language. */
    public String pageText(int page, int pages) {
        return pageText.replace("{0}", Integer.toString(page)).replace("{1}", Integer.toString(pages));
    }

    /** The language it is written in. */
    public Locale language() {
        return language;
    }

    /** In the order they are printed. */
    public List<Section> sections() {
        return sections;
    }

    /** Not for use by several threads. */
    public static final class Builder {
        private final String project;
        private final String title;
        private final List<String> meta = new ArrayList<>();
        private final List<Section> sections = new ArrayList<>();
        private LocalDate date;
        private String dateText;
        private String pageText = "{0} / {1}";
        private Locale language = Locale.ENGLISH;

        private Builder(String project, String title) {
            this.project = Objects.requireNonNull(project, "project");
            this.title = Objects.requireNonNull(title, "title");
        }

        /** Adds a line under the title of the first page. */
        public Builder meta(String line) {
            meta.add(Objects.requireNonNull(line, "line"));
            return this;
        }

        /** Required: the day, and the same as the reader writes it. */
        public Builder dated(LocalDate day, String text) {
            date = Objects.requireNonNull(day, "day");
            dateText = Objects.requireNonNull(text, "text");
            return this;
        }

        /** Wording of the page number with <code>{0}</code> for the page and <code>{1}</code> for their number. */
        public Builder pageText(String pattern) {
            if (!pattern.contains("{0}") || !pattern.contains("{1}")) {
                throw new IllegalArgumentException("a page text needs {0} and {1}: " + pattern);
            }
            pageText = pattern;
            return this;
        }

        /** Language of the texts; English unless said. */
        public Builder language(Locale locale) {
            language = Objects.requireNonNull(locale, "locale");
            return this;
        }

        /** Adds a section behind the others. */
        public Builder section(Section section) {
            sections.add(Objects.requireNonNull(section, "section"));
            return this;
        }

        /** Adds sections behind the others, in their order. */
        public Builder sections(List<Section> more) {
            more.forEach(this::section);
            return this;
        }

        /** @throws NullPointerException if no date was given */
        public Document build() {
            return new Document(this);
        }
    }
}
