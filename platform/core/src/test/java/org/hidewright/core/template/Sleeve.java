package org.hidewright.core.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.declaration.DeclaredCalculator;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.item.Item;
import org.hidewright.api.measure.Length;
import org.hidewright.core.wording.Remark;

/** A template that tests change, with what it is asked and what is told of it. */
public final class Sleeve {
    public static final DeclaredCalculator PLATES = RecordCalculator.of(new Plates());

    public static final DeclaredCalculator DOUBLING = RecordCalculator.of(new Doubling());

    public static final String SLEEVE = """
            {
              "template": 1,
              "id": "card-sleeve",
              "title": "Card sleeve",
              "purpose": "Two panels and stepped pockets for cards.",
              "questions": [
                {"key": "card-width", "kind": "length", "unit": "mm", "min": "30 mm", "max": "200 mm",
                 "preset": "85.6 mm", "label": "Width of a card", "help": "The longer side."},
                {"key": "pockets", "kind": "count", "min": "0", "max": "6", "preset": "2", "label": "Pockets", "help": "In front."},
                {"key": "lining", "kind": "choice", "options": {"none": "None", "cloth": "Cloth"}, "preset": "none",
                 "label": "Lining", "help": "Inside."},
                {"key": "thumb", "kind": "flag", "preset": "yes", "label": "Thumb notch", "help": "To push cards out."}
              ],
              "values": {
                "margin": "3 mm + 1 mm",
                "width": "card-width + 2 * margin",
                "step": "12 mm"
              },
              "tells": [
                {"key": "too-many", "severity": "check", "when": "pockets > 4", "at": "pockets", "with": ["pockets", "width"],
                 "what": "{0} pockets pile up at {1}.", "why": "It doesn't close.", "next": "Take fewer."},
                {"key": "no-pocket", "severity": "stop", "when": "pockets is 0", "what": "No pocket.", "why": "A sleeve has one.",
                 "next": "Take one."}
              ],
              "answers": [
                {"key": "panel-width", "kind": "length", "unit": "mm", "step": "0.1 mm", "round": "up", "is": "width", "lead": true,
                 "label": "Width of a panel", "help": "As cut."},
                {"key": "lined", "kind": "flag", "is": "lining is not 'none'", "label": "Lined", "help": "Or not."}
              ],
              "draws": {
                "calculator": "plates",
                "questions": {
                  "plates": [
                    {"id": "back", "name": "Back", "width": "=width", "height": "90 mm"},
                    {"each": "=pockets", "id": "pocket-{nth}", "name": "Pocket {nth}", "width": "=width",
                     "height": "=60 mm - (nth - 1) * step", "turned": "=nth * 10 deg"},
                    {"when": "=lining is 'cloth'", "id": "lining", "name": "Lining", "width": "=width - 2 mm", "height": "88 mm"}
                  ]
                }
              }
            }
            """;

    private Sleeve() {}

    static TemplateReader.Result read(String text) {
        return TemplateReader.read(
                text,
                id -> Stream.of(PLATES, DOUBLING)
                        .filter(found -> found.declaration().id().equals(id))
                        .findFirst());
    }

    static TextTemplate sleeve() {
        TemplateReader.Result result = read(SLEEVE);
        assertEquals(List.of(), result.remarks());
        return result.template().orElseThrow();
    }

    static Values asked(int pockets, String lining) {
        return Values.of(Map.of("card-width", Length.ofMm(85.6), "pockets", pockets, "lining", lining, "thumb", true));
    }

    static Outcome<Values> work(TextTemplate template, Values asked) {
        return template.work(asked, Working.NONE);
    }

    static Item item(Outcome<Values> outcome) {
        return (Item) outcome.answers().orElseThrow().get("item").orElseThrow();
    }

    static String asking(String values) {
        return SLEEVE.replace("\"step\": \"12 mm\"", "\"step\": \"12 mm\", " + values);
    }

    /** The first thing said of a template in which something was replaced: kind, place and what it is told with. */
    static String said(String was, String is) {
        assertTrue(SLEEVE.contains(was), was);
        TemplateReader.Result result = read(SLEEVE.replace(was, is));
        Remark remark = result.remarks().get(0);
        if (remark.stops()) {
            assertFalse(result.template().isPresent());
        }
        return remark.key().replace("notice.", "") + " " + remark.place();
    }

    static List<String> all(String was, String is) {
        assertTrue(SLEEVE.contains(was), was);
        return read(SLEEVE.replace(was, is)).remarks().stream()
                .map(remark -> remark.key().replace("notice.", "") + " " + remark.place())
                .toList();
    }
}
