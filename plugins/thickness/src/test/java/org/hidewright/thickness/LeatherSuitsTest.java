package org.hidewright.thickness;

import static org.hidewright.thickness.LeatherUse.BURNISHING;
import static org.hidewright.thickness.LeatherUse.DYEING;
import static org.hidewright.thickness.LeatherUse.FOLDING;
import static org.hidewright.thickness.LeatherUse.PAINTED_EDGES;
import static org.hidewright.thickness.LeatherUse.SKIVING_THIN;
import static org.hidewright.thickness.LeatherUse.TOOLING;
import static org.hidewright.thickness.LeatherUse.TURNED_EDGES;
import static org.hidewright.thickness.LeatherUse.WET_FORMING;
import static org.hidewright.thickness.Verdict.DOES;
import static org.hidewright.thickness.Verdict.TEST_FIRST;
import static org.hidewright.thickness.Verdict.WILL_NOT;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.measure.Length;
import org.hidewright.thickness.LeatherSuits.SuitedUse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class LeatherSuitsTest {
    private final LeatherSuits suits = new LeatherSuits();

    private Outcome<LeatherSuits.Suited> outcome(
            Tannage tannage, Finish finish, Temper temper, double mm, LeatherUse... planned) {
        return suits.calculate(
                new LeatherSuits.Leather(
                        tannage,
                        finish,
                        temper,
                        Length.ofMm(mm),
                        planned.length == 0 ? Optional.empty() : Optional.of(List.of(planned))),
                Working.NONE);
    }

    private Outcome<LeatherSuits.Suited> plain(Tannage tannage, LeatherUse... planned) {
        return outcome(tannage, Finish.NATURAL, Temper.MEDIUM, 1.8, planned);
    }

    private SuitedUse use(LeatherUse use, Outcome<LeatherSuits.Suited> outcome) {
        return Told.answers(suits, outcome).uses().stream()
                .filter(row -> row.use() == use)
                .findFirst()
                .orElseThrow();
    }

    private Verdict verdict(LeatherUse use, Tannage tannage) {
        return use(use, plain(tannage)).verdict();
    }

    @Test
    void vegetableTannedLeatherOfMediumWeightDoesEverything() {
        LeatherSuits.Suited suited = Told.answers(suits, plain(Tannage.VEGETABLE));
        assertEquals(8, suited.doesCount());
        assertEquals(0, suited.testFirstCount());
        assertEquals(0, suited.willNotCount());
        assertEquals(Phrase.of("sold-label", 4, 5), suited.soldAs());
        assertEquals(Phrase.of("sold-uses-4"), suited.usualUses());
        assertEquals(
                Arrays.asList(LeatherUse.values()),
                suited.uses().stream().map(SuitedUse::use).toList());
        assertEquals("wet-forming", suited.uses().get(2).id());
    }

    /** Roberts and Etherington, 1982, chrome tanning: hard to emboss; Cockerell, 1901: not soft when wet, hard to pare. */
    @Test
    void chromeTannedLeatherWillNotBurnishToolOrForm() {
        assertEquals(WILL_NOT, verdict(BURNISHING, Tannage.CHROME));
        assertEquals(WILL_NOT, verdict(TOOLING, Tannage.CHROME));
        assertEquals(WILL_NOT, verdict(WET_FORMING, Tannage.CHROME));
        assertEquals(TEST_FIRST, verdict(SKIVING_THIN, Tannage.CHROME));
        assertEquals(DOES, verdict(PAINTED_EDGES, Tannage.CHROME));
        assertEquals(DOES, verdict(TURNED_EDGES, Tannage.CHROME));
        assertEquals(
                Phrase.of("stands-binders-dictionary"),
                use(TOOLING, plain(Tannage.CHROME)).standsOn());
        assertEquals(
                Phrase.of("stands-binding-handbook"),
                use(WET_FORMING, plain(Tannage.CHROME)).standsOn());
    }

    @ParameterizedTest
    @EnumSource(
            value = Tannage.class,
            names = {"COMBINATION", "RETANNED"})
    void retannedAndCombinationLeatherHalfBurnishes(Tannage tannage) {
        SuitedUse burnishing = use(BURNISHING, plain(tannage));
        assertEquals(TEST_FIRST, burnishing.verdict());
        assertEquals(Phrase.of("reason-burnish-half"), burnishing.reason());
        assertEquals(Optional.of(Phrase.of("instead-paint-or-fold-edge")), burnishing.instead());
        assertEquals(Phrase.of("stands-bench-habit"), burnishing.standsOn());
    }

    /** American Institute for Conservation: untanned and alum-tawed skin stiffens, shrinks and cockles when wetted. */
    @Test
    void waterSpoilsTawedSkinAndFormsRawhide() {
        assertEquals(WILL_NOT, verdict(WET_FORMING, Tannage.ALUM));
        assertEquals(TEST_FIRST, verdict(DYEING, Tannage.ALUM));
        assertEquals(DOES, verdict(WET_FORMING, Tannage.RAWHIDE));
        assertEquals(WILL_NOT, verdict(TURNED_EDGES, Tannage.RAWHIDE));
        assertEquals(
                Phrase.of("stands-wet-leather"),
                use(WET_FORMING, plain(Tannage.ALUM)).standsOn());
    }

    @ParameterizedTest(name = "{0} on vegetable tannage, {1}, {2}, {3} mm: {4}")
    @CsvSource({
        "TOOLING, PIGMENTED, MEDIUM, 1.8, WILL_NOT",
        "DYEING, PIGMENTED, MEDIUM, 1.8, WILL_NOT",
        "BURNISHING, PIGMENTED, MEDIUM, 1.8, TEST_FIRST",
        "BURNISHING, WAXED, MEDIUM, 1.8, TEST_FIRST",
        "PAINTED_EDGES, WAXED, MEDIUM, 1.8, TEST_FIRST",
        "TOOLING, SUEDE, MEDIUM, 1.8, WILL_NOT",
        "FOLDING, SUEDE, MEDIUM, 1.8, DOES",
        "TOOLING, NATURAL, SOFT, 1.8, WILL_NOT",
        "FOLDING, NATURAL, FIRM, 1.8, TEST_FIRST",
        "BURNISHING, NATURAL, FIRM, 1.8, DOES",
        "BURNISHING, NATURAL, MEDIUM, 1.19, TEST_FIRST",
        "BURNISHING, NATURAL, MEDIUM, 1.2, DOES",
        "TOOLING, NATURAL, MEDIUM, 0.79, WILL_NOT",
        "TOOLING, NATURAL, MEDIUM, 0.8, TEST_FIRST",
        "TOOLING, NATURAL, MEDIUM, 1.6, DOES",
        "WET_FORMING, NATURAL, MEDIUM, 0.99, TEST_FIRST",
        "WET_FORMING, NATURAL, MEDIUM, 3.99, DOES",
        "WET_FORMING, NATURAL, MEDIUM, 4.0, TEST_FIRST",
        "TURNED_EDGES, NATURAL, MEDIUM, 1.99, DOES",
        "TURNED_EDGES, NATURAL, MEDIUM, 2.0, TEST_FIRST",
        "TURNED_EDGES, NATURAL, MEDIUM, 3.2, WILL_NOT",
        "PAINTED_EDGES, NATURAL, MEDIUM, 0.79, TEST_FIRST",
        "FOLDING, NATURAL, MEDIUM, 3.19, DOES",
        "FOLDING, NATURAL, MEDIUM, 3.2, TEST_FIRST",
        "SKIVING_THIN, NATURAL, MEDIUM, 0.79, TEST_FIRST",
        "SKIVING_THIN, NATURAL, MEDIUM, 0.8, DOES"
    })
    void finishTemperAndThicknessCanOnlyMakeItWorse(
            LeatherUse use, Finish finish, Temper temper, double mm, Verdict verdict) {
        assertEquals(
                verdict,
                use(use, outcome(Tannage.VEGETABLE, finish, temper, mm)).verdict());
    }

    @Test
    void everyTannageHasOneRuleForEveryUse() {
        for (Tannage tannage : Tannage.values()) {
            for (LeatherUse use : LeatherUse.values()) {
                List<SuitRule> met = SuitRules.BY_TANNAGE.stream()
                        .filter(rule -> rule.use() == use && rule.tannages().contains(tannage))
                        .toList();
                assertEquals(1, met.size(), () -> use + " on " + tannage + ": " + met);
            }
        }
    }

    @Test
    void everyRuleThatIsNotDoesSaysWhatToDoInsteadAndDoesSaysNothing() {
        SuitRules.all()
                .forEach(rule ->
                        assertEquals(rule.verdict() == DOES, rule.instead().isEmpty(), rule::toString));
    }

    @Test
    void everyReasonBelongsToOneRuleOnly() {
        List<String> reasons = SuitRules.all().map(SuitRule::reason).toList();
        assertEquals(reasons.size(), Set.copyOf(reasons).size());
    }

    @Test
    void noLeatherIsLeftWithoutAnAnswerAndNoConditionImprovesIt() {
        for (Tannage tannage : Tannage.values()) {
            for (LeatherUse use : LeatherUse.values()) {
                Verdict plain = SuitRules.deciding(use, tannage, Finish.NATURAL, Temper.MEDIUM, 1.8)
                        .verdict();
                for (Finish finish : Finish.values()) {
                    for (Temper temper : Temper.values()) {
                        for (double mm : new double[] {0.1, 0.9, 1.8, 3.5, 12}) {
                            SuitRule rule = SuitRules.deciding(use, tannage, finish, temper, mm);
                            assertTrue(rule.meets(tannage, finish, temper, mm));
                            assertTrue(rule.verdict().compareTo(plain) >= 0);
                        }
                    }
                }
            }
        }
    }

    @Test
    void aPlanTheLeatherWillNotTakeIsChecked() {
        Outcome<LeatherSuits.Suited> outcome = plain(Tannage.CHROME, SKIVING_THIN, WET_FORMING, FOLDING);
        assertEquals(
                List.of("suits-plan-will-not", "suits-plan-test-first", "chrome-heat", "blade", "leather-dust"),
                Told.by(suits, outcome));
        Notice willNot = outcome.notices().get(0);
        assertEquals("planned", willNot.place());
        assertEquals(
                List.of(WET_FORMING, Phrase.of("reason-form-chrome"), Phrase.of("instead-sew-shape")), willNot.args());
    }

    @ParameterizedTest(name = "{0} planned: {1}")
    @CsvSource({
        "SKIVING_THIN, blade;leather-dust",
        "TURNED_EDGES, blade",
        "BURNISHING, leather-dust",
        "PAINTED_EDGES, leather-dust",
        "TOOLING, ''",
        "FOLDING, ''"
    })
    void cautionsFollowTheWork(LeatherUse use, String cautions) {
        List<String> expected =
                Stream.of(cautions.split(";")).filter(key -> !key.isEmpty()).toList();
        assertEquals(expected, Told.by(suits, plain(Tannage.VEGETABLE, use)));
    }

    /** Commission Regulation (EU) 301/2014: chromium(VI). */
    @Test
    void leatherWithChromeInItIsKeptFromHeat() {
        Set<Tannage> cautioned = Arrays.stream(Tannage.values())
                .filter(tannage -> Told.by(suits, plain(tannage)).contains("chrome-heat"))
                .collect(Collectors.toSet());
        assertEquals(Set.of(Tannage.CHROME, Tannage.COMBINATION, Tannage.RETANNED), cautioned);
    }

    @Test
    void everyVerdictIsCounted() {
        LeatherSuits.Suited suited = Told.answers(suits, plain(Tannage.CHROME));
        assertEquals(3, suited.doesCount()); // turned and painted edges, folding
        assertEquals(2, suited.testFirstCount()); // skiving, dyeing
        assertEquals(3, suited.willNotCount()); // burnishing, tooling, wet forming
    }
}
