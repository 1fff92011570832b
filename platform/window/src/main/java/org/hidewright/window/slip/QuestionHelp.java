package org.hidewright.window.slip;

import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.hidewright.api.drawing.Drawing;
import org.hidewright.core.picture.QuestionPicture;
import org.hidewright.core.work.WorkedSlip;
import org.hidewright.window.look.Inks;
import org.hidewright.window.model.OpenProject;
import org.hidewright.window.model.QuestionFace;

/** What a question means, in its line of help and a drawing of what it measures, right below it while it is asked for. */
final class QuestionHelp {
    private static final int STEP_IN = 12;
    private static final double SMALL = 0.85;

    private final Composite all;

    /** @param help the whole of it in words */
    QuestionHelp(Composite parent, Editing editing, String slip, QuestionFace face, String help) {
        Inks inks = editing.inks();
        all = inks.dress(
                new Composite(parent, SWT.NONE),
                inks.palette().ink(),
                inks.palette().paper());
        all.setData("id", slip + "/" + face.path() + "/help");
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = STEP_IN;
        layout.marginHeight = 2;
        all.setLayout(layout);
        all.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false, 2, 1));
        Label words = inks.dress(
                new Label(all, SWT.WRAP), inks.palette().quiet(), inks.palette().paper());
        words.setFont(inks.font(SMALL, false));
        words.setText(help);
        GridData wide = new GridData(SWT.FILL, SWT.TOP, true, false);
        wide.widthHint = 200;
        words.setLayoutData(wide);
        editing.links().flatMap(desk -> picture(desk.project(), slip, face)).ifPresent(drawing -> {
            PictureView picture = new PictureView(all, inks, drawing, face.label() + ": " + face.help());
            picture.setData("id", slip + "/" + face.path() + "/picture");
            picture.setLayoutData(new GridData(SWT.CENTER, SWT.TOP, true, false));
        });
    }

    private static Optional<Drawing> picture(OpenProject project, String slip, QuestionFace face) {
        return project.worked()
                .flatMap(known -> Optional.ofNullable(known.slips().get(slip)))
                .flatMap(WorkedSlip::installed)
                .flatMap(
                        installed -> QuestionPicture.drawn(installed.calculator(), face.question(), project.wording()));
    }

    Control control() {
        return all;
    }
}
