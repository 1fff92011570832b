package org.hidewright.core.work;

import static org.hidewright.core.bench.Shop.json;
import static org.hidewright.core.bench.Shop.project;
import static org.hidewright.core.bench.Shop.projectText;
import static org.hidewright.core.bench.Shop.slip;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hidewright.core.bench.Relay;
import org.hidewright.core.bench.Sampler;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.range.Choices;
import org.hidewright.core.range.RefusedPart;
import org.hidewright.core.range.Spread;
import org.hidewright.core.wording.Remark;
import org.junit.jupiter.api.Test;

/** Ranges typed on slips, carried over links: {@code relay} gives the sum of what it takes and what is more. */
class SlipRangesTest {
    private static final double SQRT_3 = Math.sqrt(3);

    private final Relay relay = new Relay();
    private final Shop shop = new Shop(relay, new Sampler());

    private static String relay(String id, String questions) {
        return slip(id, "relay", json(questions));
    }

    private static String from(String question, String slip) {
        return json("'" + question + "': {'from': '" + slip + "', 'answer': 'give'}");
    }

    private static Spread spread(WorkedProject worked, String slip, String place) {
        return worked.ranges(slip).orElseThrow().study().spreads().get(place);
    }

    private static List<String> inputs(WorkedProject worked, String slip) {
        return worked.ranges(slip).orElseThrow().inputs().stream()
                .map(input ->
                        input.slip() + " " + input.path() + " " + input.typed().text())
                .toList();
    }

    @Test
    void aRangeGoesThroughALink() {
        WorkedProject worked =
                shop.work(relay("a", "'take': '2-4 mm'"), relay("b", from("take", "a") + ", 'more': '31 ± 0.5 mm'"));
        assertEquals(List.of("a take 2-4 mm", "b more 31 ± 0.5 mm"), inputs(worked, "b"));
        Spread sum = spread(worked, "b", "give");
        assertEquals(34, sum.nominal());
        assertEquals(32.5, sum.low());
        assertEquals(35.5, sum.high());
        assertEquals(Math.hypot(1, 0.5) / SQRT_3, sum.firstOrder().standardUncertainty(), 1e-12);
        assertEquals(0.8, sum.firstOrder().shares()[0], 1e-12);
        assertEquals(List.of("a take 2-4 mm"), inputs(worked, "a"));
    }

    @Test
    void whatTwoSlipsShareMovesThemTogether() {
        // twice the same thickness: 2 to 4 becomes 4 to 8, where two of their own would seldom meet both ends
        WorkedProject shared = shop.work(
                relay("t", "'take': '2-4 mm'"),
                relay("a", from("take", "t")),
                relay("b", from("take", "t")),
                relay("sum", from("take", "a") + ", " + from("more", "b")));
        Spread twice = spread(shared, "sum", "give");
        assertEquals(1, shared.ranges("sum").orElseThrow().inputs().size());
        assertEquals(2 / SQRT_3, twice.firstOrder().standardUncertainty(), 1e-12);
        assertEquals(4, twice.low());
        assertEquals(8, twice.high());
        WorkedProject apart = shop.work(
                relay("a", "'take': '2-4 mm'"),
                relay("b", "'take': '2-4 mm'"),
                relay("sum", from("take", "a") + ", " + from("more", "b")));
        assertEquals(
                Math.sqrt(2) / SQRT_3, spread(apart, "sum", "give").firstOrder().standardUncertainty(), 1e-12);
    }

    @Test
    void withoutARangeNothingIsTried() {
        WorkedProject worked =
                shop.work(relay("a", "'take': '3 mm'"), relay("b", from("take", "a")), relay("c", "'take': '2-4 mm'"));
        assertEquals(3, relay.count(), "ranges are not worked before they are asked for");
        assertEquals(Optional.empty(), worked.ranges("b"));
        assertEquals(Optional.empty(), worked.ranges("nowhere"));
        assertEquals(3, relay.count());
        assertSame(worked.ranges("c"), worked.ranges("c"));
        assertEquals(3 + worked.ranges("c").orElseThrow().study().tried() + 1, relay.count());
    }

    @Test
    void onlyWhatARangeReachesIsWorkedAgain() {
        WorkedProject worked = shop.work(
                relay("still", "'take': '3 mm'"),
                relay("a", "'take': '2-4 mm'"),
                relay("b", from("take", "a") + ", " + from("more", "still")));
        int before = relay.count();
        int tried = worked.ranges("b").orElseThrow().study().tried() + 1;
        // of a the midpoint is worked once, though the study of b comes by it twice
        assertEquals(before + 2 * tried - 1, relay.count());
    }

    private WorkedProject chain(int slips) {
        List<String> chain = new ArrayList<>(List.of(relay("s0", "'take': '998-1001 m', 'times': '2-4'")));
        for (int i = 1; i < slips; i++) {
            chain.add(relay("s" + i, from("take", "s" + (i - 1)) + (i == 7 ? ", " + json("'more': '1-3 mm'") : "")));
        }
        return shop.bench().work(project(projectText(chain.toArray(String[]::new))));
    }

    private static String study(WorkedProject worked, int slip) {
        SlipRanges ranges = worked.ranges("s" + slip).orElseThrow();
        return ranges.inputs() + " " + ranges.study() + " " + ranges.study().refused()
                + ranges.study().choices();
    }

    /** A slip asked for alone shares nothing with others: what it comes to is what it has to come to. */
    @Test
    void inWhateverOrderSlipsAreAskedForTheyComeToTheSame() {
        WorkedProject forward = chain(9);
        WorkedProject backward = chain(9);
        List<String> fromTheEnd = new ArrayList<>();
        for (int i = 8; i >= 0; i--) {
            fromTheEnd.add(0, study(backward, i));
        }
        for (int i = 0; i < 9; i++) {
            String alone = study(chain(9), i);
            assertEquals(alone, study(forward, i));
            assertEquals(alone, fromTheEnd.get(i));
        }
    }

    @Test
    void aChainAskedSlipBySlipWorksEachSlipOnceForEachValueTried() {
        WorkedProject worked = shop.bench().work(project(projectText(sharing(10))));
        int before = relay.count();
        int tried = 0;
        for (int i = 0; i < 10; i++) {
            tried += worked.ranges("s" + i).orElseThrow().study().tried() + 1;
        }
        assertEquals(before + tried, relay.count());
    }

    @Test
    void askedFromItsEndAChainIsWorkedOnceMoreAtMostForEachSlipWhileThereIsRoom() {
        WorkedProject worked = shop.bench().work(project(projectText(sharing(10))));
        int before = relay.count();
        int tried = 0;
        for (int i = 9; i >= 0; i--) {
            tried += worked.ranges("s" + i).orElseThrow().study().tried() + 1;
        }
        assertTrue(relay.count() - before <= 2 * tried, relay.count() + " calls for " + tried + " values");
    }

    private static String[] sharing(int slips) {
        String[] chain = new String[slips];
        chain[0] = relay("s0", "'take': '2-4 mm'");
        for (int i = 1; i < slips; i++) {
            chain[i] = relay("s" + i, from("take", "s" + (i - 1)));
        }
        return chain;
    }

    @Test
    void itemsRowsAndSidesAreInputsOfTheirOwn() {
        WorkedProject worked = shop.work(
                relay(
                        "a",
                        "'all': '1-2 mm; 5 mm; 6-8 mm', 'rows': [{'id': 'x', 'length': '3 ± 1 mm'}, {'id': 'y', 'length': 4}]"));
        assertEquals(List.of("a all[1] 1-2 mm", "a all[3] 6-8 mm", "a rows[x].length 3 ± 1 mm"), inputs(worked, "a"));
        assertEquals(1.5, spread(worked, "a", "table[line-1].at").nominal());
        assertEquals(2, spread(worked, "a", "table[line-1].at").high());
        assertEquals(5, spread(worked, "a", "table[line-2].at").high());
        assertEquals(6, spread(worked, "a", "table[line-3].at").low());
        assertEquals(2, spread(worked, "a", "table[x].at").low());
        assertEquals(4, spread(worked, "a", "table[x].at").high());
    }

    @Test
    void aSizeIsTwoInputsInAListToo() {
        WorkedProject worked = shop.work(slip(
                "s", "sampler", json("'thickness': '2 mm', 'cover': '105 ± 1 x 148 ± 2 mm', 'windows': '1-2 x 3 mm'")));
        assertEquals(
                List.of("cover.width", "cover.height", "windows[1].width"),
                worked.ranges("s").orElseThrow().inputs().stream()
                        .map(RangedInput::path)
                        .toList());
    }

    @Test
    void aCountThatMovesIsAChoice() {
        WorkedProject worked = shop.work(relay("a", "'times': '2-4'"));
        Choices times = worked.ranges("a").orElseThrow().study().choices().get("times");
        assertEquals(3, times.nominal());
        assertEquals(Set.of(2, 4), times.others());
        assertEquals(2.5, times.switches().get(0).at(), 1e-6);
        assertEquals(3.5, times.switches().get(1).at(), 1e-6);
    }

    @Test
    void thePartThatALimitRefusesIsTold() {
        // the relay takes no more than 1000 m
        WorkedProject worked = shop.work(relay("a", "'take': '998-1001 m'"), relay("b", from("take", "a")));
        List<RefusedPart<Remark>> parts =
                worked.ranges("b").orElseThrow().study().refused();
        assertEquals(1, parts.size());
        assertEquals(1_000_000, parts.get(0).part().from(), 0.01);
        assertEquals(1_001_000, parts.get(0).part().to());
        assertEquals("notice.above-limit", parts.get(0).why().key());
        assertEquals("a", parts.get(0).why().slip());
        assertEquals(1_000_000, spread(worked, "b", "give").high(), 100_000);
    }

    @Test
    void aSlipThatIsNotWorkedHasNoRanges() {
        WorkedProject worked = shop.work(
                relay("bad", "'take': '5-6 sheep'"), relay("b", from("take", "bad")), slip("far", "nowhere", ""));
        assertEquals(Optional.empty(), worked.ranges("bad"));
        assertEquals(Optional.empty(), worked.ranges("b"));
        assertEquals(Optional.empty(), worked.ranges("far"));
    }
}
