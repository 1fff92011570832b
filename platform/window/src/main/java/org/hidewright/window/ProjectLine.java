package org.hidewright.window;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.hidewright.window.look.Inks;
import org.hidewright.window.model.ProjectFace;
import org.hidewright.window.words.WindowTexts;

/** The line above a project: its name, how much there is to look at, the units, and what has just been told. */
final class ProjectLine extends Composite {
    /** In heights of a line of text. */
    private static final int TOLD_WIDTH = 14;

    private final Inks inks;
    private final WindowTexts texts;
    private final Label name;
    private final Link look;
    private final Link differs;
    private final Link units;
    private final Label told;
    private List<String> shown = List.of();

    /**
     * The line.
     *
     * @param settle sees to what differs from the workshop
     * @param reveal brings the next thing to look at into view
     * @param switchUnits from millimetres to inches and back
     */
    ProjectLine(
            Composite parent, Inks inks, WindowTexts texts, Runnable settle, Runnable reveal, Runnable switchUnits) {
        super(parent, SWT.NONE);
        this.inks = inks;
        this.texts = texts;
        inks.dress(this, inks.palette().ink(), inks.palette().paper());
        GridLayout layout = new GridLayout(5, false);
        layout.marginWidth = 12;
        layout.horizontalSpacing = 18;
        setLayout(layout);
        name = inks.dress(
                new Label(this, SWT.WRAP), inks.palette().ink(), inks.palette().paper());
        name.setFont(inks.font(1.25, true));
        name.setData("id", "project.name");
        look = inks.words(this, "", reveal);
        look.setData("id", "project.look");
        differs = inks.words(this, "", settle);
        differs.setData("id", "project.differs");
        differs.setLayoutData(new GridData());
        told = inks.dress(
                new Label(this, SWT.WRAP),
                inks.palette().quiet(),
                inks.palette().paper());
        told.setData("id", "project.told");
        GridData rest = new GridData(SWT.FILL, SWT.CENTER, true, false);
        rest.widthHint = TOLD_WIDTH * inks.em();
        told.setLayoutData(rest);
        units = inks.words(this, "", switchUnits);
        units.setData("id", "project.units");
        units.setToolTipText(texts.text("project.units.help"));
    }

    /** Shows how a project stands. */
    void show(ProjectFace face, String fileName, boolean unsaved) {
        String title = (face.name().isEmpty() ? fileName : face.name()) + (unsaved ? " *" : "");
        long urgent = face.urgent();
        String toLookAt = face.slips().isEmpty()
                ? texts.text("project.empty")
                : urgent == 0 ? texts.text("project.well") : texts.many("project.look", urgent);
        String unit = texts.text(face.inches() ? "project.to-mm" : "project.to-inches");
        String other = face.differs().isEmpty()
                ? ""
                : texts.many("project.differs", face.differs().size());
        List<String> said = List.of(title, toLookAt, unit, other);
        if (!said.equals(shown)) {
            shown = said;
            name.setText(title);
            Inks.say(look, toLookAt);
            inks.colour(
                    look, urgent == 0 ? inks.palette().quiet() : inks.palette().warning());
            Inks.say(differs, other);
            differs.setVisible(!other.isEmpty());
            ((GridData) differs.getLayoutData()).exclude = other.isEmpty();
            Inks.say(units, unit);
            fit();
        }
    }

    /** Texts may take another number of lines. */
    private void fit() {
        layout();
        if (computeSize(Math.max(1, getSize().x), SWT.DEFAULT).y != getSize().y) {
            getParent().layout();
        }
    }

    /** Tells something that needs no answer. */
    void tell(String text) {
        told.setText(text);
        fit();
    }
}
