package org.hidewright.core.work;

import static org.hidewright.core.bench.Shop.json;
import static org.hidewright.core.bench.Shop.slip;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.hidewright.api.document.Document;
import org.hidewright.api.document.Paragraph;
import org.hidewright.api.document.Section;
import org.hidewright.core.bench.Relay;
import org.hidewright.core.bench.Sampler;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.jobcard.Packet;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.junit.jupiter.api.Test;

/** Slips that only try something out are worked, and not made. */
class WhatIfTest {
    private final Shop shop = new Shop(new Sampler(), new Relay());

    private static String trying(String slip, String of) {
        return slip.replaceFirst("\\{", "{\"what-if\": \"" + of + "\", ");
    }

    private final String strap = slip("strap", "sampler", json("'thickness': '2 mm'"));
    private final String thicker = trying(slip("thicker", "sampler", json("'thickness': '3 mm'")), "strap");

    @Test
    void itIsWorkedAndLeftOutOfWhatIsMade() {
        WorkedProject worked = shop.work(strap, thicker);
        assertTrue(worked.slips().get("thicker").answers().isPresent());
        assertTrue(worked.leftOut().isEmpty(), "all of it is worked");
        WorkedProject made = worked.toMake();
        assertEquals(List.of("strap"), List.copyOf(made.slips().keySet()));
        assertEquals(
                List.of("thicker"),
                made.leftOut().stream().map(slip -> slip.slip().id()).toList());
        assertTrue(made.remarks().stream().noneMatch(remark -> remark.slip().equals("thicker")));
    }

    @Test
    void whatAnotherTakesFromStaysAlsoThroughSeveral() {
        WorkedProject made = shop.work(
                        thicker,
                        trying(slip("between", "relay", json("'take': {'from': 'thicker', 'answer': 'cut'}")), "x"),
                        slip("last", "relay", json("'take': {'from': 'between', 'answer': 'give'}")),
                        trying(slip("idle", "relay", json("'take': {'from': 'between', 'answer': 'give'}")), "last"))
                .toMake();
        assertEquals(
                List.of("thicker", "between", "last"), List.copyOf(made.slips().keySet()));
    }

    @Test
    void nothingThatIsMadeIsOfferedALinkToIt() {
        WorkedProject worked = shop.work(
                strap,
                thicker,
                slip("real", "relay", json("'take': '1 mm'")),
                trying(slip("trial", "relay", json("'take': '1 mm'")), "real"));
        assertFalse(offered(worked, "real").contains("thicker"));
        assertTrue(offered(worked, "real").contains("strap"));
        assertTrue(offered(worked, "trial").contains("thicker"), "what tries something out may take from another");
    }

    private static List<String> offered(WorkedProject worked, String slip) {
        return Linkable.to(
                        worked,
                        slip,
                        worked.slips()
                                .get(slip)
                                .installed()
                                .orElseThrow()
                                .calculator()
                                .declaration()
                                .question("take")
                                .orElseThrow())
                .stream()
                .map(link -> link.slip())
                .distinct()
                .toList();
    }

    @Test
    void theJobCardSaysWhatIsNotOnIt() {
        Document card = new Packet(shop.work(strap, thicker).toMake(), new Wording(Locale.ENGLISH, UnitSystem.METRIC))
                .documents(LocalDate.of(2026, 3, 1), List.of(), failed -> {})
                .get(Packet.JOB_CARD);
        List<String> ids = card.sections().stream().map(Section::id).toList();
        assertTrue(ids.contains("strap"), ids.toString());
        assertFalse(ids.contains("thicker"), ids.toString());
        assertTrue(card.sections().get(0).blocks().stream()
                .filter(Paragraph.class::isInstance)
                .map(paragraph -> ((Paragraph) paragraph).text())
                .anyMatch(text -> text.startsWith("Not on these pages") && text.contains("thicker")));
    }
}
