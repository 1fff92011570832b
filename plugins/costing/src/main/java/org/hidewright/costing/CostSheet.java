package org.hidewright.costing;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Area;
import org.hidewright.api.measure.Duration;
import org.hidewright.api.measure.Money;
import org.hidewright.costing.PieceCost.BatchLine;
import org.hidewright.costing.PieceCost.CostLine;
import org.hidewright.costing.PieceCost.LeatherUsed;
import org.hidewright.costing.PieceCost.OnceOnly;
import org.hidewright.costing.PieceCost.Piece;
import org.hidewright.costing.PieceCost.WorkDone;

/**
 * The lines of a batch. What is spoilt has taken leather, work and machine like what is sold, so it adds its share of them;
 * overhead goes with hands-on work and machines, since it runs by the hour.
 */
final class CostSheet {
    private static final Formula LEATHER = Formula.of("cost-leather", "m = n · G · P / A", Origins.ARITHMETIC);
    private static final Formula WORK = Formula.of("cost-work", "W = T · r / h", Origins.ARITHMETIC);
    private static final Formula OVERHEAD = Formula.of("cost-overhead", "O = o · (W + X)", Origins.COST_SHEET);
    private static final Formula SPOILAGE =
            Formula.of("cost-spoilage", "Z = (M + W + X + O) · s / (1 - s)", Origins.COST_SHEET);
    private static final Formula TOGETHER =
            Formula.of("cost-together", "C = M + W + X + E + O + Z + K", Origins.ARITHMETIC);
    private static final Formula EACH = Formula.of("cost-each", "c = C / n", Origins.ARITHMETIC);
    private static final Formula MORE_HOUR =
            Formula.of("cost-one-more-hour", "y = r · (1 + o) / (1 - s)", Origins.ARITHMETIC);
    private static final Formula MORE_WASTE = Formula.of("cost-one-more-waste", "u = V / (1 - s)", Origins.ARITHMETIC);

    static final List<Formula> FORMULAS = List.of(
            LeatherBought.OF_BOUGHT,
            LeatherBought.OF_USED,
            LEATHER,
            Learning.STEADY,
            Learning.CUMULATIVE,
            Learning.EACH,
            WORK,
            OVERHEAD,
            SPOILAGE,
            TOGETHER,
            EACH,
            MORE_HOUR,
            MORE_WASTE,
            Shopping.WHOLE);

    private static final Set<CostKind> MATERIALS =
            EnumSet.of(CostKind.LEATHER, CostKind.HARDWARE, CostKind.THREAD, CostKind.LIQUIDS);
    private static final List<Integer> USUAL_BATCHES = List.of(1, 2, 5, 10, 20, 50);
    private static final double ONE_PER_CENT = 0.01;

    private final Piece piece;
    private final int pieces;
    private final Money nothing;
    private final double pieceTimes;
    private final Duration handsOn;
    private final List<CostLine> lines = new ArrayList<>();

    CostSheet(Piece piece) {
        this(piece, piece.pieces());
    }

    /** The same piece in a batch of another size. */
    private CostSheet(Piece piece, int pieces) {
        this.piece = piece;
        this.pieces = pieces;
        this.nothing = piece.perHour().times(0);
        this.pieceTimes = piece.learning().pieces(pieces);
        this.handsOn = piece.firstPiece().times(pieceTimes);
        materials();
        for (PieceCost.MachineUsed machine : piece.machines().orElse(List.of())) {
            line(
                    CostKind.MACHINES,
                    machine.id(),
                    PieceCost.over(machine.time(), machine.perHour()).times(pieces));
        }
        for (WorkDone work : piece.handsOn()) {
            line(CostKind.WORK, work.id(), PieceCost.over(together(work), piece.perHour()));
        }
        for (OnceOnly once : piece.onceOnly().orElse(List.of())) {
            line(
                    CostKind.ONCE_ONLY,
                    once.id(),
                    PieceCost.over(once.time(), piece.perHour())
                            .plus(once.expense().orElse(nothing)));
        }
        line(
                CostKind.OVERHEAD,
                "",
                sum(EnumSet.of(CostKind.WORK, CostKind.MACHINES)).times(piece.overhead()));
        line(CostKind.SPOILAGE, "", spoilable().times(piece.spoilage() / (1 - piece.spoilage())));
        piece.packing().ifPresent(packing -> line(CostKind.PACKING, "", packing.times(pieces)));
    }

    /** Over the batch: all kinds of work are learnt alike. */
    private Duration together(WorkDone work) {
        return work.time().times(pieceTimes);
    }

    private List<LeatherUsed> leather() {
        return piece.leather().orElse(List.of());
    }

    private void materials() {
        piece.leather()
                .orElse(List.of())
                .forEach(leather -> line(
                        CostKind.LEATHER,
                        leather.id(),
                        worth(leather, leather.waste()).times(pieces)));
        piece.hardware()
                .orElse(List.of())
                .forEach(fitting -> line(
                        CostKind.HARDWARE, fitting.id(), fitting.price().times((double) fitting.count() * pieces)));
        piece.thread()
                .orElse(List.of())
                .forEach(thread -> line(
                        CostKind.THREAD,
                        thread.id(),
                        thread.price().times(thread.used().per(thread.length()) * pieces)));
        piece.liquids()
                .orElse(List.of())
                .forEach(liquid -> line(
                        CostKind.LIQUIDS,
                        liquid.id(),
                        liquid.price().times(liquid.used().per(liquid.holds()) * pieces)));
    }

    /** The one place where anything is rounded; a line of nothing is left out. */
    private void line(CostKind kind, String row, Money exact) {
        Money amount = exact.rounded();
        if (amount.amount().signum() != 0) {
            lines.add(new CostLine(kind.line(row), kind, row, amount));
        }
    }

    private static Money worth(LeatherUsed leather, double waste) {
        Area taken = leather.wasteOf().bought(leather.used(), waste);
        return leather.price().times(taken.per(leather.area()));
    }

    private Money sum(Set<CostKind> kinds) {
        return lines.stream()
                .filter(line -> kinds.contains(line.kind()))
                .map(CostLine::amount)
                .reduce(nothing, Money::plus);
    }

    private Money spoilable() {
        Set<CostKind> kinds = EnumSet.copyOf(MATERIALS);
        kinds.addAll(EnumSet.of(CostKind.WORK, CostKind.MACHINES, CostKind.OVERHEAD));
        return sum(kinds);
    }

    List<CostLine> lines() {
        return List.copyOf(lines);
    }

    Money together() {
        return sum(EnumSet.allOf(CostKind.class)).rounded();
    }

    Money each() {
        return parted(together());
    }

    /** What a piece costs in batches of usual sizes, and of the one that is asked for. */
    List<BatchLine> byBatch() {
        return IntStream.concat(USUAL_BATCHES.stream().mapToInt(Integer::intValue), IntStream.of(pieces))
                .sorted()
                .distinct()
                .mapToObj(size -> new BatchLine("of-" + size, size, new CostSheet(piece, size).each()))
                .toList();
    }

    /** What a piece costs once pattern, prototype and tests are paid for. */
    Money eachAfterwards() {
        return parted(together().minus(onceOnly()));
    }

    Money materialsEach() {
        return parted(sum(MATERIALS));
    }

    Money onceOnly() {
        return sum(EnumSet.of(CostKind.ONCE_ONLY)).rounded();
    }

    private Money parted(Money amount) {
        return amount.times(1.0 / pieces).rounded();
    }

    Duration handsOn() {
        return handsOn;
    }

    /** What a piece costs more when it takes an hour longer. */
    Money oneMoreHour() {
        return piece.perHour()
                .times((1 + piece.overhead()) / (1 - piece.spoilage()))
                .rounded();
    }

    /** What a piece costs more when one per cent more of the leather is waste. */
    Money oneMoreOfWaste() {
        return moreLeather().times(1 / (1 - piece.spoilage())).rounded();
    }

    private Money moreLeather() {
        return leather().stream()
                .map(leather -> worth(leather, leather.waste() + ONE_PER_CENT).minus(worth(leather, leather.waste())))
                .reduce(nothing, Money::plus);
    }

    void takeDown(Working working) {
        for (LeatherUsed leather : leather()) {
            takeDown(leather, working);
        }
        BatchTime.step(piece.learning(), handsOn, piece.firstPiece(), pieces, working);
        working.source("hands-on-together", piece.learning().formula().source());
        Money work = sum(EnumSet.of(CostKind.WORK)).rounded();
        Money machines = sum(EnumSet.of(CostKind.MACHINES)).rounded();
        for (WorkDone done : piece.handsOn()) {
            Duration time = together(done);
            working.step(WORK, PieceCost.over(time, piece.perHour()).rounded(), "T", time, "r", piece.perHour());
        }
        Money overhead = sum(EnumSet.of(CostKind.OVERHEAD)).rounded();
        working.step(OVERHEAD, overhead, "o", piece.overhead(), "W", work, "X", machines);
        working.step(
                SPOILAGE,
                sum(EnumSet.of(CostKind.SPOILAGE)).rounded(),
                "M",
                sum(MATERIALS).rounded(),
                "W",
                work,
                "X",
                machines,
                "O",
                overhead,
                "s",
                piece.spoilage());
        working.step(
                TOGETHER,
                together(),
                "M",
                sum(MATERIALS).rounded(),
                "W",
                work,
                "X",
                machines,
                "E",
                onceOnly(),
                "O",
                overhead,
                "Z",
                sum(EnumSet.of(CostKind.SPOILAGE)).rounded(),
                "K",
                sum(EnumSet.of(CostKind.PACKING)).rounded());
        working.step(EACH, each(), "C", together(), "n", pieces);
        working.step(MORE_HOUR, oneMoreHour(), "r", piece.perHour(), "o", piece.overhead(), "s", piece.spoilage());
        working.step(MORE_WASTE, oneMoreOfWaste(), "V", moreLeather(), "s", piece.spoilage());
    }

    private void takeDown(LeatherUsed leather, Working working) {
        Area taken = leather.wasteOf().bought(leather.used(), leather.waste());
        working.step(
                leather.wasteOf() == WasteOf.BOUGHT ? LeatherBought.OF_BOUGHT : LeatherBought.OF_USED,
                taken,
                "N",
                leather.used(),
                "w",
                leather.waste());
        working.step(
                LEATHER,
                worth(leather, leather.waste()).times(pieces).rounded(),
                "n",
                pieces,
                "G",
                taken,
                "P",
                leather.price(),
                "A",
                leather.area());
    }
}
