package org.hidewright.core.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hidewright.api.declaration.Texts;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Role;
import org.hidewright.api.geometry.Outlines;
import org.hidewright.api.item.Fitting;
import org.hidewright.api.item.Hole;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.OnPart;
import org.hidewright.api.item.Operation;
import org.hidewright.api.item.Part;
import org.junit.jupiter.api.Test;

/** An item is said in the maker’s language, as far as its words are known there. */
class ItemWordsTest {
    private static final Map<String, String> GERMAN = Map.of(
            "item.part.pocket-nth", "Fach {0} von hinten",
            "item.part.pocket-0", "Rückseite",
            "item.leather.pocket-leather", "Fächerleder",
            "item.fitting.rivet", "Niete",
            "item.step.pocket-nth-on", "Fach {0} aufkleben",
            "item.tool.bone-folder", "Falzbein");
    private static final Texts TEXTS =
            (key, language) -> language.equals(Locale.GERMAN) ? Optional.ofNullable(GERMAN.get(key)) : Optional.empty();

    private static Part part(String id, String name) {
        return Part.of(id, name, Outlines.rectangle(Point.of(0, 0), 50, 50).path(Role.CUT))
                .leather("pocket leather")
                .thickness(1.2)
                .oversize(2)
                .pieces(1, 2)
                .hole(Hole.of("hole", Point.of(20, 20), 3))
                .build();
    }

    private static final Item ITEM = Item.builder()
            .part(part("pocket-0", "Back"))
            .part(part("pocket-2", "Pocket 2 from the back"))
            .part(part("tab", "Tab"))
            .fitting(Fitting.of("rivet", "Rivet", List.of(new OnPart("tab", "hole"))))
            .operation(Operation.of("pocket-2-on", "Glue pocket 2")
                    .on(List.of("pocket-2"))
                    .tool("Bone folder")
                    .build())
            .build();

    private static Item in(Locale language) {
        return new ItemWords(TEXTS).said(ITEM, new Wording(language, UnitSystem.METRIC));
    }

    @Test
    void wordsAreThoseOfTheLanguage() {
        Item german = in(Locale.GERMAN);
        assertEquals(
                List.of("Rückseite", "Fach 2 von hinten", "Tab"),
                german.parts().stream().map(Part::name).toList());
        assertEquals("Fächerleder", german.parts().get(0).leather());
        assertEquals("Niete", german.fittings().get(0).name());
        assertEquals("Fach 2 aufkleben", german.operations().get(0).what());
        assertEquals("Falzbein", german.operations().get(0).tool());
    }

    @Test
    void whereThereAreNoneItIsTheItemItself() {
        assertEquals(ITEM, in(Locale.FRENCH));
        assertEquals(
                ITEM.parts().get(1).outline(), in(Locale.GERMAN).parts().get(1).outline());
        assertEquals(3, in(Locale.GERMAN).parts().get(1).pieces());
    }
}
