package org.hidewright.costing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.hidewright.api.measure.Money;
import org.hidewright.costing.PieceCost.FittingUsed;
import org.hidewright.costing.PieceCost.LeatherUsed;
import org.hidewright.costing.PieceCost.LiquidUsed;
import org.hidewright.costing.PieceCost.MachineUsed;
import org.hidewright.costing.PieceCost.OnceOnly;
import org.hidewright.costing.PieceCost.Piece;
import org.hidewright.costing.PieceCost.ThreadUsed;

/** Every amount of money that was typed for a piece. */
final class Amounts {
    private final List<Money> all = new ArrayList<>();

    private Amounts() {}

    static List<Money> of(Piece piece) {
        Amounts amounts = new Amounts();
        amounts.all.add(piece.perHour());
        amounts.add(piece.leather(), LeatherUsed::price);
        amounts.add(piece.hardware(), FittingUsed::price);
        amounts.add(piece.thread(), ThreadUsed::price);
        amounts.add(piece.liquids(), LiquidUsed::price);
        amounts.add(piece.machines(), MachineUsed::perHour);
        piece.onceOnly().orElse(List.of()).stream()
                .map(OnceOnly::expense)
                .flatMap(Optional::stream)
                .forEach(amounts.all::add);
        piece.packing().ifPresent(amounts.all::add);
        return amounts.all;
    }

    private <R> void add(Optional<List<R>> rows, Function<R, Money> amount) {
        rows.orElse(List.of()).forEach(row -> all.add(amount.apply(row)));
    }
}
