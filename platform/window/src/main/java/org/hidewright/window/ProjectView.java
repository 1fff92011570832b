package org.hidewright.window;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.hidewright.window.look.Inks;
import org.hidewright.window.model.OpenProject;
import org.hidewright.window.model.ProjectFace;
import org.hidewright.window.piece.PieceView;
import org.hidewright.window.slip.SlipBoard;

/** A project: the piece lies across the top as on a bench, the slips stand below it side by side. */
final class ProjectView extends Composite {
    private static final int[] SHARES = {38, 62};

    private final PieceView piece;
    private final SlipBoard board;

    ProjectView(Composite parent, Inks inks, OpenProject project) {
        super(parent, SWT.NONE);
        setLayout(new FillLayout());
        SashForm sash = inks.dress(
                new SashForm(this, SWT.VERTICAL),
                inks.palette().ink(),
                inks.palette().board());
        piece = new PieceView(sash, inks);
        board = new SlipBoard(sash, inks, project);
        sash.setWeights(SHARES);
    }

    void show(ProjectFace face) {
        board.show(face);
        piece.show(face.piece());
    }

    SlipBoard board() {
        return board;
    }

    PieceView piece() {
        return piece;
    }
}
