package org.hidewright.straps;

import static org.hidewright.straps.Straps.DRY;
import static org.hidewright.straps.Straps.bend;
import static org.hidewright.straps.Straps.flatFold;
import static org.hidewright.straps.Straps.hole;
import static org.hidewright.straps.Straps.layout;
import static org.hidewright.straps.Straps.mm;
import static org.hidewright.straps.Straps.roundBar;
import static org.hidewright.straps.Straps.straight;
import static org.hidewright.straps.Straps.strap;
import static org.hidewright.straps.Straps.turnBack;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hidewright.api.measure.Length;
import org.hidewright.straps.geometry.Face;
import org.junit.jupiter.api.Test;

/** The cases worked by hand in docs/worked: the tables printed there are what is asserted. */
class WorkedByHandTest {
    private static final Pattern ROW = Pattern.compile("\\| ([a-z0-9.-]+) \\| ([0-9.]+) \\|");
    private static final double HALF_LAST_DIGIT = 0.0005;

    private static Map<String, Double> printed(String page) throws IOException {
        Map<String, Double> rows = new LinkedHashMap<>();
        for (String line : Files.readAllLines(Path.of("..", "..", "docs", "worked", page))) {
            Matcher row = ROW.matcher(line);
            if (row.matches()) {
                rows.put(row.group(1), Double.valueOf(row.group(2)));
            }
        }
        return rows;
    }

    private static Length answer(StrapLayout.Layout layout, String[] key) {
        if (key[0].equals("cut-length")) {
            return layout.cutLength();
        } else if (key[0].equals("stack-thickness")) {
            return layout.stackThickness();
        } else if (key[0].equals("features")) {
            return Straps.feature(layout, key[1]).fromStart();
        }
        StrapLayout.FoldZone fold = layout.folds().stream()
                .filter(row -> row.id().equals(key[1]))
                .findFirst()
                .orElseThrow();
        return key[2].equals("start") ? fold.start() : key[2].equals("middle") ? fold.middle() : fold.end();
    }

    private static void agrees(String page, int rows, StrapLayout.Strap strap) throws IOException {
        StrapLayout.Layout layout = layout(strap);
        Map<String, Double> printed = printed(page);
        assertEquals(rows, printed.size());
        printed.forEach(
                (key, mm) -> assertEquals(mm, answer(layout, key.split("\\.")).mm(), HALF_LAST_DIGIT + 1e-6, key));
    }

    @Test
    void theRingStrap() throws IOException {
        agrees(
                "ring-strap.md",
                6,
                strap(
                        3,
                        List.of(straight("leg", 100), roundBar("ring", 4), straight("tip", 50)),
                        hole("rivet", "leg", From.END, 15, "tip")));
    }

    @Test
    void theDoubledStrap() throws IOException {
        agrees(
                "doubled-strap.md",
                11,
                strap(
                        2,
                        List.of(
                                straight("upper", 60),
                                bend("over", new Core.AroundBend("under"), 180, Face.GRAIN, DRY),
                                straight("back", 45),
                                flatFold("end", Face.GRAIN),
                                straight("inner-back", 45),
                                bend("under", new Core.RoundBar(mm(6)), 180, Face.FLESH, DRY),
                                straight("inner", 60)),
                        hole("rivet", "upper", From.END, 20, "back", "inner-back", "inner")));
    }

    @Test
    void theBuckleTurnBack() throws IOException {
        agrees(
                "buckle-turn-back.md",
                8,
                strap(
                        3.2,
                        List.of(
                                straight("strap", 100),
                                turnBack("buckle", 6, 12, Face.GRAIN, new Preparation.Cased()),
                                straight("leg", 40)),
                        new Feature.Slot("prong", mm(20), mm(5), "buckle", From.MIDDLE, Length.ZERO, Optional.empty()),
                        hole("rivet", "strap", From.END, 10, "leg")));
    }
}
