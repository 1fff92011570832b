package org.hidewright.core.work;

import static org.hidewright.core.bench.Shop.json;
import static org.hidewright.core.bench.Shop.slip;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.api.measure.Length;
import org.hidewright.core.bench.Relay;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.work.WorkedSlip.State;
import org.junit.jupiter.api.Test;

/** Projects far larger than any bench holds: no depth of links may break the stack. */
class LargeProjectTest {
    private final Relay relay = new Relay();
    private final Shop shop = new Shop(relay);

    private static String from(String slip) {
        return json("'take': {'from': '" + slip + "', 'answer': 'give'}");
    }

    private static String relay(String id, String questions) {
        return slip(id, "relay", json(questions));
    }

    private static double given(WorkedSlip slip) {
        return ((Length) slip.answers().orElseThrow().get("give").orElseThrow()).mm();
    }

    @Test
    void aChainOfFiveThousandSlipsIsWorkedFromEitherEnd() {
        List<String> chain = new ArrayList<>();
        chain.add(relay("s0", "'take': '1 mm'"));
        for (int i = 1; i < 5000; i++) {
            chain.add(0, relay("s" + i, from("s" + (i - 1))));
        }
        WorkedProject worked = shop.work(chain.toArray(String[]::new));
        assertEquals(1, given(worked.slips().get("s4999")));
        assertEquals(5000, relay.count());
    }

    @Test
    void aCircleOfManySlipsDoesNotBreakTheStack() {
        List<String> circle = new ArrayList<>();
        for (int i = 0; i < 1000; i++) {
            circle.add(relay("s" + i, from("s" + (i + 1) % 1000)));
        }
        WorkedProject worked = shop.work(circle.toArray(String[]::new));
        assertTrue(worked.slips().values().stream().allMatch(slip -> slip.state() == State.REFUSED));
    }

    private WorkedProject chain(int slips) {
        List<String> chain = new ArrayList<>(List.of(relay("s0", "'take': '2-4 mm'")));
        for (int i = 1; i < slips; i++) {
            chain.add(0, relay("s" + i, from("s" + (i - 1))));
        }
        return shop.work(chain.toArray(String[]::new));
    }

    @Test
    void theRangesOfALongChainDoNotBreakTheStack() {
        assertEquals(
                4,
                chain(1000)
                        .ranges("s999")
                        .orElseThrow()
                        .study()
                        .spreads()
                        .get("give")
                        .high());
    }

    @Test
    void noMoreIsHeldThanThereIsRoomFor() {
        WorkedProject worked = chain(300);
        worked.ranges("s299");
        assertTrue(
                worked.trials().held() > SharedTrials.MOST / 2,
                () -> "held: " + worked.trials().held());
        for (int i = 0; i < 300; i += 30) {
            worked.ranges("s" + i);
            assertTrue(
                    worked.trials().held() <= SharedTrials.MOST,
                    () -> "held: " + worked.trials().held());
        }
    }
}
