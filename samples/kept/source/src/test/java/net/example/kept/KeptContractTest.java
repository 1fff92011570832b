package net.example.kept;

import java.util.Set;
import org.hidewright.testkit.BundleContract;

/** The contract of the day on which it was built holds for it. */
class KeptContractTest extends BundleContract {
    KeptContractTest() {
        super(CordList.class);
    }

    @Override
    protected Set<String> otherTexts() {
        return Set.of(
                "reel.title", "reel.of", "reel.thing", "reel.each", "kept-cords.title", "kept-cords.purpose",
                "kept-cords.name", "kept-cords.name.help", "kept-cords.diameter", "kept-cords.diameter.help",
                "kept-cords.density", "kept-cords.density.help", "kept-cords.colour", "kept-cords.colour.help");
    }

    @Override
    protected Set<String> refusedTogether() {
        return Set.of("tight-core", "case-no-room");
    }
}
