package org.hidewright.core.bench;

import java.time.LocalDate;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Duration;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Volume;

/** What a bottle of dye costs and lasts, for tests of money, volumes, durations and days. */
@Calculates("refill")
public final class Refill implements Calculator<Refill.Bottle, Refill.Use> {
    public record Bottle(
            @Asked(min = "0", max = "500", usual = "5-50", example = "12.50 EUR")
            Money price,

            @Asked(unit = "ml", min = "10 ml", max = "5 l", preset = "250 ml")
            Volume holds,

            @Asked(unit = "ml", preset = "5 ml") Volume perPiece,

            @Asked(unit = "min", max = "2 d", preset = "20 min")
            Duration dries,

            @Asked(preset = "2026-03-01") LocalDate opened) {}

    public record Use(
            @Answered Money perPiece,
            @Answered(unit = "h", step = "0.1 h") Duration waiting,
            @Answered(unit = "ml") Volume left,
            @Answered LocalDate opened) {}

    @Override
    public Outcome<Use> calculate(Bottle bottle, Working working) {
        double share = bottle.perPiece().per(bottle.holds());
        return Outcome.of(new Use(
                bottle.price().times(share),
                bottle.dries().times(2),
                bottle.holds().minus(bottle.perPiece()),
                bottle.opened()));
    }
}
