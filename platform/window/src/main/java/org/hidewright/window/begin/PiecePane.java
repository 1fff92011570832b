package org.hidewright.window.begin;

import java.text.Collator;
import java.util.Comparator;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.List;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.wording.Wording;
import org.hidewright.window.look.Inks;
import org.hidewright.window.look.Spoken;
import org.hidewright.window.model.ProjectFace;

/** Which piece is made: the templates by their titles, and below them what the chosen one is for. */
final class PiecePane implements StepPane {
    /** In heights of a line of text. */
    private static final int PURPOSE_WIDTH = 16;

    private final java.util.List<Installed> templates;
    private final List list;
    private final Label purpose;
    private final Wording wording;

    /**
     * What there is to choose from.
     *
     * @param name of the question
     * @param chosen called with another template when it is chosen
     */
    PiecePane(
            Composite parent,
            Inks inks,
            String name,
            Wording wording,
            java.util.List<Installed> templates,
            Installed now,
            Consumer<Installed> chosen) {
        this.wording = wording;
        this.templates = sorted(templates, wording);
        list = new List(parent, SWT.SINGLE | SWT.BORDER | SWT.H_SCROLL | SWT.V_SCROLL);
        list.setData("id", "begin.piece");
        list.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        this.templates.forEach(template -> list.add(title(template, wording)));
        list.select(this.templates.stream().map(Installed::id).toList().indexOf(now.id()));
        purpose = inks.dress(
                new Label(parent, SWT.WRAP),
                inks.palette().quiet(),
                inks.palette().paper());
        GridData below = new GridData(SWT.FILL, SWT.TOP, true, false);
        below.widthHint = PURPOSE_WIDTH * inks.em();
        purpose.setLayoutData(below);
        Spoken.name(list, () -> name);
        Spoken.about(list, purpose::getText);
        tell();
        list.addListener(SWT.Selection, event -> {
            tell();
            chosen.accept(template());
        });
    }

    /** By title, as the language sorts. */
    static java.util.List<Installed> sorted(java.util.List<Installed> templates, Wording wording) {
        return templates.stream()
                .sorted(Comparator.comparing(
                        template -> title(template, wording), Collator.getInstance(wording.language())))
                .toList();
    }

    static String title(Installed calculator, Wording wording) {
        return wording.text(
                calculator.calculator().texts(),
                calculator.calculator().declaration().titleKey());
    }

    static String purpose(Installed calculator, Wording wording) {
        return wording.text(
                calculator.calculator().texts(),
                calculator.calculator().declaration().purposeKey());
    }

    private Installed template() {
        return templates.get(Math.max(0, list.getSelectionIndex()));
    }

    private void tell() {
        purpose.setText(purpose(template(), wording));
        Spoken.tell(list);
        purpose.getParent().layout();
    }

    @Override
    public boolean show(ProjectFace face) {
        return false;
    }
}
