package org.hidewright.core.jobcard;

import static org.hidewright.core.bench.Shop.json;
import static org.hidewright.core.bench.Shop.project;
import static org.hidewright.core.bench.Shop.slip;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.hidewright.api.document.Document;
import org.hidewright.api.document.Paragraph;
import org.hidewright.api.document.Section;
import org.hidewright.core.bench.Relay;
import org.hidewright.core.bench.Sampler;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.catalogue.Contributor;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip.State;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * A job card in the pseudo-language: whatever is neither data nor made strange was written past the texts.
 *
 * <p>Data of the maker is written with capitals alone in the project used here, so that it can be told from English.
 */
class PseudoLanguageTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 1);

    /** Formulas, numbers, units, ids, keys, names of classes and what was typed: the same in every language. */
    private static final Pattern DATA = Pattern.compile(
            "[\\p{Lu}\\d\\s\\p{Punct}\u00A0\u202F\u2003×·–—…→]*" // the maker's capitals, numbers and signs
                    + "|[a-z0-9]+(-[a-z0-9]+)*" // an id or key
                    + "|(deg|mm|in|dm²|g|g/cm³|ft²|%)");

    private static final Pattern MADE_STRANGE = Pattern.compile("\\[[^\\[\\]]*\\]");
    /** Ids and words of the project below that are not in capitals. */
    private static final Pattern TYPED = Pattern.compile("\\b(tickness|gone|sampler|belly|bend|b1|strap)\\b");

    private static final Pattern UNIT =
            Pattern.compile("(?<![\\p{L}])(mm|deg|dm²|cm²|g/cm³|g|in|ft²|in²|%)(?![\\p{L}])");

    private static WorkedProject everyState() {
        Shop shop = new Shop(new Sampler(), new Relay(), new Faulty());
        String text =
                "{\"hidewright\": 1, \"name\": \"FIELD KIT\", \"about\": \"NO. 7\", \"nmae\": \"X\", \"show\": 5, \"slips\": [\n"
                        + String.join(
                                ",\n",
                                List.of(
                                        json(
                                                "{'id': 'S1', 'calculator': 'sampler', 'title': 'STRAP', 'version': '1', 'questions':"
                                                        + " {'thickness': '5.5-6.5 MM', 'tickness': 1, 'glue': 1, 'lined': 'YES', 'stamp': 'LOGO',"
                                                        + " 'core': {'round-bar': {'diameter': '6 MM'}}, 'layers': [{'id': 'A1', 'thickness': '9-10.5',"
                                                        + " 'note': 'N1'}, {'id': 'A2', 'thickness': 2}], 'tannages': 'chrome; vegetable'}}"),
                                        slip("S2", "sampler", ""),
                                        slip(
                                                "S3",
                                                "sampler",
                                                json(
                                                        "'thickness': '3 SHEEP', 'tannage': 'crome', 'holes': '2.5', 'lined': 'X',"
                                                                + " 'core': {}, 'cover': '0.1 x 5', 'turn': '400 deg', 'edge': 5, 'layers': [{'id': 'B', "
                                                                + "'thickness': 1}, {'id': 'B', 'thickness': 1}]")),
                                        slip("S4", "sampler", json("'thickness': 2, 'stamp': 'refuse'")),
                                        slip("S5", "relay", json("'take': {'from': 'S4', 'answer': 'cut'}")),
                                        slip(
                                                "S6",
                                                "relay",
                                                json(
                                                        "'take': {'from': 'S1', 'answer': 'panel'}, 'more': {'from': 'S1', 'answer':"
                                                                + " 'cuts'}, 'all': {'from': 'S1', 'answer': 'rows'}, 'rows': {'from': 'S1', 'answer': 'rows'},"
                                                                + " 'times': {'from': 'S99', 'answer': 'x'}")),
                                        slip("S7", "gone", ""),
                                        json("{'id': 'S8', 'calculator': 'gone', 'from': 'org.gone'}"),
                                        json("{'id': 'S9', 'calculator': 'sampler', 'version': 9}"),
                                        slip("S10", "relay", json("'take': {'from': 'S10', 'answer': 'give'}")),
                                        slip("S11", "faulty", ""),
                                        slip(
                                                "S12",
                                                "relay",
                                                json("'take': {'from': 'S1', 'answer': 'cut'}, 'rows': []"))))
                        + "]}";
        return shop.bench().work(project(text));
    }

    private static List<String> plain(Document document) {
        List<String> plain = new ArrayList<>();
        for (String text : VisibleTexts.of(document)) {
            String left = text;
            for (String before = ""; !before.equals(left); ) {
                before = left;
                left = MADE_STRANGE.matcher(left).replaceAll(" ");
            }
            left = UNIT.matcher(left).replaceAll(" ");
            left = TYPED.matcher(left).replaceAll(" ");
            if (!DATA.matcher(left.strip()).matches()) {
                plain.add(text);
            }
        }
        return plain;
    }

    private static Document card(String language, UnitSystem system, Contributor... contributors) {
        Wording wording = new Wording(Locale.forLanguageTag(language), system);
        return new Packet(everyState(), wording)
                .documents(DAY, List.of(contributors), fault -> {})
                .get(Packet.JOB_CARD);
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void everyTextOfTheJobCardIsMadeStrange(UnitSystem system) {
        List<String> plain = plain(card("en-XA", system, new Contributor("S1.kit", job -> null)));
        plain.remove(system == UnitSystem.METRIC ? "1 March 2026" : "March 1, 2026");
        plain.removeIf(PseudoLanguageTest::isData);
        assertEquals(List.of(), plain);
    }

    /** What is left after that: formulas with their own letters, and the working with numbers put in. */
    private static boolean isData(String text) {
        return text.equals("L = 2 · t") || text.matches("S\\d+\\.[a-z]+") || text.matches("2 · [\\d.]+");
    }

    @Test
    void theProjectOfThisTestHasASlipInEveryState() {
        List<State> states = everyState().slips().values().stream()
                .map(slip -> slip.state())
                .distinct()
                .toList();
        assertEquals(State.values().length, states.size(), states.toString());
    }

    @Test
    void aTextWrittenPastTheMessagesIsFound() {
        Document planted = card(
                "en-XA",
                UnitSystem.METRIC,
                new Contributor(
                        "org.example.planted",
                        job -> List.of(Section.of(
                                "planted",
                                "",
                                Paragraph.of("Cut this first."),
                                Paragraph.of("[Çût thîš ëëë] and that")))));
        List<String> plain = plain(planted);
        assertTrue(plain.contains("Cut this first."), plain.toString());
        assertTrue(plain.contains("[Çût thîš ëëë] and that"), plain.toString());
    }

    @Test
    void anEnglishCardWouldNotPass() {
        List<String> plain = plain(card("en", UnitSystem.METRIC));
        for (String text :
                List.of("Job card", "Slip", "Cut length", "The job at a glance", "What really came out", "Stop")) {
            assertTrue(plain.contains(text), text);
        }
    }

    @Test
    void noTextOfTheCardIsMissing() {
        assertEquals(
                List.of(),
                VisibleTexts.of(card("en", UnitSystem.METRIC)).stream()
                        .filter(text -> text.contains("«"))
                        .toList());
    }
}
