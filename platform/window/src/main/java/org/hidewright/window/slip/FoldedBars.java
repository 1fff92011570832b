package org.hidewright.window.slip;

import java.util.List;
import org.eclipse.swt.widgets.Composite;
import org.hidewright.api.document.Bars;
import org.hidewright.window.look.Inks;
import org.hidewright.window.words.WindowTexts;

/** Bars that are folded away under words that open them. */
final class FoldedBars {
    private final Fold<BarsPane> fold;
    private final String title;
    private List<Bars> bars = List.of();

    /** @param changed called when it was opened or folded, since it then takes another height */
    FoldedBars(Composite parent, Inks inks, WindowTexts texts, String id, Runnable changed) {
        this.title = texts.text("slip.bars");
        fold = new Fold<>(parent, inks, texts, id, in -> new BarsPane(in, inks), () -> {
            apply();
            changed.run();
        });
        fold.body().setData("id", id + ".bars");
        apply();
    }

    /** Shows bars, or nothing where there are none; whether that takes another height than before. */
    boolean show(List<Bars> shown) {
        if (shown.equals(bars)) {
            return false;
        }
        boolean other = bars.isEmpty() != shown.isEmpty();
        bars = shown;
        return apply() || other;
    }

    private boolean apply() {
        boolean taller = fold.body().show(fold.isOpen() ? bars : List.of());
        fold.show(title, !bars.isEmpty());
        return taller;
    }
}
