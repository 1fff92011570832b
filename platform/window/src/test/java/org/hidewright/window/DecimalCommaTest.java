package org.hidewright.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Widget;
import org.hidewright.api.measure.Length;
import org.hidewright.window.EveryState.Setting;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** In German every number in the window has its comma, and one that is typed with it is read. */
@EnabledOnOs(OS.LINUX)
class DecimalCommaTest {
    private static final Pattern POINT = Pattern.compile("\\d\\.\\d+(?![.\\d])");
    private static final Pattern COMMA = Pattern.compile("\\d,\\d");
    /** Three numbers with points are a version, as of a bundle. */
    private static final Pattern VERSION = Pattern.compile("\\d+\\.\\d+\\.\\d+");

    @TempDir
    Path folder;

    private final Set<String> faults = new LinkedHashSet<>();
    private int commas;

    @Test
    void everyNumberHasItsComma() throws Exception {
        EveryState.walk(folder, new Setting(Locale.GERMAN, false, 100), (real, state) -> {
            String typed =
                    real.window.project().map(one -> one.project().text()).orElse("");
            for (Widget widget : real.everything()) {
                texts(widget).stream()
                        .filter(text -> !typed.contains('"' + text + '"'))
                        .forEach(text -> look(text, state));
            }
            real.window.project().ifPresent(project -> {
                project.project().slips().forEach(slip -> look(real.answers(slip.id()), state));
                assertTrue(
                        COMMA.matcher(project.wording().drawn(Length.ofMm(12.5)))
                                .find(),
                        "measures of drawings");
            });
        });
        assertEquals("", String.join("\n", faults));
        assertTrue(commas > 50, commas + " numbers with a comma");
    }

    private void look(String text, String state) {
        String numbers = VERSION.matcher(text).replaceAll("");
        Matcher point = POINT.matcher(numbers);
        if (point.find()) {
            faults.add(state + ": " + text);
        }
        commas += COMMA.matcher(numbers).find() ? 1 : 0;
    }

    private static List<String> texts(Widget widget) {
        List<String> texts = new ArrayList<>();
        if (widget instanceof Label label) {
            texts.add(label.getText());
        } else if (widget instanceof Link link) {
            texts.add(link.getText());
        } else if (widget instanceof Text text) {
            texts.addAll(List.of(text.getText(), text.getMessage()));
        } else if (widget instanceof Combo combo) {
            texts.addAll(List.of(combo.getItems()));
        } else if (widget instanceof org.eclipse.swt.widgets.List list) {
            for (String line : list.getItems()) {
                texts.addAll(List.of(line.split(" *· *"))); // cells as they were typed
            }
        } else if (widget instanceof Table table) {
            for (TableItem item : table.getItems()) {
                IntStream.range(0, table.getColumnCount()).forEach(i -> texts.add(item.getText(i)));
            }
        }
        return texts;
    }

    @Test
    void aNumberIsReadAsItIsWritten() throws Exception {
        EveryState.walk(folder, new Setting(Locale.GERMAN, false, 100), (real, state) -> {
            if (state.equals("project")) {
                real.type("hem/round", "70,5");
                assertTrue(real.answers("hem").contains("70,5\u00A0mm"), real.answers("hem"));
                real.type("hem/round", "70.5 mm");
                assertTrue(real.answers("hem").contains("70,5\u00A0mm"), real.answers("hem"));
            }
        });
    }
}
