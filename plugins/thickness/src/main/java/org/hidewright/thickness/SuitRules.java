package org.hidewright.thickness;

import static org.hidewright.thickness.Finish.PIGMENTED;
import static org.hidewright.thickness.Finish.SUEDE;
import static org.hidewright.thickness.Finish.WAXED;
import static org.hidewright.thickness.LeatherUse.BURNISHING;
import static org.hidewright.thickness.LeatherUse.DYEING;
import static org.hidewright.thickness.LeatherUse.FOLDING;
import static org.hidewright.thickness.LeatherUse.PAINTED_EDGES;
import static org.hidewright.thickness.LeatherUse.SKIVING_THIN;
import static org.hidewright.thickness.LeatherUse.TOOLING;
import static org.hidewright.thickness.LeatherUse.TURNED_EDGES;
import static org.hidewright.thickness.LeatherUse.WET_FORMING;
import static org.hidewright.thickness.SuitRule.of;
import static org.hidewright.thickness.Tannage.ALUM;
import static org.hidewright.thickness.Tannage.BONDED;
import static org.hidewright.thickness.Tannage.CHROME;
import static org.hidewright.thickness.Tannage.COMBINATION;
import static org.hidewright.thickness.Tannage.OIL;
import static org.hidewright.thickness.Tannage.RAWHIDE;
import static org.hidewright.thickness.Tannage.RETANNED;
import static org.hidewright.thickness.Tannage.VEGETABLE;
import static org.hidewright.thickness.Temper.FIRM;
import static org.hidewright.thickness.Temper.SOFT;
import static org.hidewright.thickness.Verdict.DOES;
import static org.hidewright.thickness.Verdict.TEST_FIRST;
import static org.hidewright.thickness.Verdict.WILL_NOT;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * What tannage, finish, temper and thickness do to each use. For every use the least favourable rule that is met
 * decides; of equal ones the first listed.
 *
 * <p>For every tannage and use exactly one rule of {@link #BY_TANNAGE} is met; the others can only make it worse.
 * Rules without a source of their own are common practice.
 */
final class SuitRules {
    static final List<SuitRule> BY_TANNAGE = List.of(
            of(BURNISHING, DOES, "burnish-vegetable").tanned(VEGETABLE),
            of(BURNISHING, TEST_FIRST, "burnish-half")
                    .tanned(COMBINATION, RETANNED)
                    .instead("paint-or-fold-edge"),
            of(BURNISHING, WILL_NOT, "burnish-chrome").tanned(CHROME).instead("paint-or-turn-edge"),
            of(BURNISHING, WILL_NOT, "burnish-felted").tanned(OIL, ALUM).instead("turn-or-bind-edge"),
            of(BURNISHING, WILL_NOT, "burnish-rawhide").tanned(RAWHIDE).instead("lace-edge"),
            of(BURNISHING, WILL_NOT, "burnish-bonded").tanned(BONDED).instead("paint-or-turn-edge"),
            of(TOOLING, DOES, "tool-vegetable").tanned(VEGETABLE),
            of(TOOLING, TEST_FIRST, "tool-combination")
                    .tanned(COMBINATION)
                    .instead("buy-vegetable")
                    .standingOn(Origins.BINDERS_DICTIONARY),
            of(TOOLING, WILL_NOT, "tool-chrome")
                    .tanned(CHROME)
                    .instead("buy-vegetable")
                    .standingOn(Origins.BINDERS_DICTIONARY),
            of(TOOLING, WILL_NOT, "tool-retanned").tanned(RETANNED).instead("buy-vegetable"),
            of(TOOLING, WILL_NOT, "tool-soft-tannage").tanned(OIL, ALUM).instead("applique-or-stitch"),
            of(TOOLING, TEST_FIRST, "tool-rawhide").tanned(RAWHIDE).instead("buy-vegetable"),
            of(TOOLING, WILL_NOT, "tool-bonded").tanned(BONDED).instead("buy-vegetable"),
            of(WET_FORMING, DOES, "form-vegetable").tanned(VEGETABLE),
            of(WET_FORMING, TEST_FIRST, "form-half")
                    .tanned(COMBINATION, RETANNED)
                    .instead("buy-vegetable"),
            of(WET_FORMING, WILL_NOT, "form-chrome")
                    .tanned(CHROME)
                    .instead("sew-shape")
                    .standingOn(Origins.BINDING_HANDBOOK),
            of(WET_FORMING, WILL_NOT, "form-oil").tanned(OIL).instead("sew-shape"),
            of(WET_FORMING, WILL_NOT, "form-alum")
                    .tanned(ALUM)
                    .instead("sew-shape")
                    .standingOn(Origins.WET_LEATHER),
            of(WET_FORMING, DOES, "form-rawhide").tanned(RAWHIDE),
            of(WET_FORMING, WILL_NOT, "form-bonded").tanned(BONDED).instead("sew-shape"),
            of(TURNED_EDGES, DOES, "turn-vegetable").tanned(VEGETABLE, COMBINATION, RETANNED),
            of(TURNED_EDGES, DOES, "turn-chrome").tanned(CHROME),
            of(TURNED_EDGES, DOES, "turn-alum").tanned(ALUM),
            of(TURNED_EDGES, TEST_FIRST, "turn-oil").tanned(OIL).instead("bind-edge"),
            of(TURNED_EDGES, WILL_NOT, "turn-rawhide")
                    .tanned(RAWHIDE)
                    .instead("lace-edge")
                    .standingOn(Origins.BINDERS_DICTIONARY),
            of(TURNED_EDGES, TEST_FIRST, "turn-bonded").tanned(BONDED).instead("bind-edge"),
            of(PAINTED_EDGES, DOES, "paint-firm").tanned(VEGETABLE, CHROME, COMBINATION, RETANNED),
            of(PAINTED_EDGES, DOES, "paint-bonded").tanned(BONDED),
            of(PAINTED_EDGES, WILL_NOT, "paint-oil").tanned(OIL).instead("turn-or-bind-edge"),
            of(PAINTED_EDGES, TEST_FIRST, "paint-spongy").tanned(ALUM).instead("turn-or-bind-edge"),
            of(PAINTED_EDGES, TEST_FIRST, "paint-rawhide").tanned(RAWHIDE).instead("lace-edge"),
            of(FOLDING, DOES, "fold-supple").tanned(CHROME, COMBINATION, RETANNED, OIL, ALUM),
            of(FOLDING, DOES, "fold-vegetable").tanned(VEGETABLE),
            of(FOLDING, TEST_FIRST, "fold-rawhide").tanned(RAWHIDE).instead("fold-damp"),
            of(FOLDING, TEST_FIRST, "fold-bonded").tanned(BONDED).instead("reinforce-fold"),
            of(SKIVING_THIN, DOES, "skive-vegetable").tanned(VEGETABLE, COMBINATION, RETANNED),
            of(SKIVING_THIN, TEST_FIRST, "skive-chrome")
                    .tanned(CHROME)
                    .instead("split-or-keen-blade")
                    .standingOn(Origins.BINDING_HANDBOOK),
            of(SKIVING_THIN, TEST_FIRST, "skive-stretchy").tanned(OIL, ALUM).instead("split-or-keen-blade"),
            of(SKIVING_THIN, TEST_FIRST, "skive-rawhide").tanned(RAWHIDE).instead("skive-damp"),
            of(SKIVING_THIN, WILL_NOT, "skive-bonded").tanned(BONDED).instead("buy-thinner"),
            of(DYEING, DOES, "dye-vegetable").tanned(VEGETABLE),
            of(DYEING, TEST_FIRST, "dye-chrome")
                    .tanned(CHROME, COMBINATION, RETANNED)
                    .instead("buy-dyed"),
            of(DYEING, TEST_FIRST, "dye-oil").tanned(OIL).instead("buy-dyed"),
            of(DYEING, TEST_FIRST, "dye-alum")
                    .tanned(ALUM)
                    .instead("spirit-dye")
                    .standingOn(Origins.WET_LEATHER),
            of(DYEING, TEST_FIRST, "dye-rawhide").tanned(RAWHIDE).instead("buy-dyed"),
            of(DYEING, WILL_NOT, "dye-bonded").tanned(BONDED).instead("buy-dyed"));

    static final List<SuitRule> BY_FINISH = List.of(
            of(BURNISHING, TEST_FIRST, "burnish-coated").finished(PIGMENTED).instead("trim-coat-first"),
            of(BURNISHING, TEST_FIRST, "burnish-waxed").finished(WAXED).instead("heat-and-rub"),
            of(BURNISHING, TEST_FIRST, "burnish-napped").finished(SUEDE).instead("turn-or-bind-edge"),
            of(TOOLING, WILL_NOT, "tool-coated").finished(PIGMENTED).instead("buy-natural"),
            of(TOOLING, TEST_FIRST, "tool-waxed").finished(WAXED).instead("buy-natural"),
            of(TOOLING, WILL_NOT, "tool-napped").finished(SUEDE).instead("buy-natural"),
            of(WET_FORMING, TEST_FIRST, "form-coated").finished(PIGMENTED).instead("buy-natural"),
            of(WET_FORMING, TEST_FIRST, "form-waxed").finished(WAXED).instead("buy-natural"),
            of(WET_FORMING, TEST_FIRST, "form-napped").finished(SUEDE).instead("buy-natural"),
            of(TURNED_EDGES, TEST_FIRST, "turn-waxed").finished(WAXED).instead("stitch-turned-edge"),
            of(PAINTED_EDGES, TEST_FIRST, "paint-waxed").finished(WAXED).instead("burnish-or-degrease"),
            of(PAINTED_EDGES, TEST_FIRST, "paint-napped").finished(SUEDE).instead("turn-or-bind-edge"),
            of(SKIVING_THIN, TEST_FIRST, "skive-napped").finished(SUEDE).instead("reinforce-skive"),
            of(DYEING, WILL_NOT, "dye-coated").finished(PIGMENTED).instead("buy-dyed"),
            of(DYEING, TEST_FIRST, "dye-waxed").finished(WAXED).instead("buy-dyed"),
            of(DYEING, TEST_FIRST, "dye-napped").finished(SUEDE).instead("buy-dyed"));

    static final List<SuitRule> BY_TEMPER = List.of(
            of(BURNISHING, TEST_FIRST, "burnish-soft").ofTemper(SOFT).instead("turn-or-bind-edge"),
            of(TOOLING, WILL_NOT, "tool-soft").ofTemper(SOFT).instead("buy-firm"),
            of(WET_FORMING, TEST_FIRST, "form-soft").ofTemper(SOFT).instead("buy-firm"),
            of(PAINTED_EDGES, TEST_FIRST, "paint-soft").ofTemper(SOFT).instead("turn-or-bind-edge"),
            of(SKIVING_THIN, TEST_FIRST, "skive-soft").ofTemper(SOFT).instead("split-or-keen-blade"),
            of(TURNED_EDGES, TEST_FIRST, "turn-firm").ofTemper(FIRM).instead("damp-or-cut-edge"),
            of(FOLDING, TEST_FIRST, "fold-firm").ofTemper(FIRM).instead("groove-and-damp"));

    static final List<SuitRule> BY_THICKNESS = List.of(
            of(BURNISHING, TEST_FIRST, "burnish-thin").thinnerThan(1.2).instead("double-then-burnish"),
            of(TOOLING, WILL_NOT, "tool-too-thin").thinnerThan(0.8).instead("back-or-buy-thicker"),
            of(TOOLING, TEST_FIRST, "tool-thin").thinnerThan(1.6).instead("back-or-buy-thicker"),
            of(WET_FORMING, TEST_FIRST, "form-thin").thinnerThan(1.0).instead("back-or-buy-thicker"),
            of(WET_FORMING, TEST_FIRST, "form-thick").from(4.0).instead("soak-longer"),
            of(TURNED_EDGES, WILL_NOT, "turn-too-thick").from(3.2).instead("split-or-cut-edge"),
            of(TURNED_EDGES, TEST_FIRST, "turn-thick").from(2.0).instead("skive-before-turning"),
            of(PAINTED_EDGES, TEST_FIRST, "paint-thin").thinnerThan(0.8).instead("turn-or-bind-edge"),
            of(FOLDING, TEST_FIRST, "fold-thick").from(3.2).instead("groove-and-damp"),
            of(SKIVING_THIN, TEST_FIRST, "skive-thin").thinnerThan(0.8).instead("buy-thinner"));

    private SuitRules() {}

    static Stream<SuitRule> all() {
        return Stream.of(BY_TANNAGE, BY_FINISH, BY_TEMPER, BY_THICKNESS).flatMap(List::stream);
    }

    /** The rule that decides a use for a leather of this thickness in millimetres. */
    static SuitRule deciding(LeatherUse use, Tannage tannage, Finish finish, Temper temper, double mm) {
        return all().filter(rule -> rule.use() == use && rule.meets(tannage, finish, temper, mm))
                .min(Comparator.comparing(SuitRule::verdict, Comparator.reverseOrder()))
                .orElseThrow(() -> new IllegalStateException("no rule for " + use + " on " + tannage));
    }
}
