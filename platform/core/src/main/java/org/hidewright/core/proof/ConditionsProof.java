package org.hidewright.core.proof;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.NoticeKind.Severity;
import org.hidewright.api.declaration.Option;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.measure.Dimension;
import org.hidewright.api.trials.Measures;
import org.hidewright.core.explain.Limits;
import org.hidewright.core.expression.Measure;
import org.hidewright.core.expression.Worth;
import org.hidewright.core.template.Condition;
import org.hidewright.core.template.TextTemplate;

/**
 * Finds what a template can never tell, and what it tells whatever is answered: a limit written in another unit than the question
 * has, two words of one choice at once. A condition has to hold for some answers and not for others, of those that were tried; else
 * for answers at the corners of all limits and at the amounts and words that stand in the template, and for a mixture of both.
 */
final class ConditionsProof {
    /** Corners are tried one and all up to so many; of more so many are drawn, and so many mixtures. */
    private static final int MOST = 2_000;

    private final TextTemplate template;
    private final List<Values> tried;
    private final Map<NoticeKind, Boolean> first = new HashMap<>();
    private final Set<NoticeKind> both = new LinkedHashSet<>();

    private ConditionsProof(TextTemplate template, List<Values> tried) {
        this.template = template;
        this.tried = tried;
    }

    /**
     * Looks at every condition.
     *
     * @param tried the example first
     * @param told hears of each that cannot turn
     */
    static void of(TextTemplate template, List<Values> tried, BiConsumer<NoticeKind, Notice> told) {
        ConditionsProof proof = new ConditionsProof(template, tried);
        tried.forEach(proof::look);
        List<Condition> all = template.conditions();
        all.forEach(condition -> proof.search(condition, all));
        List<Condition> open = all.stream().filter(proof::isOpen).toList();
        boolean nothingGoesOn = open.stream()
                .anyMatch(condition -> condition.kind().severity() == Severity.STOP && proof.isAlways(condition));
        for (Condition condition : open) {
            // what is not come to since something else stops each time, may be sound
            if (proof.first.containsKey(condition.kind()) || !nothingGoesOn) {
                String key = condition.kind().key();
                told.accept(
                        condition.kind(),
                        proof.isAlways(condition)
                                ? ProofNotices.PROOF_ALWAYS_TOLD.with(key, condition.when(), limits(condition))
                                : ProofNotices.PROOF_NEVER_TOLD.with(key, condition.when(), limits(condition)));
            }
        }
    }

    private boolean isAlways(Condition condition) {
        return first.getOrDefault(condition.kind(), false);
    }

    private void search(Condition condition, List<Condition> all) {
        if (isOpen(condition)) {
            corners(turns(List.of(condition)), condition);
            mixtures(turns(all), condition);
        }
    }

    private boolean isOpen(Condition condition) {
        return !both.contains(condition.kind());
    }

    private void look(Values values) {
        template.holding(values).forEach((kind, holds) -> {
            if (Boolean.valueOf(!holds).equals(first.putIfAbsent(kind, holds))) {
                both.add(kind);
            }
        });
    }

    /** Every combination, the other answers as in the example. */
    private void corners(Map<String, List<Object>> turns, Condition condition) {
        long all = 1;
        for (List<Object> some : turns.values()) {
            all = Math.min(MOST + 1, all * some.size());
        }
        if (all <= MOST) {
            for (int nth = 0; nth < all && isOpen(condition); nth++) {
                Map<String, Object> values = new LinkedHashMap<>(tried.get(0).entries());
                int left = nth;
                for (Map.Entry<String, List<Object>> turn : turns.entrySet()) {
                    values.put(
                            turn.getKey(),
                            turn.getValue().get(left % turn.getValue().size()));
                    left /= turn.getValue().size();
                }
                look(Values.of(values));
            }
        }
    }

    /** Answers that were tried, half of them moved to where some condition can turn: one may be come to only past another. */
    private void mixtures(Map<String, List<Object>> turns, Condition condition) {
        Random random = new Random(1);
        for (int i = 0; i < MOST && isOpen(condition); i++) {
            Map<String, Object> values =
                    new LinkedHashMap<>(tried.get(i % tried.size()).entries());
            turns.forEach((key, some) -> {
                if (random.nextBoolean()) {
                    values.put(key, some.get(random.nextInt(some.size())));
                }
            });
            look(Values.of(values));
        }
    }

    private Map<String, List<Object>> turns(List<Condition> conditions) {
        Set<Worth> written = new LinkedHashSet<>();
        conditions.forEach(condition -> written.addAll(condition.written()));
        Map<String, List<Object>> turns = new LinkedHashMap<>();
        for (Condition condition : conditions) {
            for (Question question : condition.questions()) {
                tried.get(0)
                        .get(question.key())
                        .ifPresent(like -> turns.put(question.key(), turns(question, like, written)));
            }
        }
        return turns;
    }

    /** Where a question can make a condition turn: at its ends, at what is written, between two of these; else at all there is to choose from. */
    private static List<Object> turns(Question question, Object like, Set<Worth> written) {
        OptionalDouble number = Measures.number(like);
        if (number.isPresent()) {
            Stream<Double> usual = question.usual().stream().flatMap(range -> Stream.of(range.low(), range.high()));
            Stream<Double> ends = Stream.of(question.min(), question.max())
                    .filter(OptionalDouble::isPresent)
                    .map(OptionalDouble::getAsDouble);
            List<Double> bases = Stream.of(Stream.of(number.getAsDouble()), ends, usual, amounts(question, written))
                    .flatMap(some -> some)
                    .filter(base -> base >= question.min().orElse(base)
                            && base <= question.max().orElse(base))
                    .distinct()
                    .sorted()
                    .toList();
            Stream<Double> between =
                    IntStream.range(1, bases.size()).mapToObj(i -> (bases.get(i - 1) + bases.get(i)) / 2);
            return Stream.concat(bases.stream(), between)
                    .map(base -> Measures.of(question.kind(), base, like))
                    .distinct()
                    .toList();
        }
        return switch (question.kind()) {
            case CHOICE ->
                question.options().stream().map(option -> (Object) option.key()).toList();
            case FLAG -> List.of(true, false);
            default -> texts(like, written);
        };
    }

    private static Stream<Double> amounts(Question question, Set<Worth> written) {
        Dimension dimension = question.kind().dimension().orElseThrow();
        Measure measure = Measure.of(dimension).orElseThrow();
        return written.stream()
                .filter(worth -> worth.sort().equals(measure))
                .map(worth -> ((Worth.Amount) worth).inBase(dimension));
    }

    /** What is typed freely: as in the example, as it is written somewhere, and as it is written nowhere. */
    private static List<Object> texts(Object like, Set<Worth> written) {
        List<Object> texts = new ArrayList<>(List.of(like));
        written.stream()
                .filter(Worth.Word.class::isInstance)
                .map(worth -> ((Worth.Word) worth).text())
                .filter(word -> !word.isBlank())
                .forEach(texts::add);
        texts.add(texts.stream().map(String::valueOf).collect(Collectors.joining(" ")) + " …");
        return texts;
    }

    private static String limits(Condition condition) {
        return condition.questions().stream()
                .map(question -> question.key() + " " + between(question))
                .collect(Collectors.joining("; "));
    }

    private static String between(Question question) {
        return switch (question.kind()) {
            case CHOICE -> question.options().stream().map(Option::key).collect(Collectors.joining(" | "));
            case FLAG -> "yes | no";
            case TEXT -> "…";
            default -> {
                Limits limits = new Limits(question);
                yield limits.min().orElse("…") + " – " + limits.max().orElse("…");
            }
        };
    }
}
