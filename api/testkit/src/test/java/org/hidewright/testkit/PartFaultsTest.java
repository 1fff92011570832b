package org.hidewright.testkit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.testkit.faults.Drawn;
import org.junit.jupiter.api.Test;

/** Parts that cannot be cut, pricked or sewn, though they can at the example. */
class PartFaultsTest {
    private static void told(Calculator<?, ?> calculator, String... said) {
        Faulty.of(calculator).fails(BundleContract::partsCanBeCutAndSewn, said);
    }

    @Test
    void thePanelsThatQuestionsForAnItemAreAnsweredWithAreSound() {
        assertEquals(List.of(), SoundParts.of(TwoPanels.item()));
    }

    /** The contract’s parts are closed, so that there is none to look at. */
    @Test
    void anOpenOutline() {
        Faulty.of(new Drawn.OpenOutline())
                .fails(
                        BundleContract::whateverIsAskedIsAnsweredWholeOrRefusedInWords,
                        "open-outline: breaks with java.lang.IllegalArgumentException: a closed path of role CUT is wanted here in"
                                + " org.hidewright.testkit.faults.",
                        "Refuse in words");
    }

    @Test
    void anOutlineThatCrossesItself() {
        told(
                new Drawn.Crossing(),
                "crossing: the outline of “Front” at 100.00, 40.00 mm crosses itself, so that the part comes apart",
                "Refuse where its measures leave no room.",
                "Asked with {width=200.0 mm}");
    }

    @Test
    void aHoleOutsideItsPart() {
        told(
                new Drawn.HoleOutside(),
                "hole-outside: the hole rivet at 70.00, 60.00 mm is not in the leather of “Front”. Place it by its edges",
                "Asked with {width=60.0 mm}");
    }

    @Test
    void aWindowOverTheEdge() {
        told(
                new Drawn.WindowOutside(),
                "window-outside: a window of “Front” at 60.00",
                "runs over the edge. Refuse where");
    }

    @Test
    void stitchesOutsideTheirPart() {
        told(
                new Drawn.StitchesOff(),
                "stitches-off: the stitches top at ",
                "leave the leather of “Front”. Run them inside its outline");
    }

    @Test
    void linesOfASeamWithUnequalHoles() {
        told(
                new Drawn.CountsDiffer(),
                "counts-differ: in the seam bottom, back.rim has 11 holes and front.rim has 10, so that they cannot be sewn hole"
                        + " on hole. Space both lines by one count.");
    }
}
