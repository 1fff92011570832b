package org.hidewright.core.work;

import static org.hidewright.core.bench.Shop.keys;
import static org.hidewright.core.bench.Shop.said;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.hidewright.api.declaration.Chosen;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.measure.Angle;
import org.hidewright.api.measure.Length;
import org.hidewright.api.measure.Quantity;
import org.hidewright.api.measure.Size;
import org.hidewright.core.bench.Sampler;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.work.WorkedSlip.State;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each kind of question with good and bad answers, limits, units, ranges and decimal commas. */
class KindsTest {
    private final Shop shop = new Shop(new Sampler());

    private WorkedSlip asked(String question, String json) {
        String thickness = question.equals("thickness") ? "" : "'thickness': '2 mm'" + (question.isEmpty() ? "" : ", ");
        return shop.one("sampler", thickness + (question.isEmpty() ? "" : "'" + question + "': " + json));
    }

    private static Object value(WorkedSlip slip, String question) {
        return slip.questions()
                .orElseThrow(() -> new AssertionError(slip.remarks().toString()))
                .get(question)
                .orElseThrow();
    }

    @ParameterizedTest(name = "{0} = {1}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '§',
            value = {
                "thickness|'3 mm'|3",
                "thickness|3|3",
                "thickness|1.50|1.5",
                "thickness|'1,5 mm'|1.5",
                "thickness|'8 oz'|3.175",
                "thickness|'3/32 in'|2.38125",
                "thickness|'1-3 mm'|2",
                "thickness|'2 ± 0.5 mm'|2",
                "turn|'1/2 turn'|3.14159265358979",
                "turn|90|1.5707963267949",
                "panel|'20 sq ft'|1858060.8",
                "panel|2.5|25000",
                "weight|'1 lb'|453.59237",
                "weight|'2 oz'|56.69904625",
                "density|'860 kg/m³'|0.86",
                "density|'1,1'|1.1",
                "shrink|'35 %'|0.35",
                "shrink|'0.5'|0.005",
                "holes|'9'|9",
                "holes|9|9",
                "holes|9.0|9",
            })
    void aNumberIsReadWithItsUnitAndBareInTheUnitOfTheQuestion(String question, String json, double base) {
        WorkedSlip slip = asked(question, json);
        Object value = value(slip, question);
        double got = value instanceof Quantity<?> quantity ? quantity.base() : ((Number) value).doubleValue();
        assertEquals(base, got, 1e-12 * Math.abs(base) * 10);
        assertEquals(State.WORKED, slip.state());
    }

    /** The host does not know what is leather, and an angle or a price is not gauged. */
    @ParameterizedTest(name = "{0} = {1}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '§',
            value = {
                "thickness|'1-3 mm'",
                "turn|'80-100 deg'",
                "weight|'1-2 lb'",
                "cover|'20-30 mm x 40 mm'",
                "turn|'340-380 deg'"
            })
    void whatIsSaidOfARangeFitsWhateverIsAsked(String question, String json) {
        List<Remark> remarks = asked(question, json).remarks();
        assertTrue(keys(remarks).contains("midpoint"), remarks.toString());
        for (Remark remark : remarks) {
            String said = said(remark);
            assertTrue(!said.contains("leather") && !said.contains("Measure") && !said.contains("piece"), said);
        }
    }

    @ParameterizedTest(name = "{0} = {1}: {2}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '§',
            value = {
                "thickness|'3 kg'|reading.wrong-dimension.length",
                "thickness|''|reading.empty",
                "thickness|true|reading.not-a-number",
                "thickness|'3 sheep'|reading.unknown-unit",
                "thickness|'2 x 3 mm'|reading.several",
                "thickness|[2]|wrong-shape",
                "thickness|null|unanswered",
                "thickness|'0.3 mm'|below-limit",
                "thickness|'12.1 mm'|above-limit",
                "turn|'361 deg'|above-limit",
                "panel|'601 dm2'|above-limit",
                "density|'0.1'|below-limit",
                "cover|'0.5 x 20 mm'|below-limit",
                "cover|'20 mm x 3 m'|above-limit",
                "cover|'20 mm'|reading.one-side",
                "cover|{'w': 1}|wrong-shape",
                "holes|'7.5'|not-whole",
                "holes|7.5|not-whole",
                "holes|'1e12'|not-whole",
                "holes|'2-3'|not-whole",
                "holes|'7 mm'|reading.wrong-dimension.number",
                "holes|0|below-limit",
                "holes|21|above-limit",
                "shrink|'101 %'|above-limit",
                "shrink|-0.1|below-limit",
                "tannage|'crome'|no-such-option-nearest",
                "tannage|'paper'|no-such-option",
                "tannage|['chrome']|wrong-shape",
                "lined|'maybe'|not-yes-or-no",
                "lined|1|not-yes-or-no",
                "stamp|{'a': 1}|wrong-shape",
                "marks|'3 mm; 60 mm'|above-limit",
                "marks|'3 mm; 4 kg'|reading.wrong-dimension.length",
                "marks|['3 mm', [1]]|wrong-shape",
                "marks|'3 mm;;4 mm'|reading.empty-part",
                "marks|'3 mm, 4 mm'|list-with-commas",
                "marks|'3,4,5'|list-with-commas",
                "marks|'3 mm, 4 kg'|reading.left-over",
                "tannages|'chrome,oil-tanned'|list-with-commas",
                "tannages|'chrome, paper'|no-such-option",
                "windows|'1 x 2, 3 x 4'|list-with-commas",
                "counts|'1; 2.5'|not-whole",
                "counts|[1, 2.5]|not-whole",
                "tannages|'chrome; paper'|no-such-option",
                "tannages|['chrome', 'crome']|no-such-option-nearest",
                "faces|'yes; maybe'|not-yes-or-no",
                "windows|'1 x 2; 3'|reading.one-side",
                "core|5|no-such-option",
                "core|[]|wrong-shape",
                "core|{'round-bar': 5}|wrong-shape",
                "core|{}|which-variant",
                "core|{'round-bar': {'diameter': '6 mm'}, 'flat-ring': {}}|which-variant",
                "core|{'is': 'square-bar'}|no-such-option",
                "core|{'is': 'ruond-bar'}|no-such-option-nearest",
                "edge|'flat'|wrong-shape",
                "layers|{'id': 'a'}|rows-expected",
                "layers|'3 mm'|rows-expected",
                "layers|['3 mm']|rows-expected",
            })
    void whatCannotBeIsRefusedWithItsPlaceAndWhatWouldBeRight(String question, String json, String key) {
        WorkedSlip slip = asked(question, json);
        assertEquals(State.REFUSED, slip.state());
        assertEquals(List.of(key), keys(slip.remarks()).stream().distinct().toList());
        String said = said(slip.remarks().get(0));
        assertTrue(said.contains("| line 1, column "), said);
        assertTrue(said.contains(", slip “s”, question “" + question), said);
        assertTrue(!said.contains("«") && !said.contains("{0}") && !said.contains("{1}"), said);
    }

    @ParameterizedTest(name = "{0} = {1}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '§',
            value = {
                "tannage|'chrome'|chrome",
                "tannage|'Oil-Tanned'|oil-tanned",
                "tannages|'CHROME; chrome'|[chrome, chrome]",
                "tannage|' oil-tanned '|oil-tanned",
                "stamp|' Beetle box '|' Beetle box '",
                "stamp|1.50|1.50",
                "lined|'YES'|true",
                "lined|true|true",
                "lined|'off'|false",
                "tannages|'oil-tanned; chrome'|[oil-tanned, chrome]",
                "tannages|['oil-tanned', 'chrome']|[oil-tanned, chrome]",
                "tannages|[]|[]",
                "places|['belly', 'a; b']|[belly, a; b]",
                "places|'belly; bend'|[belly, bend]",
                "faces|'yes; no; on'|[true, false, true]",
                "faces|[true, 'no']|[true, false]",
                "counts|[1, '2; 3']|[1, 2, 3]",
                "marks|[3, '4 mm; 1/8 in']|[3.0 mm, 4.0 mm, 3.175 mm]",
                "marks|7|[7.0 mm]",
            })
    void aChoiceAFlagATextAndAListAreReadFromTextAndFromJson(String question, String json, String value) {
        WorkedSlip slip = asked(question, json);
        assertEquals(value.replace("'", ""), value(slip, question).toString());
        assertEquals(State.WORKED, slip.state());
    }

    @Test
    void listsOfSizesAreSizes() {
        assertEquals(
                List.of(Size.of(Length.ofMm(1), Length.ofMm(2)), Size.of(Length.ofMm(30), Length.ofMm(40))),
                value(asked("windows", "'1 x 2 mm; 3 x 4 cm'"), "windows"));
        assertEquals(
                List.of(Size.of(Length.ofMm(1), Length.ofMm(2)), Size.of(Length.ofMm(3), Length.ofMm(4))),
                value(asked("windows", "['1 x 2', '3 x 4 mm']"), "windows"));
    }

    @Test
    void theLimitsThemselvesAreAllowed() {
        for (String thickness : List.of("'0.4 mm'", "'12 mm'", "0.4", "'1.2 cm'")) {
            assertEquals(State.WORKED, asked("thickness", thickness).state(), thickness);
        }
        assertEquals(State.WORKED, asked("turn", "'1 turn'").state());
        assertEquals(State.WORKED, asked("turn", "0").state());
        assertEquals(State.WORKED, asked("shrink", "1").state());
        assertEquals(State.WORKED, asked("holes", "20").state());
    }

    @Test
    void rowsTypedAsATextAreToldWithRowsThatAreRight() {
        String said = said(asked("layers", "'3 mm'").remarks().get(0));
        assertTrue(said.contains("Write it like [{\"id\": \"strap\", \"thickness\": \"3 mm\"}]."), said);
        assertEquals(
                State.WORKED,
                asked("layers", "[{'id': 'strap', 'thickness': '3 mm'}]").state());
    }

    @ParameterizedTest(name = "{0} = {1}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '§',
            value = {"thickness|'4.1 mm'", "thickness|0.9", "density|'1.3'", "holes|10", "holes|1"})
    void whatIsUnusualIsWorkedAndNoted(String question, String json) {
        WorkedSlip slip = asked(question, json);
        assertEquals(State.WORKED, slip.state());
        assertEquals(List.of("unusual"), keys(slip.remarks()));
        assertEquals(List.of(), asked("thickness", "'4 mm'").remarks());
    }

    /** Usual is 1 to 4 mm: 0.98 mm and 1 mm are both 0.039 in, 4.01 mm is 0.158 in where 4 mm is 0.157 in. */
    @Test
    void whatReadsLikeAUsualLimitInSomeUnitIsNotUnusual() {
        assertEquals(List.of(), keys(asked("thickness", "'0.98 mm'").remarks()));
        assertEquals(List.of("unusual"), keys(asked("thickness", "'0.97 mm'").remarks()));
        assertEquals(List.of(), keys(asked("thickness", "'4.0001 mm'").remarks()));
        assertEquals(List.of("unusual"), keys(asked("thickness", "'4.01 mm'").remarks()));
    }

    @ParameterizedTest(name = "{0} %: {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "95|95 % is unusual; 0 % to 90 % is common.",
                "90.04|90.04 % is unusual; 0 % to 90 % is common.",
                "90.0001|",
                "101|101 % is above the most possible, 100 %.",
                "-1|-1 % is below the least possible, 0 %.",
                "10-20|“10-20 %” is worked at its midpoint, 15 %.",
                "80-110|One end of 80 % to 110 % lies past what is possible."
            })
    void aShareAskedForInPerCentIsToldInPerCent(String typed, String what) {
        List<String> said = asked("shrink", "'" + typed + " %'").remarks().stream()
                .map(remark -> said(remark).split(" \\| ")[0].replace('\u202F', ' '))
                .toList();
        if (what == null) {
            assertEquals(List.of(), said);
        } else {
            assertTrue(said.contains(what), () -> said.toString());
        }
    }

    @Test
    void aFractionWithoutAUnitIsToBeLookedAt() {
        assertEquals(List.of("bare-fraction"), keys(asked("marks", "'3/32; 4'").remarks()));
        assertEquals(
                List.of("bare-fraction", "bare-fraction"),
                keys(asked("cover", "'8 1/2 x 11 1/2'").remarks()));
        assertEquals(List.of(), keys(asked("marks", "'3/32 in; 4 mm'").remarks()));
        assertEquals(List.of(), keys(asked("marks", "'1/2 mm'").remarks()));
        assertEquals(List.of(), keys(asked("shrink", "'1/2'").remarks()));
    }

    @Test
    void aRangeIsWorkedAtItsMidpointAndSaysSo() {
        WorkedSlip slip = asked("thickness", "'2-3 oz'");
        assertEquals(2.5 * 25.4 / 64, ((Length) value(slip, "thickness")).mm(), 1e-12);
        assertEquals(List.of("midpoint"), keys(slip.remarks()));
        assertTrue(
                said(slip.remarks().get(0)).startsWith("“2-3 oz” is worked at its midpoint, 0.992\u00A0mm. | line 1"));
        assertEquals("2-3 oz", slip.asked().get(0).text());
        assertEquals(List.of("midpoint"), keys(asked("cover", "'10-12 x 20 mm'").remarks()));
        assertEquals(List.of("midpoint"), keys(asked("marks", "'2-3 mm; 4 mm'").remarks()));
    }

    @Test
    void aRangeThatReachesPastALimitIsWorkedWithACheck() {
        WorkedSlip slip = asked("thickness", "'0.3-2.5 mm'");
        assertEquals(List.of("midpoint", "range-past-limit"), keys(slip.remarks()));
        assertEquals(State.WORKED, slip.state());
        assertEquals(
                List.of("midpoint", "range-past-limit", "unusual"),
                keys(asked("thickness", "'11-12.5 mm'").remarks()).stream()
                        .limit(3)
                        .toList());
    }

    /** By the label that stands beside the field; whoever looks for it in the file has the key in its place. */
    @Test
    void whatIsNotAnsweredIsCalledByItsLabelAndPlacedByItsKey() {
        Remark remark = shop.one("sampler", "").remarks().get(0);
        assertTrue(said(remark).startsWith("“Thickness” has not been answered. | line 1"), said(remark));
        assertTrue(said(remark).contains("question “thickness”"), said(remark));
        assertTrue(said(remark).endsWith("Type it, for example 2 mm."), said(remark));
        Remark inRow = asked("layers", "[{'id': 'lining'}]").remarks().get(0);
        assertTrue(said(inRow).startsWith("“Layer thickness” has not been answered. | "), said(inRow));
        assertTrue(said(inRow).contains("question “layers[lining].thickness”"), said(inRow));
    }

    @Test
    void whatIsNotTypedIsTakenFromThePreset() {
        WorkedSlip slip = asked("", "");
        assertEquals(Angle.ofRadians(Math.PI), value(slip, "turn"));
        assertEquals(List.of("chrome", "vegetable"), value(slip, "tannages"));
        assertEquals(
                Chosen.of("round-bar", Values.of(Map.of("diameter", Length.ofMm(6), "turns", 1))), value(slip, "core"));
        assertEquals(
                "[strap: {thickness=3.0 mm, skived=false}]",
                value(slip, "layers").toString());
        assertTrue(slip.questions().orElseThrow().get("glue").isEmpty());
        assertEquals(List.of(), slip.remarks());
        for (AskedLine line : slip.asked()) {
            assertEquals(
                    !line.question().key().equals("thickness") || line.depth() > 0,
                    line.preset(),
                    line.question().key());
        }
    }

    @Test
    void aGroupLeftOutIsTakenWithThePresetsInsideIt() {
        assertEquals(
                "{bevel=1.0 mm, tannage=chrome}", value(asked("", ""), "edge").toString());
        assertEquals(
                "{bevel=2.0 mm, tannage=chrome}",
                value(asked("edge", "{'bevel': 2}"), "edge").toString());
    }

    @Test
    void anUnansweredQuestionSaysWhatAnAnswerLooksLike() {
        WorkedSlip slip = shop.one("sampler", "");
        assertEquals(List.of("unanswered"), keys(slip.remarks()));
        assertTrue(said(slip.remarks().get(0)).endsWith("Type it, for example 2 mm."));
        WorkedSlip without = shop.work("{\"id\": \"s\",\n \"calculator\": \"sampler\"}")
                .slips()
                .get("s");
        assertEquals(1, without.remarks().get(0).place().line());
    }

    @Test
    void aListWithCommasIsShownAsItWouldBeRead() {
        assertTrue(said(asked("marks", "'3 mm , 4 mm'").remarks().get(0))
                .endsWith("If a list is meant, write 3 mm; 4 mm."));
    }

    @Test
    void aMisspeltQuestionThatMustBeAnsweredIsToldOnce() {
        WorkedSlip slip = shop.one("sampler", "'tickness': 2");
        assertEquals(State.REFUSED, slip.state());
        assertEquals(List.of("misspelt-key"), keys(slip.remarks()));
        assertTrue(said(slip.remarks().get(0))
                .startsWith("“tickness” means nothing here; “thickness” would, and is missing. | line 1, column "));
        assertEquals("tickness", slip.remarks().get(0).question());
    }

    @Test
    void aMisspeltQuestionIsNamedWithTheNearest() {
        WorkedSlip slip = shop.one("sampler", "'thickness': 2, 'tickness': 3, 'weather': 1");
        assertEquals(State.WORKED, slip.state());
        assertTrue(said(slip.remarks().get(0))
                .startsWith("“tickness” means nothing here; “thickness” would. | line 1, column "));
        assertEquals("tickness", slip.remarks().get(0).question());
        assertEquals(2, slip.remarks().size());
    }
}
