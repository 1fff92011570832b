package org.hidewright.api.trials;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.hidewright.api.declaration.Chosen;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.declaration.Variant;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Size;

/**
 * What could be asked, drawn from the declaration: the same trials every time. Texts and the rows of tables are those of the
 * examples, since only their author knows which of them belong together.
 */
public final class Samples {
    /** Sets with every question drawn; with {@code -Dhidewright.long=true} more. */
    public static final int SETS = Boolean.getBoolean("hidewright.long") ? 3_000 : 200;

    /** Of sets with one question changed; tables with many columns have hundreds. */
    private static final int MOST_SINGLE = 120;

    private final Typical typical;
    private final BiFunction<Question, Double, Bounds> bounds;
    private final boolean wide;

    private Samples(Typical typical, BiFunction<Question, Double, Bounds> bounds, boolean wide) {
        this.typical = typical;
        this.bounds = bounds;
        this.wide = wide;
    }

    /** The example, one question at a time at its usual ends and other choices, then sets with every question drawn. */
    public static List<Values> usual(List<Question> questions, Typical typical) {
        Samples samples = new Samples(typical, Bounds::usual, false);
        Values example = typical.all(questions);
        List<Values> all = new ArrayList<>(List.of(example));
        List<Variations.Varied> single = Variations.of(questions, example, samples::ends);
        some(single, MOST_SINGLE).forEach(varied -> all.add(varied.values()));
        all.addAll(samples.sets(questions, example));
        return all;
    }

    /** Sets with every question drawn between its hard limits. */
    public static List<Values> anywhere(List<Question> questions, Typical typical) {
        return new Samples(typical, Bounds::hard, true).sets(questions, typical.all(questions));
    }

    private List<Values> sets(List<Question> questions, Values example) {
        List<Values> sets = new ArrayList<>();
        Random random = new Random(1); // one for all: the first numbers of neighbouring seeds are alike
        for (int i = 0; i < SETS; i++) {
            sets.add(drawn(questions, example, random));
        }
        return sets;
    }

    private Stream<Object> ends(Question question, Optional<Object> now) {
        if (now.isEmpty()) {
            return Stream.of(typical.typical(question));
        }
        OptionalDouble number = Measures.number(now.get());
        if (number.isPresent()) {
            Bounds between = bounds.apply(question, number.getAsDouble());
            return Stream.of(between.at(question, 0, now.get()), between.at(question, 1, now.get()));
        }
        return switch (question.kind()) {
            case CHOICE -> question.options().stream().map(option -> (Object) option.key());
            case FLAG -> Stream.of(!(Boolean) now.get());
            case SIZE -> Stream.of(size(question, (Size) now.get(), 0, 1), size(question, (Size) now.get(), 1, 0));
            case VARIANTS ->
                question.variants().stream().map(variant -> Chosen.of(variant.key(), typical.all(variant.questions())));
            default -> Stream.empty();
        };
    }

    private Size size(Question question, Size like, double across, double up) {
        Length width = like.width();
        Length height = like.height();
        return Size.of((Length) side(question, width, across), (Length) side(question, height, up));
    }

    private Object side(Question question, Length like, double share) {
        Bounds between = bounds.apply(question, like.mm());
        return Measures.quantity(Kind.LENGTH, between.low() + (between.high() - between.low()) * share);
    }

    private Values drawn(List<Question> questions, Values from, Random random) {
        Map<String, Object> values = new LinkedHashMap<>();
        for (Question question : questions) {
            if (!question.optional() || random.nextBoolean()) {
                Object like = from.get(question.key()).orElseGet(() -> typical.typical(question));
                values.put(question.key(), drawn(question, like, random));
            }
        }
        return Values.row(from.rowId(), values);
    }

    private Object drawn(Question question, Object like, Random random) {
        if (like instanceof List<?> several) {
            return several.stream().map(one -> single(question, one, random)).toList();
        }
        return single(question, like, random);
    }

    private Object single(Question question, Object like, Random random) {
        OptionalDouble number = Measures.number(like);
        if (number.isPresent()) {
            boolean stays = random.nextInt(4) == 0; // as in the example
            Bounds between = bounds.apply(question, number.getAsDouble());
            return stays ? like : between.at(question, share(random), like);
        }
        return switch (question.itemKind()) {
            case CHOICE ->
                question.options()
                        .get(random.nextInt(question.options().size()))
                        .key();
            case FLAG -> random.nextBoolean();
            case SIZE -> size(question, (Size) like, share(random), share(random));
            case GROUP -> drawn(question.questions(), (Values) like, random);
            case VARIANTS -> variant(question, (Chosen) like, random);
            case ROWS ->
                like instanceof Chosen row
                        ? Chosen.of(
                                row.variant(),
                                drawn(
                                        Variations.variant(question, row.variant())
                                                .questions(),
                                        row.values(),
                                        random))
                        : drawn(question.questions(), (Values) like, random);
            default -> like;
        };
    }

    private Object variant(Question question, Chosen like, Random random) {
        Variant variant =
                question.variants().get(random.nextInt(question.variants().size()));
        Values from = variant.key().equals(like.variant()) ? like.values() : typical.all(variant.questions());
        return Chosen.of(variant.key(), drawn(variant.questions(), from, random));
    }

    /** One in three at an end; over hard limits, which are wide apart, more of the rest near the lower one. */
    private double share(Random random) {
        int way = random.nextInt(6);
        double between = random.nextDouble();
        if (way < 2) {
            return way;
        }
        return wide ? Math.pow(10, -4 * between) : between;
    }

    /** At most so many of some, the first among them, spread over all. */
    public static <T> List<T> some(List<T> all, int most) {
        int step = 1 + all.size() / most;
        List<T> some = new ArrayList<>();
        for (int i = 0; i < all.size(); i += step) {
            some.add(all.get(i));
        }
        return some;
    }
}
