package org.hidewright.api.calculator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class RefusalTest {
    private static final Notice TOO_WIDE = NoticeKind.stop("too-wide").at("width", 3);
    private static final Notice TOO_LONG = NoticeKind.stop("too-long").at("length", 9);

    @Test
    void allReasonsAreTold() {
        Refusal refusal = new Refusal(List.of(TOO_WIDE, TOO_LONG));
        assertEquals(TOO_WIDE, refusal.notice());
        assertTrue(refusal.outcome().refused());
        assertEquals(List.of(TOO_WIDE, TOO_LONG), refusal.outcome().notices());
        assertEquals(List.of(TOO_WIDE), new Refusal(TOO_WIDE).outcome().notices());
    }

    @Test
    void withoutAReasonNothingIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Refusal(List.of()));
    }
}
