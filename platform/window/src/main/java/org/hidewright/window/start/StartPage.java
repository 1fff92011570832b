package org.hidewright.window.start;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.hidewright.window.look.Inks;
import org.hidewright.window.look.Tools;
import org.hidewright.window.model.WorkPlace;
import org.hidewright.window.words.WindowTexts;

/** What is shown while no project is open: ways to begin, what was opened lately, and samples. */
public final class StartPage extends Composite {
    private final Inks inks;
    private final ScrolledComposite scrolled;
    private final Composite all;

    /**
     * Ways to a project.
     *
     * @param begin asks for one in steps
     * @param opens opens one of those that were opened before
     * @param open asks for one and opens it
     * @param empty begins one without a slip
     * @param sample opens a copy of a sample
     */
    public record Ways(Runnable begin, Consumer<Path> opens, Runnable open, Runnable empty, Consumer<Sample> sample) {}

    /**
     * A page to begin at.
     *
     * @param recent projects opened before, the latest first
     * @param samples the folder of the samples; need not be there
     */
    public StartPage(
            Composite parent,
            Inks inks,
            WindowTexts texts,
            List<Path> recent,
            Ways ways,
            WorkPlace place,
            Path samples) {
        super(parent, SWT.NONE);
        this.inks = inks;
        setLayout(new FillLayout());
        scrolled = inks.dress(
                new ScrolledComposite(this, SWT.V_SCROLL),
                inks.palette().ink(),
                inks.palette().paper());
        scrolled.setExpandHorizontal(true);
        scrolled.setExpandVertical(true);
        scrolled.setShowFocusedControl(true);
        all = inks.dress(
                new Composite(scrolled, SWT.NONE),
                inks.palette().ink(),
                inks.palette().paper());
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = 48;
        layout.marginHeight = 36;
        layout.verticalSpacing = 10;
        all.setLayout(layout);
        line(texts.text("start.head"), 1.8, true);
        line(texts.text("start.head.help"), 1, false);
        Link begin = inks.words(all, texts.text("start.begin"), ways.begin());
        begin.setData("id", "start.begin");
        begin.setFont(inks.font(1.25, true));
        Tools others = new Tools(all, inks);
        others.words(texts.text("start.open"), "start.open", ways.open());
        others.words(texts.text("start.new"), "start.new", ways.empty());
        List<Path> there = recent.stream().filter(Files::isRegularFile).toList();
        if (!there.isEmpty()) {
            line(texts.text("start.recent"), 1.1, true);
            for (Path project : there) {
                Link link = inks.words(
                        all,
                        String.valueOf(project.getFileName()),
                        () -> ways.opens().accept(project));
                link.setData("id", "start.recent");
                link.setToolTipText(project.toString());
            }
        }
        List<Sample> found = Sample.in(samples, texts.language());
        if (!found.isEmpty()) {
            line(texts.text("start.samples"), 1.1, true);
            line(texts.text("start.samples.help"), 1, false);
            SampleCards cards = new SampleCards(all, inks);
            cards.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
            cards.show(found, texts, place, ways.sample());
        }
        scrolled.setContent(all);
        scrolled.addListener(
                SWT.Resize,
                event ->
                        scrolled.setMinSize(all.computeSize(Math.max(1, scrolled.getClientArea().width), SWT.DEFAULT)));
        begin.setFocus();
    }

    private void line(String text, double larger, boolean bold) {
        Label label = inks.dress(
                new Label(all, SWT.WRAP), inks.palette().ink(), inks.palette().paper());
        label.setFont(inks.font(larger, bold));
        label.setText(text);
        label.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
    }
}
