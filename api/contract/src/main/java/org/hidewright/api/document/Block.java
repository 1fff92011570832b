package org.hidewright.api.document;

/** One thing under a heading. */
public sealed interface Block
        permits Paragraph,
                BigAnswer,
                Table,
                Working,
                Checks,
                Sources,
                Figure,
                Bars,
                PatternSheets,
                TickList,
                NoteSpace {}
