package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The rule shown at work on planted classes: wherever a foreign type hides in a signature, it is found. */
class ForeignTypesTest {

    private static final List<String> VERSION = List.of("org.osgi.framework.Version");

    @Test
    void aForeignTypeIsFoundWhereverItIsShown() {
        assertEquals(VERSION, ForeignTypes.shownBy(Planted.InAComponent.class));
        assertEquals(VERSION, ForeignTypes.shownBy(Planted.InAReturnedListsArgument.class));
        assertEquals(VERSION, ForeignTypes.shownBy(Planted.InAProtectedField.class));
        assertEquals(VERSION, ForeignTypes.shownBy(Planted.InABound.class));
        assertEquals(
                List.of("org.osgi.framework.BundleException"), ForeignTypes.shownBy(Planted.InAThrowsClause.class));
        assertEquals(List.of("org.osgi.framework.Bundle"), ForeignTypes.shownBy(Planted.InAParent.class));
    }

    @Test
    void whatIsNotShownIsTheClasssOwnBusiness() {
        assertEquals(List.of(), ForeignTypes.shownBy(Planted.OnlyInside.class));
        assertEquals(List.of(), ForeignTypes.shownBy(Planted.NotShownAtAll.class));
    }
}
