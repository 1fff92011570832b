package org.hidewright.window.begin;

import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.wording.Wording;
import org.hidewright.window.look.Inks;
import org.hidewright.window.words.WindowTexts;

/** Whether a size is told by measures or by the name of a thing. */
final class GivenChoice {
    private static final int STEP_IN = 24;
    /** In heights of a line of text. */
    private static final int WIDTH = 14;

    /** @param chosen called with whether it is told by name */
    GivenChoice(
            Composite parent,
            Inks inks,
            WindowTexts texts,
            Wording wording,
            Installed giver,
            boolean byName,
            Consumer<Boolean> chosen) {
        Composite both = inks.dress(
                new Composite(parent, SWT.NONE),
                inks.palette().ink(),
                inks.palette().paper());
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = 0;
        both.setLayout(layout);
        both.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        String names = giver.calculator().declaration().questions().stream()
                .flatMap(question -> question.variants().stream())
                .map(variant -> wording.text(giver.calculator().texts(), variant.labelKey()))
                .collect(Collectors.joining(", "));
        Button measured = button(both, inks, texts.text("begin.measured"), !byName);
        measured.setData("id", "begin.measured");
        Button named = button(both, inks, PiecePane.title(giver, wording), byName);
        named.setData("id", "begin.named");
        named.setToolTipText(names);
        Label purpose = inks.dress(
                new Label(both, SWT.WRAP),
                inks.palette().quiet(),
                inks.palette().paper());
        purpose.setText(PiecePane.purpose(giver, wording));
        GridData below = new GridData(SWT.FILL, SWT.TOP, true, false);
        below.horizontalIndent = STEP_IN;
        below.widthHint = WIDTH * inks.em();
        purpose.setLayoutData(below);
        named.addListener(SWT.Selection, event -> {
            if (named.getSelection() != byName) {
                chosen.accept(named.getSelection());
            }
        });
    }

    private static Button button(Composite parent, Inks inks, String text, boolean on) {
        Button button = inks.dress(
                new Button(parent, SWT.RADIO),
                inks.palette().ink(),
                inks.palette().paper());
        button.setText(text.replace("&", "&&"));
        button.setSelection(on);
        button.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        return button;
    }
}
