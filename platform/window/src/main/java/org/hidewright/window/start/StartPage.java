package org.hidewright.window.start;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.hidewright.window.look.Inks;
import org.hidewright.window.words.WindowTexts;

/** What is shown while no project is open. */
public final class StartPage extends Composite {
    private final Inks inks;

    /**
     * A page to begin at.
     *
     * @param recent projects opened before, the latest first
     * @param opens opens one of them
     * @param open asks for a project and opens it
     * @param begin begins a new one
     */
    public StartPage(
            Composite parent,
            Inks inks,
            WindowTexts texts,
            List<Path> recent,
            Consumer<Path> opens,
            Runnable open,
            Runnable begin) {
        super(parent, SWT.NONE);
        this.inks = inks;
        inks.dress(this, inks.palette().ink(), inks.palette().paper());
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = 48;
        layout.marginHeight = 36;
        layout.verticalSpacing = 10;
        setLayout(layout);
        line(texts.text("start.head"), 1.8, true);
        line(texts.text("start.head.help"), 1, false);
        inks.words(this, texts.text("start.open"), open).setData("id", "start.open");
        inks.words(this, texts.text("start.new"), begin).setData("id", "start.new");
        List<Path> there = recent.stream().filter(Files::isRegularFile).toList();
        if (!there.isEmpty()) {
            line(texts.text("start.recent"), 1.1, true);
            for (Path project : there) {
                Link link = inks.words(this, String.valueOf(project.getFileName()), () -> opens.accept(project));
                link.setData("id", "start.recent");
                link.setToolTipText(project.toString());
            }
        }
    }

    private void line(String text, double larger, boolean bold) {
        Label label = inks.dress(
                new Label(this, SWT.WRAP), inks.palette().ink(), inks.palette().paper());
        label.setFont(inks.font(larger, bold));
        label.setText(text);
        label.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
    }
}
