package org.hidewright.window.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.layout.RowData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.hidewright.api.measure.Length;
import org.hidewright.core.wording.Wording;
import org.hidewright.window.look.Inks;
import org.hidewright.window.look.Mnemonics;
import org.hidewright.window.look.Spoken;
import org.hidewright.window.look.Tools;
import org.hidewright.window.model.DrawingFace;
import org.hidewright.window.model.ProjectFace;
import org.hidewright.window.model.SlipFace;
import org.hidewright.window.words.WindowTexts;

/** The drawings of a project: which of them is shown, how large, with which lines; and what is pointed at. */
public final class PieceBar extends Composite {
    /** From one size to the next. */
    public static final double STEP = 1.25;
    /** In heights of a line of text. */
    private static final int WHICH_WIDTH = 11;

    private final WindowTexts texts;
    private final PieceView view;
    private final Combo which;
    private final Link likeness;
    private final Label told;
    private List<SlipFace> drawn = List.of();
    private List<DrawingFace> piece = List.of();
    /** What is said where there is no piece to be seen. */
    private String noPiece = "";

    /** Id of the slip whose drawings are shown; empty for the piece itself. */
    private String chosen = "";

    private Wording wording;

    public PieceBar(Composite parent, Inks inks, WindowTexts texts, Wording wording) {
        super(parent, SWT.NONE);
        this.texts = texts;
        this.wording = wording;
        inks.dress(this, inks.palette().ink(), inks.palette().paper());
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        setLayout(layout);
        Tools tools = new Tools(this, inks).atEdge();
        which = new Combo(tools, SWT.READ_ONLY);
        which.setLayoutData(new RowData());
        which.setData("id", "drawing.which");
        which.addListener(SWT.Selection, event -> choose());
        Spoken.name(which, () -> texts.text("drawing.which"));
        Spoken.tell(which);
        addListener(SWT.Resize, event -> wide());
        tool(tools, "fit", this::fit);
        tool(tools, "true-size", this::trueSize);
        tool(tools, "larger", this::larger);
        tool(tools, "smaller", this::smaller);
        Link lines = tool(tools, "lines", () -> {});
        Menu menu = linesMenu(lines);
        lines.addListener(SWT.Selection, event -> menu.setVisible(true));
        likeness = tool(tools, "likeness", this::likeness);
        Composite paper = new Composite(this, SWT.NONE);
        paper.setLayout(new FillLayout());
        paper.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        view = new PieceView(paper, inks);
        view.setData("id", "drawing");
        told = inks.dress(
                new Label(this, SWT.WRAP),
                inks.palette().quiet(),
                inks.palette().paper());
        told.setData("id", "drawing.told");
        GridData below = new GridData(SWT.FILL, SWT.BOTTOM, true, false);
        below.widthHint = WHICH_WIDTH * inks.em();
        below.horizontalIndent = Tools.EDGE;
        told.setLayoutData(below);
        view.tells(this::tell, this::met, this::length, this::tellSize);
        tell("");
    }

    private Link tool(Tools tools, String key, Runnable does) {
        Link link = tools.words(texts.text("drawing." + key), "drawing." + key, does);
        link.setToolTipText(texts.text("drawing." + key + ".help"));
        return link;
    }

    private Menu linesMenu(Link parent) {
        Menu menu = new Menu(parent);
        for (LineKind kind : LineKind.values()) {
            MenuItem item = new MenuItem(menu, SWT.CHECK);
            item.setText(texts.text("drawing." + kind.name().toLowerCase(Locale.ROOT)));
            item.setData("id", "drawing.lines." + kind.name().toLowerCase(Locale.ROOT));
            item.setSelection(true);
            item.addListener(SWT.Selection, event -> view.show(kind, item.getSelection()));
        }
        Mnemonics.give(menu);
        parent.setMenu(menu);
        return menu;
    }

    /** Shows the drawings of a project as they are now. */
    public void show(ProjectFace face, Wording words) {
        if (wording.inches() != words.inches()) {
            tell("");
            view.redraw(); // what was measured is written in other units
        }
        wording = words;
        view.about(texts.text("drawing.told-keys.help") + " "
                + (face.urgent() == 0 ? texts.text("project.well") : texts.many("project.look", face.urgent())));
        drawn = face.slips().stream().filter(slip -> !slip.drawings().isEmpty()).toList();
        piece = face.piece();
        noPiece = face.unmade()
                .map(slip -> texts.text("drawing.unmade.help", slip.title()))
                .orElseGet(() -> texts.text("drawing.nothing.help"));
        List<String> titles = new ArrayList<>();
        titles.add(texts.text("drawing.piece"));
        drawn.forEach(slip -> titles.add(slip.title()));
        if (!titles.equals(List.of(which.getItems()))) {
            which.setItems(titles.toArray(String[]::new));
            wide();
            layout(true, true); // the tools may need another row
        }
        List<String> ids = drawn.stream().map(SlipFace::id).toList();
        int index = ids.indexOf(chosen) + 1;
        if (which.getSelectionIndex() != index) {
            which.select(index);
        }
        draw(index);
    }

    /** As wide as the longest title, but not wider than there is room. */
    private void wide() {
        int wanted = which.computeSize(SWT.DEFAULT, SWT.DEFAULT).x;
        int room = getClientArea().width - 2 * Tools.EDGE;
        ((RowData) which.getLayoutData()).width = room > 0 ? Math.min(wanted, room) : wanted;
    }

    private void choose() {
        int index = which.getSelectionIndex();
        chosen = index <= 0 ? "" : drawn.get(index - 1).id();
        draw(index);
        fit();
    }

    private void draw(int index) {
        view.show(index <= 0 ? piece : drawn.get(index - 1).drawings(), noPiece);
    }

    /** Shows the drawings of one slip, or of the piece where the id is empty. */
    public void choose(String slip) {
        List<String> ids = drawn.stream().map(SlipFace::id).toList();
        which.select(ids.indexOf(slip) + 1);
        choose();
    }

    public void fit() {
        view.fit();
        tell("");
    }

    /** In true size; where nobody has measured the screen, what the system says of it counts. */
    public void trueSize() {
        view.trueSize();
        tell(texts.text("drawing.told-true-size.help"));
    }

    public void larger() {
        view.zoom(STEP);
    }

    public void smaller() {
        view.zoom(1 / STEP);
    }

    private void tellSize() {
        tell(texts.text("drawing.told-size.help", Math.round(100 * view.factor())));
    }

    /** From lines to the likeness in leather, and back. */
    public void likeness() {
        view.likeness(!view.isLikeness());
        Inks.say(likeness, texts.text(view.isLikeness() ? "drawing.outlines" : "drawing.likeness"));
        layout(true, true);
    }

    private String length(double mm) {
        return wording.drawn(Length.ofMm(mm));
    }

    private void met(Pointing.Met found) {
        if (found == null) {
            return;
        }
        String role = texts.text(
                "role." + found.role().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        tell(texts.text(
                found.round() ? "drawing.told-round.help" : "drawing.told-line.help", role, length(found.mm())));
    }

    private void tell(String text) {
        told.setText(text.isEmpty() ? texts.text("drawing.told-how.help") : text);
        if (told.computeSize(Math.max(1, told.getSize().x), SWT.DEFAULT).y > told.getSize().y) {
            layout(); // it gets more room when it needs more; nothing jumps when it needs less
        }
    }

    public PieceView view() {
        return view;
    }
}
