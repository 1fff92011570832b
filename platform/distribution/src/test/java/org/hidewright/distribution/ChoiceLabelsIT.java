package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hidewright.api.declaration.DeclaredCalculator;
import org.hidewright.api.declaration.DeclaredTable;
import org.hidewright.api.declaration.Option;
import org.hidewright.api.declaration.Question;
import org.hidewright.api.declaration.Texts;
import org.hidewright.api.declaration.Variant;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.workshop.Tables.Brought;
import org.hidewright.core.workshop.standard.StandardTables;
import org.junit.jupiter.api.Test;

/** What a maker chooses from begins alike everywhere: with a capital, or with a number. */
class ChoiceLabelsIT {
    private final List<String> small = new ArrayList<>();
    private int looked;

    private void label(Texts texts, String key, String of) {
        looked++;
        String label = texts.find(key, Locale.ENGLISH).orElse("");
        if (label.isEmpty() || Character.isLowerCase(label.codePointAt(0))) {
            small.add(of + ": " + key + " = " + label);
        }
    }

    private void choices(Texts texts, List<Question> questions, String of) {
        for (Question question : questions) {
            for (Option option : question.options()) {
                label(texts, option.labelKey(), of);
            }
            for (Variant variant : question.variants()) {
                label(texts, variant.labelKey(), of);
                choices(texts, variant.questions(), of);
            }
            choices(texts, question.questions(), of);
        }
    }

    @Test
    void everyChoiceOfEveryCalculatorBeginsAlike() throws Exception {
        Catalogue catalogue = BundledCalculators.catalogue();
        for (String id : catalogue.ids()) {
            DeclaredCalculator calculator = catalogue.find(id).orElseThrow().calculator();
            choices(calculator.texts(), calculator.declaration().questions(), id);
        }
        assertTrue(looked > 300, looked + " choices");
        assertEquals(List.of(), small);
    }

    @Test
    void everyChoiceOfTheWorkshopBeginsAlike() {
        for (Brought brought : StandardTables.brought()) {
            DeclaredTable table = brought.table();
            choices(table.texts(), table.columns(), table.id());
        }
        assertTrue(looked > 40, looked + " choices");
        assertEquals(List.of(), small);
    }
}
