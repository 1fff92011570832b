package org.hidewright.thickness;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.NoticeKind;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.calculator.Source;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Units;
import org.osgi.service.component.annotations.Component;

/** What a tannage, finish, temper and thickness will take at the bench, before the leather is bought. */
@Calculates("leather-suits")
@Component(service = Calculator.class)
public final class LeatherSuits implements Calculator<LeatherSuits.Leather, LeatherSuits.Suited> {
    private static final NoticeKind PLAN_WILL_NOT = NoticeKind.check("suits-plan-will-not");
    private static final NoticeKind PLAN_TEST_FIRST = NoticeKind.note("suits-plan-test-first");

    private static final String REASON = "reason-";
    private static final String INSTEAD = "instead-";
    private static final String STANDS = "stands-";

    private static final Set<Tannage> HOLDS_CHROME = EnumSet.of(Tannage.CHROME, Tannage.COMBINATION, Tannage.RETANNED);
    private static final Set<LeatherUse> NEEDS_A_BLADE = EnumSet.of(LeatherUse.SKIVING_THIN, LeatherUse.TURNED_EDGES);
    private static final Set<LeatherUse> MAKES_DUST =
            EnumSet.of(LeatherUse.SKIVING_THIN, LeatherUse.BURNISHING, LeatherUse.PAINTED_EDGES);

    /** What is asked. */
    public record Leather(
            @Asked(example = "vegetable") Tannage tannage,
            @Asked(example = "natural") Finish finish,
            @Asked(preset = "medium") Temper temper,

            @Asked(unit = "mm", min = "0.1 mm", max = "50 mm", usual = "0.4-6 mm", example = "4-5 oz")
            Length thickness,

            @Asked(example = "burnishing; folding") Optional<List<LeatherUse>> planned) {}

    /** What is answered: one row for each use, and the label with what it is usually made into. */
    public record Suited(
            @Answered(by = "bench-habit", lead = true) List<SuitedUse> uses,
            @Answered(by = "bench-habit") int doesCount,
            @Answered(by = "bench-habit") int testFirstCount,
            @Answered(by = "bench-habit") int willNotCount,
            @Answered(by = "sold-ranges") Phrase soldAs,
            @Answered(by = "sold-ranges") Phrase usualUses) {}

    /** One use: whether the leather takes it, why, what to do instead, and what the rule stands on. */
    public record SuitedUse(
            @RowId String id,
            @Answered LeatherUse use,
            @Answered Verdict verdict,
            @Answered Phrase reason,
            @Answered Optional<Phrase> instead,
            @Answered Phrase standsOn) {}

    @Override
    public Outcome<Suited> calculate(Leather leather, Working working) {
        List<SuitRule> deciding = Arrays.stream(LeatherUse.values())
                .map(use -> SuitRules.deciding(
                        use,
                        leather.tannage(),
                        leather.finish(),
                        leather.temper(),
                        leather.thickness().mm()))
                .toList();
        SoldLabel label = SoldLabel.of(leather.thickness().in(Units.OUNCE));
        Suited suited = new Suited(
                deciding.stream().map(LeatherSuits::row).toList(),
                count(deciding, Verdict.DOES),
                count(deciding, Verdict.TEST_FIRST),
                count(deciding, Verdict.WILL_NOT),
                label.asSold(),
                label.usualUses());
        return Outcome.of(suited, notices(leather, deciding));
    }

    private static SuitedUse row(SuitRule rule) {
        return new SuitedUse(
                rule.use().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                rule.use(),
                rule.verdict(),
                reason(rule),
                instead(rule),
                Phrase.of(STANDS + rule.source().key()));
    }

    private static Phrase reason(SuitRule rule) {
        return Phrase.of(REASON + rule.reason());
    }

    private static Optional<Phrase> instead(SuitRule rule) {
        return rule.instead().isEmpty() ? Optional.empty() : Optional.of(Phrase.of(INSTEAD + rule.instead()));
    }

    private static int count(List<SuitRule> rules, Verdict verdict) {
        return (int) rules.stream().filter(rule -> rule.verdict() == verdict).count();
    }

    private static List<Notice> notices(Leather leather, List<SuitRule> deciding) {
        Set<LeatherUse> planned = EnumSet.noneOf(LeatherUse.class);
        planned.addAll(leather.planned().orElse(List.of()));
        List<Notice> notices = new ArrayList<>();
        onPlan(planned, deciding, Verdict.WILL_NOT)
                .map(rule -> PLAN_WILL_NOT.at(
                        "planned", rule.use(), reason(rule), instead(rule).orElseThrow()))
                .forEach(notices::add);
        onPlan(planned, deciding, Verdict.TEST_FIRST)
                .map(rule -> PLAN_TEST_FIRST.at(
                        "planned", rule.use(), reason(rule), instead(rule).orElseThrow()))
                .forEach(notices::add);
        if (HOLDS_CHROME.contains(leather.tannage())) {
            notices.add(Cautions.CHROME_HEAT.with());
        }
        if (planned.stream().anyMatch(NEEDS_A_BLADE::contains)) {
            notices.add(Cautions.BLADE.with());
        }
        if (planned.stream().anyMatch(MAKES_DUST::contains)) {
            notices.add(Cautions.LEATHER_DUST.with());
        }
        return notices;
    }

    private static Stream<SuitRule> onPlan(Set<LeatherUse> planned, List<SuitRule> deciding, Verdict verdict) {
        return deciding.stream().filter(rule -> planned.contains(rule.use()) && rule.verdict() == verdict);
    }

    @Override
    public List<NoticeKind> notices() {
        return List.of(PLAN_WILL_NOT, PLAN_TEST_FIRST, Cautions.CHROME_HEAT, Cautions.BLADE, Cautions.LEATHER_DUST);
    }

    @Override
    public List<String> phrases() {
        Stream<String> ofRules = SuitRules.all()
                .flatMap(rule -> Stream.of(
                        REASON + rule.reason(),
                        INSTEAD + rule.instead(),
                        STANDS + rule.source().key()))
                .filter(Predicate.not(INSTEAD::equals));
        return Stream.concat(ofRules, SoldLabel.phrases().stream()).distinct().toList();
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Origins.BENCH_HABIT,
                Origins.BINDERS_DICTIONARY,
                Origins.BINDING_HANDBOOK,
                Origins.WET_LEATHER,
                Origins.CHROME_REACH,
                Origins.SOLD_RANGES);
    }
}
