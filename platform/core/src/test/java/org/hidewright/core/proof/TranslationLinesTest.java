package org.hidewright.core.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.StringReader;
import java.util.List;
import java.util.Properties;
import java.util.stream.Collectors;
import org.hidewright.core.proof.TranslationLines.Line;
import org.junit.jupiter.api.Test;

/** Lines are told apart as the JDK tells them apart, which says nothing of where they stand. */
class TranslationLinesTest {
    private static final String FILE = """
            # a note that ends so \\
            one = 1
              ! another

            two: a\\
               b \\
            # c
            three\\ and\\=four 3
            five = five\\\\
            six
            seven = \\u00e4
            """;

    @Test
    void eachIsReadAsTheJdkReadsItAndHasItsLine() throws Exception {
        List<Line> lines = TranslationLines.of(FILE);
        Properties whole = new Properties();
        whole.load(new StringReader(FILE));
        assertEquals(whole, lines.stream().collect(Collectors.toMap(Line::key, Line::text)));
        assertEquals(
                List.of("2 one", "5 two", "8 three and=four", "9 five", "10 six", "11 seven"),
                lines.stream().map(line -> line.line() + " " + line.key()).toList());
        assertEquals(lines, TranslationLines.of("\uFEFF" + FILE.replace("\n", "\r\n")), "from another system");
    }

    @Test
    void oneThatCannotBeReadKeepsTheOthers() {
        List<Line> lines = TranslationLines.of("one = \\u00e\ntwo = 2");
        assertEquals(new Line(1, "", "one = \\u00e", false), lines.get(0));
        assertEquals(new Line(2, "two", "2", true), lines.get(1));
    }
}
