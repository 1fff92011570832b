package org.hidewright.layout;

import static org.hidewright.layout.Cuts.at;
import static org.hidewright.layout.Cuts.hide;
import static org.hidewright.layout.Cuts.panel;
import static org.hidewright.layout.Cuts.priced;
import static org.hidewright.layout.Cuts.rectangle;
import static org.hidewright.layout.Outcomes.outcome;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hidewright.layout.CuttingLayout.Hide;
import org.hidewright.layout.CuttingLayout.Rest;
import org.junit.jupiter.api.Test;

/** What is left of leather is the leather with holes where the pieces lay; places are worked out by hand. */
class RestsTest {
    private static List<Rest> rests(Cuts cuts) {
        return outcome(cuts).answers().orElseThrow().rest();
    }

    /** 100 by 80 about 60,50 begins at 10,10; turned a quarter about 60,150 it is 80 by 100 and begins at 20,100. */
    @Test
    void aPanelIsLeftWithHolesWhereThePiecesLay() {
        Rest rest = rests(Cuts.of(rectangle("front", 100, 80))
                        .times(2)
                        .on(priced(panel("panel", 210, 297, 1), 12.60))
                        .rules(Cuts.rule("front", Lies.AT_ANY_ANGLE, null, null, null, null))
                        .laid(at("front-1", "panel", 60, 50, 0), at("front-2", "panel", 60, 150, 90)))
                .get(0);
        assertEquals("panel", rest.id());
        assertEquals("0,0 210,0 210,297 0,297", rest.outline());
        assertEquals(0, rest.rim().mm());
        assertEquals(Backbone.ACROSS_THE_SHEET, rest.backbone(), "as on the panel, though a hide has it up");
        assertEquals(List.of("hole 10,10 110,10 110,90 10,90", "hole 100,100 100,200 20,200 20,100"), rest.flaws());
        // right of a cut at 110 lie 100 by 297: 12.60 x 29700 / 62370 = 6
        assertEquals("6.00", rest.price().orElseThrow().amount().toPlainString());
    }

    @Test
    void aHideKeepsItsOutlineItsRimAndItsFlaws() {
        Rest rest = rests(Cuts.of(rectangle("tab", 60, 20))
                        .on(hide("0,0 600,0 600,400 0,400", 10, "marked 300,300 340,300 340,340"))
                        .laid(at("tab", "hide", 60, 40, 0)))
                .get(0);
        assertEquals("0,0 600,0 600,400 0,400", rest.outline());
        assertEquals(10, rest.rim().mm());
        assertEquals(Backbone.ACROSS_THE_SHEET, rest.backbone());
        assertEquals(List.of("marked 300,300 340,300 340,340", "hole 30,30 90,30 90,50 30,50"), rest.flaws());
        assertTrue(rest.price().isEmpty());
    }

    @Test
    void onlyLeatherThatIsCutFromIsLeft() {
        Cuts cuts = Cuts.of(rectangle("tab", 60, 20)).on(panel("one", 100, 100, 1), panel("other", 100, 100, 1));
        assertEquals(List.of(), rests(cuts));
        assertEquals(
                List.of("other"),
                rests(cuts.laid(at("tab", "other", 50, 50, 0))).stream()
                        .map(Rest::id)
                        .toList());
    }

    /** The next job lays its pieces round the holes: where a piece was, none can lie again. */
    @Test
    void whatIsLeftIsLeatherToTheNextLayout() {
        Cuts first = Cuts.of(rectangle("tab", 60, 20)).on(panel("panel", 100, 100, 1));
        Rest rest = rests(first.laid(at("tab", "panel", 40, 20, 0))).get(0);
        Hide left = hide(rest.outline(), rest.rim().mm(), rest.flaws().toArray(String[]::new));
        Cuts next = Cuts.of(rectangle("tab", 60, 20)).on(left);
        assertTrue(outcome(next.laid(at("tab", "hide", 40, 20, 0))).refused());
        assertFalse(outcome(next.laid(at("tab", "hide", 40, 50, 0))).refused());
    }
}
