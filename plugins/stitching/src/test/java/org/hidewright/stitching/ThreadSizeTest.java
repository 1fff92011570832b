package org.hidewright.stitching;

import static org.hidewright.stitching.Sewn.answers;
import static org.hidewright.stitching.Sewn.mm;
import static org.hidewright.stitching.Sewn.shown;
import static org.hidewright.stitching.Sewn.told;
import static org.hidewright.stitching.Sewn.working;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ThreadSizeTest {
    private final ThreadSize size = new ThreadSize();

    private static ThreadSize.Label label(ThreadCount thread, Fibre fibre, double pitch) {
        return new ThreadSize.Label(thread, fibre, 0.6, mm(pitch), Optional.empty());
    }

    @Test
    void aMeasuredThreadSuitsItsPitchAndNeedles() {
        ThreadSize.Label asked = label(new ThreadCount.Measured(mm(0.6)), Fibre.LINEN, 4);
        ThreadSize.Sized sized = answers(size, asked);
        assertEquals("0.6", shown(sized.diameter()));
        assertEquals(0.15, sized.shareOfPitch(), 1e-12);
        assertEquals("0.52", shown(sized.thinnestForPitch()));
        assertEquals("1", shown(sized.thickestForPitch()));
        assertEquals("0.84", shown(sized.handNeedleEye()));
        assertEquals(
                List.of("150", "160", "180"),
                sized.machineNeedles().stream().map(MachineNeedle::id).toList());
        assertEquals(List.of(), told(size, asked));
        assertEquals(
                List.of(
                        "T = ρ · φ · (d / 0.035682)² | ρ 1.53, φ 0.6, d 0.6 | 259.558",
                        "s = d / p | d 0.6, p 4 | 0.15"),
                working(size, asked));
    }

    @Test
    void eachCountIsWorkedByItsFormula() {
        assertEquals(
                List.of(
                        "T = D · n / 9 | D 1260, n 3 | 420",
                        "d = 0.035682 · √(T / (ρ · φ)) | T 420, ρ 1.14, φ 0.6 | 0.884",
                        "s = d / p | d 0.884, p 4 | 0.221"),
                working(size, label(new ThreadCount.Denier(1260, 3), Fibre.NYLON, 4)));
        assertEquals(
                "T = 3000 / Z | Z 20 | 150",
                working(size, label(new ThreadCount.MetricTicket(20), Fibre.POLYESTER, 4))
                        .get(0));
        assertEquals(
                "T = 1653.51549 · n / N | n 3, N 18 | 275.586",
                working(size, label(new ThreadCount.Linen(18, 3), Fibre.LINEN, 4))
                        .get(0));
        assertEquals(
                2,
                working(size, label(new ThreadCount.Tex(135), Fibre.LINEN, 4)).size());
    }

    @Test
    void aThreadThatDoesNotSuitThePitchIsToldWithOneThatDoes() {
        assertEquals(
                List.of("thread-thick-for-pitch at pitch [0.8, 3, 3.2]"),
                told(size, label(new ThreadCount.Measured(mm(0.8)), Fibre.LINEN, 3)));
        assertEquals(
                List.of("thread-thin-for-pitch at pitch [0.4, 4, 3.077]"),
                told(size, label(new ThreadCount.Measured(mm(0.4)), Fibre.LINEN, 4)));
        assertEquals(List.of(), told(size, label(new ThreadCount.Measured(mm(0.52)), Fibre.LINEN, 4)));
        assertEquals(List.of(), told(size, label(new ThreadCount.Measured(mm(1)), Fibre.LINEN, 4)));
    }

    @Test
    void aThreadNoMachineTakesHasNone() {
        ThreadSize.Label asked = label(new ThreadCount.Measured(mm(1.01)), Fibre.LINEN, 5);
        assertTrue(answers(size, asked).machineNeedles().isEmpty());
        assertEquals(List.of("no-machine-needle at thread [1.01]"), told(size, asked));
        assertEquals(
                List.of("250"),
                answers(size, label(new ThreadCount.Measured(mm(1)), Fibre.LINEN, 5)).machineNeedles().stream()
                        .map(MachineNeedle::id)
                        .toList());
    }

    /** An eye 1.4 times as wide as the thread (common practice): 0.84 mm for 0.6 mm, so 0.84 takes it and 0.8 does not. */
    @Test
    void ofTheHandNeedlesThereAreThoseThatTakeTheThreadAreNamed() {
        ThreadSize.Label asked = withNeedles(0.6, "wide", 1.2, "narrow", 0.8, "just", 0.84);
        List<HandNeedle.Taking> taking = answers(size, asked).handNeedles();
        assertEquals(
                List.of("just", "wide"),
                taking.stream().map(HandNeedle.Taking::id).toList());
        assertEquals("0.6", shown(taking.get(0).thickestThread()));
        assertEquals("1.2", shown(taking.get(1).eye()));
        assertEquals(List.of(), told(size, asked));
    }

    @Test
    void whereNoHandNeedleTakesTheThreadTheEyeThatDoesIsTold() {
        ThreadSize.Label asked = withNeedles(0.6, "narrow", 0.8, "narrower", 0.7, "narrowest", 0.5);
        assertEquals(List.of(), answers(size, asked).handNeedles());
        assertEquals(List.of("no-hand-needle at hand-needles [0.6, 0.84]"), told(size, asked));
        assertEquals(
                List.of(),
                answers(size, label(new ThreadCount.Measured(mm(0.6)), Fibre.LINEN, 4))
                        .handNeedles());
    }

    private static ThreadSize.Label withNeedles(
            double thread, String id1, double eye1, String id2, double eye2, String id3, double eye3) {
        return new ThreadSize.Label(
                new ThreadCount.Measured(mm(thread)),
                Fibre.LINEN,
                0.6,
                mm(4),
                Optional.of(List.of(
                        new HandNeedle(id1, mm(eye1)), new HandNeedle(id2, mm(eye2)), new HandNeedle(id3, mm(eye3)))));
    }
}
