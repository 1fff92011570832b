package org.hidewright.thickness;

import java.util.List;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.declaration.RecordCalculator;

/** Every calculator of the bundle. */
final class Bundle {
    private Bundle() {}

    static List<Calculator<?, ?>> calculators() {
        return List.of(
                new Thickness(),
                new Stack(),
                new Skive(),
                new Scarf(),
                new LeatherArea(),
                new PieceWeight(),
                new ApparentDensity(),
                new GaugeReadings(),
                new GaugePressure(),
                new LeatherSuits());
    }

    static Stream<RecordCalculator> declared() {
        return calculators().stream().map(RecordCalculator::of);
    }
}
