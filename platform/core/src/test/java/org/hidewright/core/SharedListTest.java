package org.hidewright.core;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Held against an ordinary list that is copied whole for each change. */
class SharedListTest {
    private static List<String> numbers(int size) {
        return IntStream.range(0, size).mapToObj(i -> "n" + i).toList();
    }

    private static List<Integer> differences(SharedList<String> one, SharedList<String> other) {
        List<Integer> found = new ArrayList<>();
        one.differences(other, found::add);
        return found;
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 255, 256, 257, 1000})
    void itHoldsWhatItWasMadeOf(int size) {
        List<String> plain = numbers(size);
        assertEquals(plain, SharedList.of(plain));
        assertThrows(IndexOutOfBoundsException.class, () -> SharedList.of(plain).get(size));
    }

    @Test
    void changesAreSeenInTheNewListAloneAndFoundAgain() {
        SplittableRandom random = new SplittableRandom(7);
        SharedList<String> list = SharedList.of(numbers(1000));
        List<String> plain = new ArrayList<>(list);
        for (int round = 0; round < 500; round++) {
            List<String> before = List.copyOf(plain);
            SharedList<String> was = list;
            SharedList.Draft<String> draft = list.draft();
            List<Integer> changed =
                    random.ints(round % 4, 0, 1000).distinct().sorted().boxed().toList();
            for (int at : changed) {
                String item = "r" + round;
                draft.set(at, item);
                plain.set(at, item);
                assertEquals(item, draft.get(at));
            }
            list = draft.done();
            assertEquals(plain, list);
            assertEquals(before, was);
            assertEquals(changed, differences(list, was));
            assertEquals(changed, differences(was, list));
        }
    }

    @Test
    void nothingCanBeChangedOnceADraftIsDone() {
        SharedList.Draft<String> draft = SharedList.of(numbers(3)).draft();
        draft.done();
        assertThrows(NullPointerException.class, () -> draft.set(0, "late"));
        assertThrows(
                UnsupportedOperationException.class,
                () -> SharedList.of(numbers(3)).set(0, "late"));
    }
}
