package org.hidewright.core.work;

import static org.hidewright.core.bench.Shop.ENGLISH;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.hidewright.core.addons.AddOn;
import org.hidewright.core.addons.AddOns;
import org.hidewright.core.addons.CatalogueWithAddOns;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.catalogue.Away;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.wording.Remark;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A slip that nobody works says why, and what to do, by what there is of its bundle. */
class DormantSlipTest {
    @Test
    void aSlipOfACalculatorThatCannotBeUsedSaysWhereToLook() {
        Catalogue unsound = mock(Catalogue.class);
        when(unsound.find("odd")).thenReturn(Optional.empty());
        when(unsound.ids()).thenReturn(List.of("odd"));
        WorkedSlip worked = new Shop(unsound).one("odd", "");
        assertEquals("state.dormant-unusable", worked.stateKey());
        Remark told = worked.remarks().get(0);
        assertEquals("The calculator “odd” is installed and cannot be used.", ENGLISH.what(told));
        assertEquals("hidewright explain odd says what is wrong with it, and what to do.", ENGLISH.next(told));
    }

    @Test
    void aSlipOfABundleThatIsTurnedOffSaysHowToTurnItOn() {
        Catalogue without = mock(Catalogue.class);
        when(without.find("odd")).thenReturn(Optional.empty());
        when(without.away("odd")).thenReturn(Optional.of(new Away("org.example.odd", Away.Why.OFF)));
        WorkedSlip worked = new Shop(without).one("odd", "");
        assertEquals("state.dormant-off", worked.stateKey());
        Remark told = worked.remarks().get(0);
        assertEquals("“odd” is a calculator of org.example.odd, which is turned off.", ENGLISH.what(told));
        assertEquals("Turn it on: hidewright addons on org.example.odd", ENGLISH.next(told));
    }

    /** It is installed, whatever it brings; what is missing is not looked for elsewhere. */
    @ParameterizedTest
    @CsvSource({
        "FAILED,  state.dormant-failed,  which is installed and did not start., What kept it is told at each start",
        "WAITING, state.dormant-waiting, which is new here and waits for your word., If org.example.odd comes from somebody you trust",
    })
    void aSlipOfABundleThatIsHereAndDoesNotRunSaysWhatKeepsIt(Away.Why why, String state, String what, String next) {
        Catalogue without = mock(Catalogue.class);
        when(without.find("odd")).thenReturn(Optional.empty());
        when(without.away("odd")).thenReturn(Optional.of(new Away("org.example.odd", why)));
        WorkedSlip worked = new Shop(without).one("odd", "");
        assertEquals(state, worked.stateKey());
        Remark told = worked.remarks().get(0);
        assertEquals("“odd” is a calculator of org.example.odd, " + what, ENGLISH.what(told));
        assertTrue(ENGLISH.next(told).startsWith(next), ENGLISH.next(told));
    }

    @Test
    void whatKeepsABundleAwayIsAskedOfTheAddOns() {
        AddOns addOns = mock(AddOns.class);
        when(addOns.all())
                .thenReturn(List.of(
                        addOn("on", AddOn.State.ON),
                        addOn("left-out", AddOn.State.LEFT_OUT),
                        addOn("off", AddOn.State.OFF),
                        addOn("failed", AddOn.State.FAILED),
                        addOn("waiting", AddOn.State.WAITING)));
        Catalogue catalogue = new CatalogueWithAddOns(mock(Catalogue.class), () -> addOns);
        assertEquals(Optional.of(new Away("org.example.off", Away.Why.OFF)), catalogue.away("off"));
        assertEquals(Optional.of(new Away("org.example.failed", Away.Why.FAILED)), catalogue.away("failed"));
        assertEquals(Optional.of(new Away("org.example.waiting", Away.Why.WAITING)), catalogue.away("waiting"));
        for (String id : List.of("on", "left-out", "nowhere")) {
            assertEquals(Optional.empty(), catalogue.away(id));
        }
    }

    private static AddOn addOn(String id, AddOn.State state) {
        return new AddOn(
                "org.example." + id,
                id,
                "",
                "1.0.0",
                AddOn.Origin.MAKER,
                state,
                "",
                List.of(id),
                List.of(),
                Path.of(id + ".jar"));
    }
}
