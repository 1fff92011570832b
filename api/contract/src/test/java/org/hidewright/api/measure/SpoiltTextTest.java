package org.hidewright.api.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Good texts spoilt at random: each is understood, or refused with a place inside it; nothing throws or hangs. */
class SpoiltTextTest {
    private static final List<String> GOOD = List.of(
            "2-3 oz",
            "2–3 oz",
            "2 to 3 oz",
            "3/32 in",
            "1 1/2 in",
            "1-1/2 in",
            "1-1/2-2 in",
            "31 +- 0.5 mm",
            "31 ± 0.5 mm",
            "31 +/- 0.5 mm",
            "31 mm ± 2 %",
            "5'6\"",
            "5 ft 6 in",
            "1.5mm",
            "7/64\"",
            "½ in",
            "1½ in",
            "12 irons",
            "180°",
            "90 deg",
            "35 %",
            "0,8 mm",
            ".5 in",
            "-2 - -1 mm",
            "1e3 mm",
            "22 sq ft",
            "22 ft²",
            "0.95 g/cm3",
            "1/16 in - 2 mm",
            "1,234.5 mm",
            "1 234 mm",
            "1 lb 4 oz",
            "8.5 x 11 in",
            "210×297 mm",
            "100 ± 0.5 x 150-151 mm",
            "3 mm; 4 mm",
            "3; 4; 5 mm",
            "2-3 oz; 31 ± 0.5 mm; 1 1/2 in");
    private static final String SIGNS = "0123456789 .,;:-+/±×x*'\"°%²³^_()eEinmftozlbgdTO½¾–−\u00A0\u2009\u200B"
            + "\0\t\n\\{}$€µπ∞\uD83D\uDE00\uFF15\u0663\uFEFF";
    private static final Set<String> KEYS =
            Stream.of(Trouble.values()).map(Trouble::key).collect(Collectors.toSet());

    private final SplittableRandom random = new SplittableRandom(1_814);
    private final TreeMap<String, Integer> met = new TreeMap<>();

    private String any(List<String> texts) {
        return texts.get(random.nextInt(texts.size()));
    }

    private char anySign() {
        return random.nextInt(10) == 0 ? (char) random.nextInt(65_536) : SIGNS.charAt(random.nextInt(SIGNS.length()));
    }

    private String spoil(String good) {
        StringBuilder text = new StringBuilder(good);
        for (int i = random.nextInt(4); i >= 0; i--) {
            int at = random.nextInt(text.length() + 1);
            int to = Math.min(text.length(), at + random.nextInt(4));
            char sign = anySign();
            switch (random.nextInt(7)) {
                case 0:
                    text.insert(at, sign);
                    break;
                case 1:
                    text.delete(at, to);
                    break;
                case 2:
                    text.replace(at, to, String.valueOf(sign));
                    break;
                case 3:
                    text.insert(at, any(GOOD));
                    break;
                case 4:
                    text.insert(at, text.substring(at, to).repeat(1 + random.nextInt(3)));
                    break;
                case 5:
                    text.setLength(at);
                    break;
                default:
                    text.insert(at, String.valueOf(sign).repeat(random.nextInt(60)));
            }
        }
        return text.toString();
    }

    @Test
    void nothingTypedBreaksTheReader() {
        int refused = 0;
        int times = LongRun.times(2_000, 20_000);
        for (int i = 0; i < times; i++) {
            String text = spoil(any(GOOD));
            Dimension asked = Dimension.values()[random.nextInt(Dimension.values().length)];
            Optional<Unit> assumed = random.nextBoolean() ? Optional.empty() : Optional.of(UnitReader.usual(asked));
            Optional<Unit> inches = assumed.map(unit -> Units.INCH);
            check(text, typed -> TypedText.quantity(typed, asked, assumed), this::checkTyped);
            check(text, typed -> TypedText.size(typed, inches), size -> {
                checkTyped(size.width());
                checkTyped(size.height());
            });
            check(text, typed -> TypedText.list(typed, asked, assumed), list -> list.forEach(this::checkTyped));
            refused += TypedText.quantity(text, asked, assumed).unreadable().isPresent() ? 1 : 0;
        }
        assertTrue(refused > times / 4 && refused < times, refused + " of " + times + " refused");
        assertTrue(met.size() > KEYS.size() * 2 / 3, "troubles met: " + met);
    }

    private interface Ask<T> {
        Reading<T> read(String text);
    }

    private interface Check<T> {
        void understood(T value);
    }

    private <T> void check(String text, Ask<T> ask, Check<T> check) {
        Reading<T> reading = ask.read(text);
        reading.understood().ifPresent(check::understood);
        reading.unreadable().ifPresent(trouble -> {
            met.merge(trouble.key(), 1, Integer::sum);
            assertTrue(KEYS.contains(trouble.key()), trouble::toString);
            assertTrue(trouble.column() >= 1 && trouble.column() <= Math.max(1, text.length()), () -> text + trouble);
            trouble.suggestion()
                    .ifPresent(right -> assertTrue(
                            ask.read(right).understood().isPresent(), () -> text + " put right as " + right));
        });
    }

    private void checkTyped(Typed typed) {
        Range range = typed.range();
        assertTrue(range.low() <= range.nominal() && range.nominal() <= range.high(), typed::toString);
        assertNotNull(typed.text());
        Range again = Shop.typed(typed.echo(), typed.dimension()).range();
        double largest = Math.max(Math.abs(range.low()), Math.abs(range.high()));
        assertEquals(range.low(), again.low(), largest * 1e-11, typed::toString);
        assertEquals(range.high(), again.high(), largest * 1e-11, typed::toString);
    }

    @Test
    void theLongestTextsAreRead() {
        List<String> long200 = new ArrayList<>();
        for (String piece : List.of(
                "1", " ", "1 ", "1,", "1.", "1-", "1/", "-", "'", "x", "in", "1x", "1;", "±", "½", "e", "1e", ";",
                "1 000 ", "sq ", "mm", "1 mm;", "1 mn;")) {
            long200.add(piece.repeat(200 / piece.length()));
            long200.add("1 " + piece.repeat(190 / piece.length()));
        }
        for (String text : long200) {
            check(text, typed -> TypedText.quantity(typed, Dimension.LENGTH, Optional.empty()), this::checkTyped);
            check(text, typed -> TypedText.size(typed, Optional.empty()), size -> checkTyped(size.width()));
            String list = text.repeat(TypedText.LONGEST_LIST / text.length());
            check(
                    list,
                    typed -> TypedText.list(typed, Dimension.LENGTH, Optional.empty()),
                    all -> all.forEach(this::checkTyped));
        }
        String many = "1 oz;".repeat(1999) + "1 oz";
        check(
                many,
                typed -> TypedText.list(typed, Dimension.LENGTH, Optional.empty()),
                all -> assertEquals(2000, all.size()));
        String endless = "1".repeat(10_000_000);
        assertTrue(TypedText.list(endless, Dimension.LENGTH, Optional.empty())
                .unreadable()
                .isPresent());
    }
}
