package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.TreeSet;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.declaration.Chosen;
import org.hidewright.api.declaration.Declaration;
import org.hidewright.api.declaration.DeclaredCalculator;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Option;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.declaration.Variant;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Part;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.json.JsonOut;
import org.hidewright.core.project.ProjectReader;
import org.hidewright.core.wording.ItemWords;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.Bench;
import org.hidewright.core.work.Quantities;
import org.hidewright.core.work.WorkedSlip;
import org.junit.jupiter.api.Test;

/**
 * Every template that is shipped, over seeded sets of what can be typed: inside usual limits at least 95 in 100 give an item that
 * stands every look of {@link SeenItem}, which shares no code with the templates and the checks of the program; anywhere inside
 * the limits each gives an item or a refusal in words. 10,000 sets in the long verification.
 */
class SeededTemplatesIT {
    private static final int SETS = Boolean.getBoolean("hidewright.long") ? 10_000 : 800;
    private static final double LEAST = 0.95;
    private static final int GERMAN_SETS = 40;
    private static final Wording GERMAN = new Wording(Locale.GERMAN, UnitSystem.METRIC);

    private final Catalogue catalogue = BundledCalculators.catalogue();
    private final Wording wording = new Wording(Locale.ENGLISH, UnitSystem.METRIC);

    SeededTemplatesIT() throws Exception {}

    private List<DeclaredCalculator> templates() {
        return catalogue.ids().stream()
                .map(id -> catalogue.find(id).orElseThrow().calculator())
                .filter(SeededTemplatesIT::isTemplate)
                .toList();
    }

    private static boolean isTemplate(DeclaredCalculator calculator) {
        Declaration declaration = calculator.declaration();
        return declaration.answers().stream().anyMatch(answer -> answer.kind() == Kind.ITEM)
                && declaration.questions().stream()
                        .noneMatch(question -> question.kind() == Kind.ROWS || question.kind() == Kind.ITEM);
    }

    @Test
    void insideUsualLimitsNearlyAllGiveAPieceThatCanBeMade() {
        List<DeclaredCalculator> templates = templates();
        assertTrue(templates.size() >= 5, templates.toString());
        List<String> poor = new ArrayList<>();
        StringBuilder rates = new StringBuilder();
        for (DeclaredCalculator template : templates) {
            int sets = Math.max(1, SETS / templates.size());
            int sound = 0;
            Map<String, Integer> why = new TreeMap<>();
            Map<String, String> first = new TreeMap<>();
            for (int seed = 0; seed < sets; seed++) {
                Values asked = asked(template.declaration().questions(), chance(seed), true);
                List<String> wrong = wrong(template, asked);
                if (wrong.isEmpty()) {
                    sound++;
                }
                for (String one : wrong) {
                    why.merge(one.replaceAll("[0-9.]+", "#"), 1, Integer::sum);
                    first.putIfAbsent(one.replaceAll("[0-9.]+", "#"), one + " at seed " + seed + " " + asked.entries());
                }
            }
            String rate = String.format(
                    Locale.ROOT, "%s: %d of %d sound%n", template.declaration().id(), sound, sets);
            rates.append(rate);
            if (sound < LEAST * sets) {
                poor.add(rate + why + "\n" + first.values());
            }
        }
        System.out.print(rates);
        assertEquals(List.of(), poor);
    }

    /** Names of parts, leathers and fittings, and what is done, for all that a template may draw. */
    @Test
    void everyWordOfAnItemIsSaidInGerman() {
        Set<String> english = new TreeSet<>();
        int looked = 0;
        for (DeclaredCalculator template : templates()) {
            for (int seed = 0; seed < GERMAN_SETS; seed++) {
                Outcome<Values> outcome =
                        template.work(asked(template.declaration().questions(), chance(seed), true), Working.NONE);
                if (!outcome.refused()) {
                    Item item = item(outcome);
                    List<String> own = words(item);
                    List<String> german = words(new ItemWords(template.texts()).said(item, GERMAN));
                    for (int i = 0; i < own.size(); i++) {
                        looked++;
                        if (own.get(i).equals(german.get(i))) {
                            english.add(template.declaration().id() + ": " + own.get(i));
                        }
                    }
                }
            }
        }
        assertEquals(Set.of(), english);
        assertTrue(looked > 1000, looked + " words");
    }

    private static List<String> words(Item item) {
        List<String> words = new ArrayList<>();
        for (Part part : item.parts()) {
            words.add(part.name());
            words.add(part.leather());
        }
        item.fittings().forEach(fitting -> words.add(fitting.name()));
        item.operations().forEach(step -> words.add(step.what()));
        return words;
    }

    /** What a maker meets first: nothing about it is to be looked at twice. */
    @Test
    void atPresetsAndExamplesNoCheckOfThePartsIsTold() {
        Bench bench = new Bench(catalogue);
        for (DeclaredCalculator template : templates()) {
            String id = template.declaration().id();
            Map<String, Object> asked = new LinkedHashMap<>();
            for (Question question : template.declaration().questions()) {
                if (question.preset().isEmpty() && question.kind() != Kind.GROUP && !question.optional()) {
                    asked.put(question.key(), question.example().orElseThrow());
                } else if (question.kind() == Kind.GROUP && !question.optional()) {
                    Map<String, Object> inside = new LinkedHashMap<>();
                    question.questions()
                            .forEach(one -> inside.put(one.key(), one.example().orElseThrow()));
                    asked.put(question.key(), inside);
                }
            }
            Map<String, Object> slip = Map.of("id", id, "calculator", id, "questions", asked);
            String text = JsonOut.write(Map.of("hidewright", 1, "slips", List.of(slip)));
            WorkedSlip worked = bench.work(ProjectReader.read(text).project().orElseThrow())
                    .slips()
                    .get(id);
            assertEquals(WorkedSlip.State.WORKED, worked.state(), id);
            worked.answers().orElseThrow().entries().values().stream()
                    .filter(Item.class::isInstance)
                    .flatMap(item -> ((Item) item).parts().stream())
                    .forEach(part -> assertFalse(part.leather().isEmpty(), id + " " + part.id() + " names no leather"));
            assertEquals(
                    List.of(),
                    worked.remarks().stream()
                            .filter(remark -> remark.severity() != NoticeKind.Severity.CAUTION)
                            .map(wording::what)
                            .toList(),
                    id);
        }
    }

    private List<String> wrong(DeclaredCalculator template, Values asked) {
        Outcome<Values> outcome = template.work(asked, Working.NONE);
        if (outcome.refused()) {
            return outcome.notices().stream()
                    .filter(notice -> notice.kind().severity() == NoticeKind.Severity.STOP)
                    .map(notice -> "refused: " + said(template, notice))
                    .toList();
        }
        return SeenItem.wrong(item(outcome));
    }

    private static Item item(Outcome<Values> outcome) {
        return outcome.answers().orElseThrow().entries().values().stream()
                .filter(Item.class::isInstance)
                .map(Item.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private String said(DeclaredCalculator template, Notice notice) {
        return wording.what(Remark.of(notice, template.texts()));
    }

    @Test
    void anywhereInsideTheLimitsThereIsAPieceOrAReason() {
        List<DeclaredCalculator> templates = templates();
        int refused = 0;
        Map<String, String> unconfirmed = new TreeMap<>();
        for (DeclaredCalculator template : templates) {
            for (int seed = 0; seed < SETS / templates.size(); seed++) {
                Values asked = asked(template.declaration().questions(), chance(seed), false);
                Outcome<Values> outcome = template.work(asked, Working.NONE);
                if (outcome.refused()) {
                    refused++;
                    unconfirmed(template, asked, outcome).forEach(unconfirmed::putIfAbsent);
                    for (Notice notice : outcome.notices()) {
                        Remark remark = Remark.of(notice, template.texts());
                        String words = wording.what(remark) + wording.why(remark) + wording.next(remark);
                        assertTrue(
                                words.length() > 30 && !words.contains("notice.") && !words.contains("Exception"),
                                words);
                    }
                } else {
                    assertTrue(!item(outcome).parts().isEmpty());
                }
            }
        }
        System.out.printf(
                "wild sets: %d of %d refused in words%n", refused, SETS / templates.size() * templates.size());
        assertTrue(refused > 0);
        assertEquals(Map.of(), unconfirmed);
    }

    /** Every stop that is told must be so by what was typed alone; those that are not, each kind with what it says. */
    private Map<String, String> unconfirmed(DeclaredCalculator template, Values asked, Outcome<Values> outcome) {
        Map<String, String> unconfirmed = new TreeMap<>();
        for (Notice notice : outcome.notices()) {
            String id = template.declaration().id();
            if (notice.kind().severity() == NoticeKind.Severity.STOP
                    && !Refusals.isSo(id, notice.kind().key(), asked)) {
                unconfirmed.put(id + " " + notice.kind().key(), said(template, notice) + " " + asked.entries());
            }
        }
        return unconfirmed;
    }

    /** What could be typed: inside usual limits, or anywhere inside the hard ones. */
    /** Seeds that follow each other begin alike in the library’s generator, so that the first answers would hardly differ. */
    private static Random chance(long seed) {
        return new Random(new SplittableRandom(seed).nextLong());
    }

    private static Values asked(List<Question> questions, Random random, boolean usual) {
        Map<String, Object> values = new LinkedHashMap<>();
        for (Question question : questions) {
            if (!question.optional() || random.nextBoolean()) {
                values.put(question.key(), value(question, random, usual));
            }
        }
        return Values.of(values);
    }

    private static Object value(Question question, Random random, boolean usual) {
        switch (question.kind()) {
            case CHOICE:
                List<Option> options = question.options();
                return options.get(random.nextInt(options.size())).key();
            case FLAG:
                return random.nextBoolean();
            case TEXT:
                return question.example().orElse("x");
            case GROUP:
                return asked(question.questions(), random, usual);
            case VARIANTS:
                Variant variant = question.variants()
                        .get(random.nextInt(question.variants().size()));
                return Chosen.of(variant.key(), asked(variant.questions(), random, usual));
            default:
                double low = usual && question.usual().isPresent()
                        ? question.usual().get().low()
                        : question.min().orElse(0);
                double high = usual && question.usual().isPresent()
                        ? question.usual().get().high()
                        : question.max().orElse(low + 1);
                double drawn = low + (high - low) * random.nextDouble();
                return question.kind() == Kind.COUNT
                        ? (Object) (int) Math.round(drawn)
                        : Quantities.of(question.kind().dimension().orElseThrow(), drawn);
        }
    }
}
