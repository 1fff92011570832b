package org.hidewright.layout;

import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hidewright.testkit.BundleContract;

class LayoutBundleTest extends BundleContract {
    LayoutBundleTest() {
        super(CuttingLayout.class);
    }

    @Override
    protected Set<String> otherTexts() {
        return Stream.of("name", "outline", "rim", "backbone", "flaws", "price", "note")
                .flatMap(column -> Stream.of("hides." + column, "hides." + column + ".help"))
                .collect(Collectors.toCollection(() -> new TreeSet<>(Set.of("hides.title", "hides.purpose"))));
    }

    /** Rows of a layout name pieces and sheets, and lie on one another where they are put by chance. */
    @Override
    protected Set<String> refusedTogether() {
        return Set.of(
                "layout-no-such-piece",
                "layout-no-such-sheet",
                "layout-off-sheet",
                "layout-off-region",
                "layout-overlap",
                "layout-turned");
    }
}
