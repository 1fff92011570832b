package org.hidewright.documents.page;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.document.Bars;
import org.hidewright.api.document.BigAnswer;
import org.hidewright.api.document.Block;
import org.hidewright.api.document.Checks;
import org.hidewright.api.document.Document;
import org.hidewright.api.document.Figure;
import org.hidewright.api.document.NoteSpace;
import org.hidewright.api.document.Paragraph;
import org.hidewright.api.document.PatternSheets;
import org.hidewright.api.document.Section;
import org.hidewright.api.document.Sources;
import org.hidewright.api.document.Table;
import org.hidewright.api.document.TickList;
import org.hidewright.api.document.Working;
import org.hidewright.core.paper.Paper;

/** A whole document on pages. */
public final class PageLayout {
    private final PageFrame frame;
    private final Typeface typeface;
    private final CheckSquares squares;
    private final List<List<Flow.Placed>> pages;

    public PageLayout(Document document, Paper paper, Typeface typeface) {
        this.typeface = typeface;
        this.frame = new PageFrame(typeface, document, paper);
        this.squares = new CheckSquares(typeface);
        List<Piece> pieces = new ArrayList<>(frame.title());
        document.sections().forEach(section -> pieces.addAll(section(section)));
        this.pages = Flow.fill(pieces, frame.bodyHeight());
    }

    public int pages() {
        return pages.size();
    }

    /** Draws a page, counted from 1. */
    public void draw(int page, Canvas canvas) {
        frame.draw(canvas, page, pages());
        for (Flow.Placed placed : pages.get(page - 1)) {
            placed.piece().draw(canvas, frame.left(), frame.bodyTop() + placed.top());
        }
    }

    private List<Piece> section(Section section) {
        List<Piece> pieces = new ArrayList<>();
        double headingHeight = 0;
        if (!section.title().isEmpty()) {
            PieceBuilder heading = new PieceBuilder(typeface);
            heading.text(section.title(), 0, 0, frame.width(), Style.HEADING);
            pieces.add(heading.build(9).keptWithNext());
            headingHeight = heading.bottom();
        }
        List<Block> blocks = section.blocks();
        for (int i = 0; i < blocks.size(); i++) {
            List<BigAnswer> answers = new ArrayList<>();
            while (i < blocks.size() && blocks.get(i) instanceof BigAnswer answer) {
                answers.add(answer);
                i++;
            }
            pieces.addAll(new AnswerLayout(typeface, frame.width()).pieces(answers));
            if (i < blocks.size()) {
                List<Piece> more = block(blocks.get(i), frame.bodyHeight() - headingHeight);
                boolean underHeading = i == 0 && !section.title().isEmpty() && blocks.size() > 1;
                boolean purpose = underHeading && blocks.get(0) instanceof Paragraph paragraph && paragraph.isQuiet();
                boolean beforeNotes = i + 1 < blocks.size() && blocks.get(i + 1) instanceof NoteSpace;
                boolean staysWithNext =
                        purpose || beforeNotes && blocks.get(i) instanceof Sources || introducesList(blocks, i);
                pieces.addAll(staysWithNext ? keptTogether(more) : more);
            }
        }
        if (section.startsPage() && !pieces.isEmpty()) {
            pieces.set(0, pieces.get(0).onNewPage());
        }
        return pieces;
    }

    /** Whether a block is the line that says what the steps or checks under it are. */
    private static boolean introducesList(List<Block> blocks, int i) {
        return blocks.get(i) instanceof Paragraph paragraph
                && !paragraph.isQuiet()
                && i + 1 < blocks.size()
                && (blocks.get(i + 1) instanceof TickList || blocks.get(i + 1) instanceof Checks);
    }

    /**
     * Pieces that do not stand alone: what a section is for, or the line above a list, at the foot of a page; room for notes
     * without the section they are about, at the head of one.
     */
    private static List<Piece> keptTogether(List<Piece> pieces) {
        return pieces.stream().map(Piece::keptWithNext).toList();
    }

    /** @param figureRoom how high a figure may be, so that the heading stays above it */
    private List<Piece> block(Block block, double figureRoom) {
        if (block instanceof Paragraph paragraph) {
            Style style = paragraph.isQuiet() ? Style.QUIET : Style.BODY;
            return new TextLayout(typeface, frame.width()).pieces(paragraph.text(), style, 3);
        }
        if (block instanceof Table table) {
            return new TableLayout(typeface, frame.width()).pieces(table);
        }
        if (block instanceof Bars bars) {
            return new BarsLayout(typeface, frame.width()).pieces(bars);
        }
        if (block instanceof Working working) {
            return new WorkingLayout(typeface, frame.width()).pieces(working);
        }
        if (block instanceof Sources sources) {
            return new WorkingLayout(typeface, frame.width()).pieces(sources);
        }
        if (block instanceof Checks checks) {
            return new CheckLayout(typeface, frame.width()).pieces(checks);
        }
        if (block instanceof TickList list) {
            return new StepLayout(typeface, frame.width()).pieces(list);
        }
        if (block instanceof NoteSpace space) {
            return new StepLayout(typeface, frame.width()).pieces(space);
        }
        if (block instanceof PatternSheets sheets) {
            return new PatternLayout(sheets, typeface, frame.width(), frame.bodyHeight(), squares).pieces();
        }
        return new FigureLayout(typeface, frame.width(), figureRoom, squares).pieces((Figure) block);
    }
}
