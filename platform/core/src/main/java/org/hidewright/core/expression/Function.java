package org.hidewright.core.expression;

import java.util.Arrays;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.hidewright.api.measure.Dimension;

/** What can be made of amounts by a name and brackets; all of them measure the same. */
enum Function {
    MIN(2, 20, numbers -> Arrays.stream(numbers).min().orElseThrow()),
    MAX(2, 20, numbers -> Arrays.stream(numbers).max().orElseThrow()),
    ABS(1, 1, numbers -> Math.abs(numbers[0])),
    SQRT(1, 1, numbers -> Math.sqrt(numbers[0])),
    /** Up to a whole number of steps; what is one but for its last digits stays. */
    UP(2, 2, numbers -> Math.ceil(numbers[0] / numbers[1] - 1e-9) * numbers[1]),
    DOWN(2, 2, numbers -> Math.floor(numbers[0] / numbers[1] + 1e-9) * numbers[1]),
    SIN(1, 1, numbers -> Math.sin(numbers[0])),
    COS(1, 1, numbers -> Math.cos(numbers[0])),
    TAN(1, 1, numbers -> Math.tan(numbers[0])),
    /** The angle whose tangent is the first over the second. */
    ATAN(2, 2, numbers -> Math.atan2(numbers[0], numbers[1]));

    private static final Measure ANGLE = Measure.of(Dimension.ANGLE).orElseThrow();

    private final int least;
    private final int most;
    private final ToDoubleFunction<double[]> work;

    Function(int least, int most, ToDoubleFunction<double[]> work) {
        this.least = least;
        this.most = most;
        this.work = work;
    }

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    boolean takes(int many) {
        return many >= least && many <= most;
    }

    String takes() {
        return least == most ? String.valueOf(least) : least + "-" + most;
    }

    double of(double[] numbers) {
        return work.applyAsDouble(numbers);
    }

    private static Measure sine(Judge judge, Symbol symbol, Measure of) throws ExpressionTrouble {
        judge.alike(symbol, ANGLE, of);
        return Measure.NUMBER;
    }

    Measure gives(Judge judge, Symbol symbol, Measure of) throws ExpressionTrouble {
        switch (this) {
            case SQRT:
                return of.root()
                        .orElseThrow(
                                () -> judge.trouble(symbol, ExpressionNotices.EXPRESSION_NO_ROOT.with(of.words())));
            case SIN, COS, TAN:
                return sine(judge, symbol, of);
            case ATAN:
                return ANGLE;
            default:
                return of;
        }
    }
}
