package org.hidewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.Mockito.when;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.hidewright.core.addons.Carried;
import org.hidewright.core.brought.BroughtTables;
import org.hidewright.core.brought.TablesReader;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.workshop.Tables;
import org.hidewright.core.workshop.Tables.Brought;
import org.hidewright.core.workshop.standard.StandardTables;
import org.junit.jupiter.api.Test;
import org.mockito.Mockito;

/** What authors are told of the texts of a bundle before it is installed; which faults are found is tested where they are found. */
class AddOnsCheckTest {
    private static final String PATH = "slides.json";
    private static final String SLIDES = """
            {"workshop": 1, "source": "Measured", "columns": {"slides": {"title": "Slides", "purpose": "On a strap", "columns": [
             {"key": "bar", "kind": "length", "unit": "mm", "label": "Bar", "help": "Across."}]}},
             "tables": {"slides": [{"id": "small", "bar": "20 mm"}]}}
            """;

    private final Catalogue catalogue = Mockito.mock(Catalogue.class);
    private final Terminal terminal = new Terminal(catalogue);

    /** What a bundle has installed whose tables are these. */
    private void installed(String bundle, String tables) {
        List<Brought> all = new ArrayList<>(StandardTables.brought());
        all.addAll(TablesReader.read(tables, bundle)
                .tables()
                .map(BroughtTables::columns)
                .orElseThrow());
        when(catalogue.tables()).thenReturn(Tables.of(all));
    }

    private int check(String bundle, String tables) throws Exception {
        when(terminal.addOns.carried(any()))
                .thenReturn(List.of(new Carried(bundle, "1.1.0", Map.of(), Map.of(PATH, tables), List.of(), false)));
        return terminal.run("addons", "check", "slides", "--language=en");
    }

    @Test
    void anOlderVersionThatIsInstalledVouchesForNothing() throws Exception {
        installed("com.example.slides", SLIDES);
        assertEquals(ExitCode.DONE, check("com.example.slides", SLIDES), terminal.out);
        String renamed = SLIDES.replace("\"key\": \"bar\"", "\"key\": \"slot\"");
        assertEquals(ExitCode.REFUSED, check("com.example.slides", renamed), terminal.out);
        assertTrue(terminal.out.contains("bar"), terminal.out);
    }

    @Test
    void whatOthersHaveInstalledCounts() throws Exception {
        installed("com.example.slides", SLIDES);
        String rows = "{\"workshop\": 1, \"source\": \"Mine\", \"tables\": {\"slides\": [{\"id\": \"wide\", \"bar\": \"30 mm\"}]}}";
        assertEquals(ExitCode.DONE, check("com.example.more", rows), terminal.out);
        assertEquals(ExitCode.REFUSED, check("com.example.more", SLIDES), terminal.out);
        assertTrue(terminal.out.contains("which has one from com.example.slides"), terminal.out);
    }
}
