package org.hidewright.window.start;

import java.util.List;
import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.hidewright.window.look.Inks;
import org.hidewright.window.model.DrawingFace;
import org.hidewright.window.model.Faces;
import org.hidewright.window.model.WorkPlace;
import org.hidewright.window.piece.LineKind;
import org.hidewright.window.piece.PieceView;
import org.hidewright.window.words.WindowTexts;

/** Samples beside each other, each with its name, what it shows, and a picture once that is worked out. */
final class SampleCards extends Composite {
    private static final int COLUMNS = 3;
    /** In heights of a line of text. */
    private static final int PICTURE = 6;

    private static final int WIDTH = 12;

    private final Inks inks;

    SampleCards(Composite parent, Inks inks) {
        super(parent, SWT.NONE);
        this.inks = inks;
        inks.dress(this, inks.palette().ink(), inks.palette().paper());
        GridLayout layout = new GridLayout(COLUMNS, true);
        layout.marginWidth = 0;
        layout.horizontalSpacing = 20;
        layout.verticalSpacing = 12;
        setLayout(layout);
    }

    /** @param opens opens one of them */
    void show(List<Sample> samples, WindowTexts texts, WorkPlace place, Consumer<Sample> opens) {
        Wording wording = new Wording(texts.language(), UnitSystem.METRIC);
        for (Sample sample : samples) {
            PieceView picture = card(sample, opens);
            place.work().execute(() -> {
                if (!isDisposed()) {
                    List<DrawingFace> piece = Faces.atOnce(
                                    place.bench().work(sample.project()), wording, List.of(), null)
                            .piece();
                    place.window().execute(() -> {
                        if (!picture.isDisposed()) {
                            picture.show(piece, "");
                        }
                    });
                }
            });
        }
    }

    private PieceView card(Sample sample, Consumer<Sample> opens) {
        Composite card = inks.dress(
                new Composite(this, SWT.NONE),
                inks.palette().ink(),
                inks.palette().paper());
        GridLayout layout = new GridLayout(2, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.horizontalSpacing = 10;
        card.setLayout(layout);
        card.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        PieceView picture = new PieceView(card, inks);
        picture.setEnabled(false); // to be looked at, not to be moved
        picture.setData("id", "start.picture");
        picture.likeness(true);
        List.of(LineKind.NAMES, LineKind.MEASURES, LineKind.DIRECTION, LineKind.OTHER)
                .forEach(kind -> picture.show(kind, false));
        GridData place = new GridData(SWT.LEFT, SWT.TOP, false, false, 1, 2);
        place.widthHint = PICTURE * inks.em();
        place.heightHint = PICTURE * inks.em();
        picture.setLayoutData(place);
        String name = sample.project().name();
        Link link = inks.words(
                card, name.isEmpty() ? String.valueOf(sample.file().getFileName()) : name, () -> opens.accept(sample));
        link.setData("id", "start.sample");
        link.setToolTipText(sample.file().toString());
        GridData title = new GridData(SWT.FILL, SWT.TOP, true, false);
        title.widthHint = WIDTH * inks.em();
        link.setLayoutData(title);
        Label about = inks.dress(
                new Label(card, SWT.WRAP),
                inks.palette().quiet(),
                inks.palette().paper());
        about.setText(sample.project().about().orElse("").replace("&", "&&"));
        GridData line = new GridData(SWT.FILL, SWT.TOP, true, true);
        line.widthHint = WIDTH * inks.em();
        about.setLayoutData(line);
        return picture;
    }
}
