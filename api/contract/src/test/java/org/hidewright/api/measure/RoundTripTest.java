package org.hidewright.api.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Whatever is written in any unit, in any spelling and any way of writing numbers, reads back. */
class RoundTripTest {
    private static final double RELATIVE = 1e-12;

    private final SplittableRandom random = new SplittableRandom(20_261_125);

    private double anyValue() {
        double size = Math.pow(10, random.nextDouble(-4, 5));
        return random.nextInt(8) == 0 ? -size : size;
    }

    private Unit anyUnit() {
        return Units.all().get(random.nextInt(Units.all().size()));
    }

    private String anySpelling(Unit unit) {
        List<String> spellings = new ArrayList<>(unit.spellings());
        spellings.add(unit.symbol());
        String spelling = spellings.get(random.nextInt(spellings.size()));
        String space = random.nextBoolean() ? " " : "";
        return space + (random.nextInt(4) == 0 ? spelling.toUpperCase(Locale.ROOT) : spelling);
    }

    private String anyWriting(double value) {
        String plain = new BigDecimal(Double.toString(value)).toPlainString();
        switch (random.nextInt(5)) {
            case 0:
                return plain.replace('.', ',');
            case 1:
                return Double.toString(value);
            case 2:
                return plain.replace("-0.", "-.").replaceFirst("^0\\.", ".");
            case 3:
                return plain.replace('-', '−');
            default:
                return plain;
        }
    }

    @Test
    void aValueInAnyUnitReadsBack() {
        for (int i = 0; i < LongRun.times(4_000, 400_000); i++) {
            double value = anyValue();
            Unit unit = anyUnit();
            String text = anyWriting(value) + anySpelling(unit);
            Typed typed = Shop.typed(text, unit.dimension());
            assertEquals(value, unit.fromBase(typed.range().nominal()), Math.abs(value) * RELATIVE, text);
            double base = value * unit.inBase();
            assertEquals(base, typed.range().nominal(), Math.abs(base) * RELATIVE, text);
            assertEquals(unit, typed.unit(), text);
        }
    }

    @Test
    void aRangeInAnyUnitReadsBack() {
        String[] links = {"-", " - ", "–", " to "};
        for (int i = 0; i < LongRun.times(2_000, 100_000); i++) {
            double low = anyValue();
            double high = low + Math.abs(anyValue());
            Unit unit = anyUnit();
            String text = anyWriting(low) + links[random.nextInt(links.length)] + anyWriting(high) + anySpelling(unit);
            Range range = Shop.typed(text, unit.dimension()).range();
            assertEquals(low, unit.fromBase(range.low()), Math.abs(low) * RELATIVE, text);
            assertEquals(high, unit.fromBase(range.high()), Math.abs(high) * RELATIVE, text);
        }
    }

    @Test
    void theEchoOfAnythingReadsBack() {
        for (int i = 0; i < LongRun.times(2_000, 100_000); i++) {
            Unit unit = anyUnit();
            String text = anyWriting(anyValue()) + " +- " + anyWriting(Math.abs(anyValue())) + anySpelling(unit);
            Typed typed = Shop.typed(text, unit.dimension());
            Typed again = Shop.typed(typed.echo(), unit.dimension());
            double largest = Math.max(
                    Math.abs(typed.range().low()), Math.abs(typed.range().high()));
            assertEquals(typed.range().low(), again.range().low(), largest * RELATIVE, text);
            assertEquals(typed.range().high(), again.range().high(), largest * RELATIVE, text);
            assertEquals(typed.range().nominal(), again.range().nominal(), largest * RELATIVE, text);
        }
    }

    @Test
    void everyFractionOfAnInchReadsBack() {
        for (int denominator = 2; denominator <= 64; denominator *= 2) {
            for (int numerator = 1; numerator < denominator; numerator++) {
                for (String text : List.of("5 %d/%d in", "5-%d/%d in", "5 ft 5 %d/%d in")) {
                    String typed = String.format(text, numerator, denominator);
                    double inches = (text.contains("ft") ? 65 : 5) + (double) numerator / denominator;
                    assertEquals(inches * 25.4, Shop.mm(typed), 1e-12 * inches * 25.4, typed);
                }
            }
        }
    }

    @Test
    void vulgarFractionsMeanWhatUnicodeSays() {
        for (char sign = 0; sign < Character.MAX_VALUE; sign++) {
            if (!Glyphs.isVulgarFraction(sign)) {
                continue;
            }
            // Unicode's compatibility decomposition of ¾ is 3 ⁄ 4.
            String[] parts = Normalizer.normalize(String.valueOf(sign), Normalizer.Form.NFKD)
                    .split("\u2044");
            assertEquals(Double.parseDouble(parts[0]) / Double.parseDouble(parts[1]), Glyphs.vulgarFraction(sign), 0);
        }
        assertTrue(Glyphs.isVulgarFraction('½'));
    }
}
