package org.hidewright.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import org.hidewright.api.calculator.Answered;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.Budget;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.calculator.Outcome;
import org.hidewright.api.calculator.Search;
import org.hidewright.api.calculator.Working;
import org.hidewright.api.declaration.DeclaredCalculator;
import org.hidewright.api.declaration.DeclaredSearch;
import org.hidewright.api.declaration.Values;
import org.hidewright.core.catalogue.BundleFault;
import org.hidewright.core.search.SearchBudget;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceReference;

/** Calculators as the catalogue gives them: whatever their code does, it is done under guard. */
@Timeout(60)
class GuardedServicesTest {
    private final BundleContext context = mock(BundleContext.class);
    private final ThreadGuard guard = new ThreadGuard(1);
    private final ServiceSections sections = new ServiceSections(context, guard);
    private final ServiceCatalogue catalogue =
            new ServiceCatalogue(context, new ServiceTables(context, guard), sections, guard);

    {
        when(context.getBundles()).thenReturn(new Bundle[0]);
    }

    record Asks(@Asked(preset = "1") int number) {}

    record Gives(@Answered int number) {}

    @Calculates("punch")
    static class Punch implements Calculator<Asks, Gives> {
        @Override
        public Outcome<Gives> calculate(Asks asks, Working working) {
            if (asks.number() < 0) {
                forEver();
            }
            return Outcome.of(new Gives(100 / asks.number()));
        }
    }

    private static void forEver() {
        while (true) {
            Thread.onSpinWait();
        }
    }

    @SuppressWarnings("unchecked")
    private void publish(String bundleName, String id, Object service) {
        ServiceReference<Calculator<?, ?>> reference = mock(ServiceReference.class);
        Bundle bundle = mock(Bundle.class);
        when(bundle.getSymbolicName()).thenReturn(bundleName);
        when(reference.getBundle()).thenReturn(bundle);
        when(reference.getProperty(Calculates.ID_PROPERTY)).thenReturn(id);
        when(context.<Calculator<?, ?>>getService(reference)).thenAnswer(call -> {
            if (service == null) {
                forEver();
            }
            return service;
        });
        catalogue.bind(reference);
    }

    private List<String> told() {
        Wording english = new Wording(Locale.ENGLISH, UnitSystem.METRIC);
        return catalogue.problems().stream()
                .map(problem -> english.what(problem) + " " + english.why(problem) + " " + english.next(problem))
                .toList();
    }

    private static Outcome<Values> work(DeclaredCalculator calculator, int number) {
        return calculator.work(Values.of(Map.of("number", number)), Working.NONE);
    }

    @Test
    void aCalculationIsGuardedAndTheNextOneIsAsGoodAsBefore() {
        publish("net.example.kit", "punch", new Punch());
        DeclaredCalculator punch = catalogue.find("punch").orElseThrow().calculator();
        assertEquals("punch", punch.declaration().id());
        assertEquals(50, work(punch, 2).answers().orElseThrow().get("number").orElseThrow());
        BundleFault fault = assertThrows(BundleFault.class, () -> work(punch, 0));
        assertEquals("java.lang.ArithmeticException: / by zero", fault.words());
        assertEquals(25, work(punch, 4).answers().orElseThrow().get("number").orElseThrow());
        assertTrue(assertThrows(BundleFault.class, () -> work(punch, -1)).leftAlone());
        assertTrue(assertThrows(BundleFault.class, () -> work(punch, 4)).leftAlone());
    }

    record Halves(@Asked(preset = "1") int lower) {}

    record Sought(@Asked Optional<Halves> halves) {}

    /** Finds one thing, and then does not heed that its budget is spent. */
    @Calculates("deaf")
    static class Deaf implements Calculator<Sought, Gives>, Search<Sought, Halves> {
        @Override
        public Outcome<Gives> calculate(Sought sought, Working working) {
            return Outcome.of(new Gives(1));
        }

        @Override
        public void search(Sought sought, Budget budget, Consumer<Halves> better) {
            better.accept(new Halves(2));
            forEver();
        }
    }

    @Test
    void whatASearchHasFoundIsKeptWhereItDoesNotHeedItsBudgetAndIsLeftToItself() {
        publish("net.example.deaf", "deaf", new Deaf());
        DeclaredSearch search =
                catalogue.find("deaf").orElseThrow().calculator().search().orElseThrow();
        assertEquals("halves", search.sought().key());
        SearchBudget budget = SearchBudget.ofTries(1000, 1);
        List<Values> found = new CopyOnWriteArrayList<>();
        BundleFault late = assertThrows(
                BundleFault.class,
                () -> search.search(Values.of(Map.of()), budget, values -> {
                    found.add(values);
                    budget.stop();
                }));
        assertTrue(late.leftAlone());
        assertEquals(List.of(Values.of(Map.of("lower", 2))), found);
    }

    @Test
    void aCalculatorThatIsNeverMadeIsToldWithAWayOutAndTheOthersWork() {
        publish("net.example.stuck", "stuck", null);
        publish("net.example.kit", "punch", new Punch());
        assertTrue(catalogue.find("stuck").isEmpty());
        assertTrue(catalogue.find("punch").isPresent());
        assertEquals(
                List.of(
                        "A calculator or table of bundle net.example.stuck did not start. This is a fault of the bundle:"
                                + " it had not come back after 1 s and was left to itself Tell the maker of the bundle, or turn"
                                + " it off: hidewright addons off net.example.stuck. Everything else works on."),
                told());
    }

    @Test
    void aCalculatorThatIsAnnouncedAsAnotherIsNotUsed() {
        publish("net.example.kit", "thickness", new Punch());
        assertTrue(catalogue.find("thickness").isEmpty());
        assertTrue(catalogue.find("punch").isEmpty());
        assertEquals(1, told().size());
        assertTrue(told().get(0).contains("It is announced as “thickness” and calls itself “punch”."), told().get(0));
    }

    @Test
    void aServiceThatIsNoCalculatorIsTold() {
        publish("net.example.kit", "punch", "a text");
        assertTrue(catalogue.find("punch").isEmpty());
        assertTrue(told().get(0).contains("The bundle announced it and then gave none."), told().get(0));
    }
}
