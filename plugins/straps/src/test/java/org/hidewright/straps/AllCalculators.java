package org.hidewright.straps;

import java.util.List;
import org.hidewright.api.calculator.Calculator;

/** Every calculator of the bundle, for tests that hold for all of them. */
final class AllCalculators {
    private AllCalculators() {}

    static List<Calculator<?, ?>> list() {
        return List.of(
                new StrapLayout(),
                new BendAllowance(),
                new MeasuredNeutralLine(),
                new WrapLength(),
                new TwoBars(),
                new KeeperLength(),
                new BeltLayout(),
                new StrapWidth(),
                new StripCount());
    }
}
