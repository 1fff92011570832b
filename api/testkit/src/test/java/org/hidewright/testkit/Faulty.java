package org.hidewright.testkit;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.declaration.RecordCalculator;

/** A contract on a calculator of the tests, which has all the texts it calls for but those that are taken away. */
final class Faulty extends BundleContract {
    private static final Path SOURCES = Path.of("src", "test", "java", "org", "hidewright", "testkit", "faults");

    private final Set<String> together;

    private Faulty(Bundle bundle, Set<String> together) {
        super(bundle);
        this.together = together;
    }

    static Faulty of(Calculator<?, ?> calculator) {
        return refusing(calculator, Set.of());
    }

    /** One whose author names refusals of answers that do not go together. */
    static Faulty refusing(Calculator<?, ?> calculator, Set<String> together) {
        return new Faulty(bundle(calculator, texts(calculator)), together);
    }

    /** One with these texts alone. */
    static Faulty worded(Calculator<?, ?> calculator, String texts) {
        return new Faulty(bundle(calculator, texts), Set.of());
    }

    static Bundle bundle(Calculator<?, ?> calculator, String texts) {
        return new Bundle(List.of(calculator), texts, SOURCES);
    }

    /** A file with every text that a calculator calls for. */
    static String texts(Calculator<?, ?> calculator) {
        return DeclaredTexts.of(List.of(RecordCalculator.of(calculator))).stream()
                .map(DeclaredTexts.Text::key)
                .distinct()
                .map(key -> key + " = Words of the bench\n")
                .collect(Collectors.joining());
    }

    @Override
    protected Set<String> refusedTogether() {
        return together;
    }

    /** Fails unless this test of the contract fails, with a message that holds all of these. */
    void fails(Consumer<BundleContract> test, String... said) {
        String message =
                assertThrows(AssertionError.class, () -> test.accept(this)).getMessage();
        for (String part : said) {
            assertTrue(message.contains(part), () -> "“" + part + "” is not in: " + message);
        }
    }
}
