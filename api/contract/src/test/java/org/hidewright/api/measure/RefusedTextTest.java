package org.hidewright.api.measure;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RefusedTextTest {
    static Stream<RefusedText> all() {
        return RefusedText.all().stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("all")
    void isRefusedWithReasonPlaceAndWhatWouldBeRight(RefusedText refused) {
        Unreadable<?> unreadable = Shop.refused(refused.reader.apply(refused.text));
        assertAll(
                () -> assertEquals(refused.key, unreadable.key()),
                () -> assertEquals(refused.column, unreadable.column()),
                () -> assertEquals(refused.args, unreadable.args()),
                () -> assertEquals(refused.suggestion, unreadable.suggestion()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("all")
    void whatWouldBeRightIsRight(RefusedText refused) {
        refused.suggestion.ifPresent(
                text -> assertTrue(refused.reader.apply(text).understood().isPresent(), text));
    }

    @Test
    void everyTroubleHasATextThatMeetsIt() {
        Set<String> met = all().map(refused -> refused.key).collect(Collectors.toCollection(TreeSet::new));
        Set<String> known =
                Stream.of(Trouble.values()).map(Trouble::key).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(known, met);
    }
}
