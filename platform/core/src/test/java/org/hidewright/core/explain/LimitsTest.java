package org.hidewright.core.explain;

import static org.hidewright.core.bench.Shop.keys;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.hidewright.api.declaration.Kind;
import org.hidewright.api.declaration.Question;
import org.hidewright.core.bench.Sampler;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is told as the least or the most can be typed, in the units that are seen. */
class LimitsTest {
    private static final Wording INCHES = new Wording(Locale.ENGLISH, UnitSystem.INCH);

    private final Shop shop = new Shop(new Sampler());

    private List<Remark> remarks(String question, String typed) {
        String thickness = question.equals("thickness") ? "" : "'thickness': '2 mm', ";
        return shop.one("sampler", thickness + "'" + question + "': '" + typed + "'")
                .remarks();
    }

    @Test
    void aLimitAsItIsToldIsTaken() {
        List<String> tried = new ArrayList<>();
        List<Question> questions = shop.catalogue()
                .find("sampler")
                .orElseThrow()
                .calculator()
                .declaration()
                .questions();
        for (Question question : questions) {
            for (UnitSystem system : UnitSystem.values()) {
                Limits limits = new Limits(question, system);
                Stream.of(limits.min(), limits.max())
                        .flatMap(Optional::stream)
                        .map(limit -> question.kind() == Kind.SIZE ? limit + " x " + limit : limit)
                        .forEach(limit -> {
                            List<String> said = keys(remarks(question.key(), limit));
                            assertFalse(said.contains("below-limit"), question.key() + " " + limit + said);
                            assertFalse(said.contains("above-limit"), question.key() + " " + limit + said);
                            tried.add(limit);
                        });
            }
        }
        assertEquals(2 * 14, tried.size(), "14 limits are declared: " + tried);
    }

    /** By hand: 0.4 mm are 0.01575 in, 12 mm 0.47244 in; 1 mm is 0.03937 in, 2 m are 78.7402 in. */
    @ParameterizedTest(name = "{0} = {1}: {2}")
    @CsvSource({
        "thickness, 0.0157 in, 0.016 in",
        "thickness, 0.4725 in, 0.472 in",
        "cover, 0.039 in x 2 in, 0.040 in",
        "cover, 78.75 in x 2 in, 78.740 in"
    })
    void aRefusalNamesALimitThatIsTaken(String question, String typed, String limit) {
        Remark refused = remarks(question, typed).get(0);
        String said = INCHES.what(refused).replace('\u00a0', ' ');
        assertTrue(said.contains(limit), said);
    }
}
