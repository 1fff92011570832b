package org.hidewright.straps;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Stream;
import org.hidewright.straps.ProofStrap.Fold;
import org.hidewright.straps.folding.StripFolder;
import org.hidewright.straps.geometry.Face;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The folded proof: every hole of the calculator {@code strap} is looked up in a strip folded point by point, by code that
 * shares nothing with the bundle. Source of the conventions: docs/formulas/straps.md.
 */
class FoldedProofTest {
    private static final double HOLE_TOLERANCE_MM = 0.05;
    private static final double LENGTH_TOLERANCE_MM = 0.02;
    private static final int SEEDED = Boolean.getBoolean("hidewright.long") ? 20_000 : 500;

    @ParameterizedTest(name = "{0} mm thick")
    @ValueSource(doubles = {0.8, 1.2, 2, 3.175, 4, 5})
    void everyHoleMeetsItsFittingOverAGridOfTurnsAndPreparations(double thickness) {
        int compared = 0;
        for (double turn = 30; turn <= 330; turn += 30) {
            for (Face outside : Face.values()) {
                for (Fold.Prepared prepared : Fold.Prepared.values()) {
                    for (double radius : new double[] {1, 2.5, 6}) {
                        ProofStrap strap = new ProofStrap(thickness)
                                .straight(60)
                                .bend(new Fold(radius, Math.toRadians(turn), outside, prepared, OptionalDouble.empty()))
                                .straight(45);
                        strap.hole(0, 17).hole(1, strap.outsideLength(1) / 3).hole(2, 31);
                        compared += compare(strap);
                    }
                }
            }
        }
        assertEquals(11 * 2 * 4 * 3 * 3, compared);
    }

    @ParameterizedTest(name = "{0} mm thick")
    @ValueSource(doubles = {0.8, 2, 3.175, 5})
    void aFittingGoesThroughBothLegsOfATurnedBackStrap(double thickness) {
        for (Face outside : Face.values()) {
            for (Fold.Prepared prepared : Fold.Prepared.values()) {
                for (double radius : new double[] {1, 2, 5}) {
                    ProofStrap strap = new ProofStrap(thickness)
                            .straight(120)
                            .bend(new Fold(radius, Math.PI, outside, prepared, OptionalDouble.empty()))
                            .straight(50);
                    strap.through(0, 120 - 15, 2).through(2, 40, 0);
                    assertEquals(4, compare(strap));
                }
            }
        }
    }

    @ParameterizedTest(name = "{0} mm thick")
    @ValueSource(doubles = {0.8, 2, 3.175})
    void aFittingGoesThroughBothLegsOfATeardrop(double thickness) {
        for (Face outside : Face.values()) {
            for (double bar : new double[] {3, 4, 6}) {
                for (double contact : new double[] {12, 20, 35}) {
                    ProofStrap strap = new ProofStrap(thickness)
                            .straight(150)
                            .turnBack(bar, contact, outside)
                            .straight(60);
                    strap.through(0, 140, 2).through(2, 33, 0).middle(1);
                    assertEquals(5, compare(strap));
                }
            }
        }
    }

    @Test
    void aFittingGoesThroughAFlatBarsLegs() {
        for (double thickness : new double[] {1, 2, 3}) {
            for (Face outside : Face.values()) {
                ProofStrap strap = new ProofStrap(thickness)
                        .straight(90)
                        .flatBar(4, 0.5, outside)
                        .straight(40);
                strap.through(0, 78, 2).through(2, 20, 0);
                assertEquals(4, compare(strap));
            }
        }
    }

    @Test
    void anOuterBendGoesRoundTheInnerOne() {
        for (double thickness : new double[] {1, 1.6, 2.4}) {
            ProofStrap strap = new ProofStrap(thickness)
                    .straight(80)
                    .bend(new Fold(2, Math.PI, Face.GRAIN, Fold.Prepared.NONE, OptionalDouble.empty()))
                    .straight(70)
                    .straight(12)
                    .aroundBend(1, Math.PI, Face.FLESH)
                    .straight(60);
            strap.through(0, 65, 2).through(3, 6, 5);
            assertTrue(compare(strap) >= 3);
        }
    }

    @Test
    void seededStrapsAgree() {
        Random random = new Random(20261125);
        int compared = 0;
        for (int i = 0; i < SEEDED; i++) {
            compared += compare(ProofStrap.seeded(random));
        }
        assertTrue(compared > SEEDED, compared + " holes compared");
    }

    @Test
    void theOtherEndGivesMirroredPlaces() {
        Random random = new Random(7);
        for (int i = 0; i < 100; i++) {
            ProofStrap strap = ProofStrap.seeded(random);
            ProofStrap turned = strap.fromTheOtherEnd();
            List<Double> there = strap.bundlePlaces();
            List<Double> back = turned.bundlePlaces();
            for (int hole = 0; hole < there.size(); hole++) {
                assertEquals(there.get(hole), strap.bundleLength() - back.get(hole), 1e-6, strap::toString);
            }
        }
    }

    @ParameterizedTest(name = "{0} mm thick")
    @ValueSource(doubles = {0.8, 2, 3.175, 5})
    void aNeutralLineThatIsOffByATwentiethIsFoundOut(double thickness) {
        for (double off : new double[] {-0.05, 0.05}) {
            ProofStrap right = new ProofStrap(thickness)
                    .straight(60)
                    .bend(new Fold(2, Math.PI, Face.GRAIN, Fold.Prepared.NONE, OptionalDouble.empty()))
                    .straight(45);
            right.hole(2, 31);
            // theory: the hole moves by 0.05 * pi * t, which is 0.126 mm at 0.8 mm
            double moved = Math.PI * 0.05 * thickness;
            assertTrue(moved > HOLE_TOLERANCE_MM);
            List<String> troubles = right.troubles(off, HOLE_TOLERANCE_MM, LENGTH_TOLERANCE_MM);
            assertFalse(troubles.isEmpty(), "a neutral line off by " + off + " went unnoticed at " + thickness + " mm");
        }
    }

    @Test
    void theFolderSharesNoCodeWithTheBundle() throws IOException {
        Path sources = Path.of("src/test/java/org/hidewright/straps/folding");
        List<String> imports = new ArrayList<>();
        try (Stream<Path> files = Files.list(sources)) {
            for (Path file : files.toList()) {
                Files.readAllLines(file).stream()
                        .filter(line -> line.contains("org.hidewright") && !line.startsWith("package "))
                        .forEach(imports::add);
            }
        }
        assertEquals(List.of(), imports);
        assertEquals("org.hidewright.straps.folding", StripFolder.class.getPackageName());
    }

    /** Compares every hole; returns how many there were. */
    private static int compare(ProofStrap strap) {
        List<String> troubles = strap.troubles(0, HOLE_TOLERANCE_MM, LENGTH_TOLERANCE_MM);
        assertEquals(List.of(), troubles, strap::toString);
        return strap.bundlePlaces().size();
    }
}
