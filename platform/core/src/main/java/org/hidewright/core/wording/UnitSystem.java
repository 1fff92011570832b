package org.hidewright.core.wording;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hidewright.api.measure.Unit;
import org.hidewright.api.measure.Units;

/** Which units lengths and areas are shown in; trade units such as ounce and iron are left as they are. */
public enum UnitSystem {
    METRIC(Map.of()),
    INCH(Map.of(
            Units.MM, Units.INCH,
            Units.CM, Units.INCH,
            Units.M, Units.FOOT,
            Units.MM2, Units.IN2,
            Units.CM2, Units.IN2,
            Units.DM2, Units.FT2,
            Units.M2, Units.FT2));

    private final Map<Unit, Unit> instead;

    UnitSystem(Map<Unit, Unit> instead) {
        this.instead = instead;
    }

    /** The unit shown for values declared in another. */
    public Unit shown(Unit declared) {
        return instead.getOrDefault(declared, declared);
    }

    /** The key in files and commands. */
    public String key() {
        return this == METRIC ? "mm" : "in";
    }

    public static Optional<UnitSystem> of(String key) {
        return switch (key.toLowerCase(Locale.ROOT)) {
            case "mm", "metric" -> Optional.of(METRIC);
            case "in", "inch" -> Optional.of(INCH);
            default -> Optional.empty();
        };
    }
}
