package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Link;
import org.hidewright.api.document.Bars;
import org.hidewright.api.document.JobView;
import org.hidewright.api.document.Section;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.catalogue.Contributor;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.workshop.Tables;
import org.hidewright.window.kit.Nets;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What bundles put on their papers as bars, beside the answers of the slip they are of. */
class BarsWindowTest {
    @TempDir
    Path folder;

    private RealWindow real;

    @BeforeEach
    void open() throws Exception {
        real = RealWindow.at(folder.resolve("settings"), new WithBars(Nets.catalogue()), Nets.bag(folder));
    }

    @AfterEach
    void close() {
        real.close();
    }

    private Canvas bars() {
        return real.find(Canvas.class, "roll/bars.bars");
    }

    @Test
    void theyAreFoldedAwayUntilTheyAreAskedFor() {
        assertFalse(bars().getVisible());
        real.press("roll/bars");
        assertTrue(bars().getVisible());
        assertTrue(bars().getSize().y > 3 * 10, "two bars and what they show: " + bars().getSize());
    }

    @Test
    void aSlipOfWhichNoBundleShowsBarsHasNoneToOpen() {
        assertFalse(real.find(Link.class, "bag/bars").getVisible());
    }

    @Test
    void theArrowKeysTellOneBarAfterTheOther() {
        real.press("roll/bars");
        bars().setFocus();
        bars().notifyListeners(SWT.FocusIn, new Event());
        assertEquals("Length: 100.0\u00A0mm\nRoll in bars", bars().getToolTipText());
        key(SWT.ARROW_DOWN);
        assertEquals("Waste: none\nRoll in bars", bars().getToolTipText());
        key(SWT.ARROW_DOWN);
        assertEquals("Waste: none\nRoll in bars", bars().getToolTipText(), "the last stays");
        key(SWT.HOME);
        assertEquals("Length: 100.0\u00A0mm\nRoll in bars", bars().getToolTipText());
    }

    @Test
    void whatIsPointedAtIsTold() {
        real.press("roll/bars");
        Event above = new Event();
        above.y = 1;
        bars().notifyListeners(SWT.MouseMove, above);
        assertTrue(Optional.ofNullable(bars().getToolTipText()).orElse("").isEmpty(), "what they show is no bar");
        Event last = new Event();
        last.y = bars().getSize().y - 6;
        bars().notifyListeners(SWT.MouseMove, last);
        assertEquals("Waste: none\nRoll in bars", bars().getToolTipText());
    }

    @Test
    void theyFollowWhatIsTyped() {
        real.press("roll/bars");
        real.type("roll/round", "70 mm");
        bars().notifyListeners(SWT.FocusIn, new Event());
        assertEquals("Length: 140.0\u00A0mm\nRoll in bars", bars().getToolTipText());
        real.type("roll/round", "2 sheep");
        assertFalse(real.find(Link.class, "roll/bars").getVisible(), "nothing is worked out, so nothing is shown");
    }

    private void key(int code) {
        Event key = new Event();
        key.keyCode = code;
        bars().notifyListeners(SWT.KeyDown, key);
    }

    /** Shows the length of every cord as a bar; another bundle beside it fails. */
    private record WithBars(Catalogue of) implements Catalogue {
        @Override
        public Optional<Installed> find(String id) {
            return of.find(id);
        }

        @Override
        public List<String> ids() {
            return of.ids();
        }

        @Override
        public Tables tables() {
            return of.tables();
        }

        @Override
        public List<Contributor> contributors() {
            return List.of(
                    new Contributor("org.example.none", job -> null), new Contributor("org.example.bars", this::bars));
        }

        private List<?> bars(JobView job) {
            return job.worked("cord").stream()
                    .map(cord -> {
                        JobView.Answer length = cord.answers().get("length");
                        return Section.of(
                                "org.example.bars." + cord.id(),
                                cord.title(),
                                List.of(Bars.of(
                                        cord.title() + " in bars",
                                        List.of(
                                                Bars.Bar.of(
                                                        "Length",
                                                        length.number().orElseThrow(),
                                                        length.inline()),
                                                Bars.Bar.of("Waste", 0, "none")))));
                    })
                    .toList();
        }

        @Override
        public List<Remark> problems() {
            return of.problems();
        }
    }
}
