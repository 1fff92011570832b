package org.hidewright.core.find;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which thing is found by which words, and which comes first. */
class FinderTest {
    private static Findable question(String title, String where, String help) {
        return new Findable(Group.QUESTION, title, where, help, Goal.calculator(where, title));
    }

    private static Findable calculator(String title, String help) {
        return new Findable(Group.CALCULATOR, title, "", help, Goal.calculator(title, ""));
    }

    private static List<String> found(String words, Findable... things) {
        return new Finder(List.of(things))
                .find(words).values().stream()
                        .flatMap(List::stream)
                        .map(Findable::title)
                        .toList();
    }

    @Test
    void theVeryWordComesBeforeItsBeginningItsEndItsInsideAndTheHelp() {
        assertEquals(
                List.of("Bar", "Long bar", "Barrel", "Crossbar", "Unbarred", "Ring"),
                found(
                        "bar",
                        calculator("Ring", "Goes round a bar."),
                        calculator("Unbarred", ""),
                        calculator("Crossbar", ""),
                        calculator("Barrel", ""),
                        calculator("Long bar", ""),
                        calculator("Bar", "")));
    }

    @Test
    void whereAThingStandsCountsMoreThanItsHelp() {
        assertEquals(
                List.of("Width", "Length"),
                found("collar", question("Length", "Belt", "Not of a collar."), question("Width", "Collar", "")));
    }

    @Test
    void everyWordMustBeMetWhereverItIs() {
        Findable width = question("Width", "Collar", "Of the strap.");
        assertEquals(List.of("Width"), found("collar width", width, question("Length", "Collar", "")));
        assertEquals(List.of("Width"), found("strap  WIDTH", width));
        assertEquals(List.of(), found("collar sheep", width));
    }

    @ParameterizedTest(name = "{0} finds {1}")
    @CsvSource({
        "nähte, Nähte",
        "NÄHTE, Nähte",
        "naehte, Nähte",
        "nahte, Nähte",
        "nähte, Naehte",
        "strasse, Straße",
        "straße, Strasse",
        "öse, Ösen",
        "oese, Ösen",
        "piqûre, Piqure",
        "piqure, Piqûre",
        "schnalle, Gürtelschnalle",
        "guertel, Gürtelschnalle",
        "gürtel, Leibgürtel",
    })
    void accentsUmlautsAndCompoundsAreFoundHoweverTheyAreTyped(String words, String title) {
        assertEquals(List.of(title), found(words, calculator(title, "")));
    }

    @Test
    void theThingItselfComesBeforeWhatHasItInside() {
        assertEquals(
                List.of("Gürtelschnalle", "Doppelschnallengurt"),
                found("schnalle", calculator("Doppelschnallengurt", ""), calculator("Gürtelschnalle", "")));
    }

    @Test
    void twoLettersAreFoundAtTheBeginningOfAWordAlone() {
        assertEquals(List.of("Arm"), found("ar", calculator("Bar", ""), calculator("Arm", "")));
    }

    @Test
    void theGroupOfTheBestComesFirstAndNoGroupIsEndless() {
        Findable[] many = new Findable[Finder.MOST_OF_GROUP + 5];
        for (int i = 0; i < many.length; i++) {
            many[i] = question("Pitch " + i, "Seam", "");
        }
        List<Findable> all = new ArrayList<>(List.of(many));
        all.add(calculator("Pitch", ""));
        var found = new Finder(all).find("pitch");
        assertEquals(List.of(Group.CALCULATOR, Group.QUESTION), List.copyOf(found.keySet()));
        assertEquals(Finder.MOST_OF_GROUP, found.get(Group.QUESTION).size());
    }

    @Test
    void withoutAWordNothingIsFound() {
        assertTrue(new Finder(List.of(calculator("Bar", ""))).find(" – ").isEmpty());
    }

    @Test
    void aSlipOfThePenIsPutRight() {
        Finder finder = new Finder(List.of(calculator("Strap round a buckle", "")));
        assertEquals(Optional.of("buckle"), finder.meant("bukcle"));
        assertEquals(Optional.empty(), finder.meant("aeroplane"));
    }
}
