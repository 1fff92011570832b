package org.hidewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.Mockito.when;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hidewright.api.declaration.RecordCalculator;
import org.hidewright.command.kit.Tray;
import org.hidewright.core.addons.Carried;
import org.hidewright.core.brought.BroughtTables;
import org.hidewright.core.brought.TablesReader;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.wording.Remark;
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
                .thenReturn(List.of(
                        new Carried(bundle, "1.1.0", Map.of(), Map.of(PATH, tables), Map.of(), List.of(), false)));
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

    private static final String TAG = """
            {"template": 1, "id": "tag", "version": 1, "title": "Tag", "purpose": "A strip.", "questions": [
             {"key": "width", "kind": "length", "unit": "mm", "min": "10 mm", "max": "90 mm", "preset": "40 mm", "label": "Width", "help": "Across."}],
             "draws": {"calculator": "tray", "questions": {"width": "=width", "height": "=2 * width", "corners": "sharp"}}}
            """;
    private static final String GERMAN = """
            tag.title = Schild
            tag.purpose = Ein Streifen.
            tag.width = Breite
            tag.width.help = Quer.
            tag.answer.item = Schild
            item.part.base = Boden
            """;

    private void trayIsInstalled() {
        when(catalogue.tables()).thenReturn(Tables.of(StandardTables.brought()));
        when(catalogue.find("tray")).thenReturn(Optional.of(new Installed(RecordCalculator.of(new Tray()), "kit")));
    }

    private int template(Map<String, String> properties, boolean code) throws Exception {
        when(terminal.addOns.carried(any()))
                .thenReturn(List.of(new Carried(
                        "tag", "1.0.0", Map.of("in/tag.json", TAG), Map.of(), properties, List.of(), code)));
        return terminal.run("addons", "check", "tag", "--language=en");
    }

    @Test
    void whatATemplateSaysInAnotherLanguageIsLookedOverBesideIt() throws Exception {
        trayIsInstalled();
        template(Map.of("in/tag_de.properties", GERMAN), false);
        assertTrue(
                terminal.out.endsWith(
                        "\nin/tag_de.properties\nTexts that were looked at: 6.\nNothing has to be mended.\n"),
                terminal.out);
        template(Map.of("in/tag_de.properties", GERMAN.replace("tag.width =", "tag.widht =")), false);
        assertTrue(
                terminal.out.contains(
                        "\nin/tag_de.properties\nCheck (line 3, column 1): The template says nothing by the"
                                + " name of “tag.widht”, but “tag.width”.\n"),
                terminal.out);
        assertTrue(terminal.out.endsWith("Mend what is told above, and check again.\n"), terminal.out);
        assertEquals(ExitCode.REFUSED, template(Map.of("in/tags_de.properties", GERMAN), false));
        assertTrue(terminal.out.contains("in/tags_de.properties belongs to no template here."), terminal.out);
        template(Map.of("net/example/messages_de.properties", "x = y"), true);
        assertFalse(terminal.out.contains("belongs to no template"), "messages of its code");
    }

    @Test
    void ofALanguageInOneCountryOnlyWhatDiffersIsSaid() throws Exception {
        trayIsInstalled();
        template(Map.of("in/tag_de_AT.properties", "tag.title = Taferl"), false);
        assertTrue(terminal.out.endsWith("Texts that were looked at: 1.\nNothing has to be mended.\n"), terminal.out);
    }

    /** The folder that is checked may be followed too: then the program finds the same faults in what is installed. */
    @Test
    void whatIsToldOfTheTextIsNotToldOnceMoreOfWhatIsInstalled() throws Exception {
        installed("com.example.slides", SLIDES);
        String faulty = SLIDES.replace("\"unit\": \"mm\"", "\"unit\": \"mn\"");
        List<Remark> problems = TablesReader.read(faulty, "com.example.slides").remarks();
        assertEquals(1, problems.size());
        when(catalogue.problems()).thenReturn(problems);
        assertEquals(ExitCode.REFUSED, check("com.example.slides", faulty));
        assertTrue(terminal.out.contains("bar: \"mn\" is no unit of length."), terminal.out);
        assertEquals("", terminal.err);
        terminal.run("addons", "--language=en");
        assertTrue(terminal.err.contains("bar: \"mn\" is no unit of length."), terminal.err);
    }

    @Test
    void whatOthersHaveInstalledCounts() throws Exception {
        installed("com.example.slides", SLIDES);
        String rows =
                "{\"workshop\": 1, \"source\": \"Mine\", \"tables\": {\"slides\": [{\"id\": \"wide\", \"bar\": \"30 mm\"}]}}";
        assertEquals(ExitCode.DONE, check("com.example.more", rows), terminal.out);
        assertEquals(ExitCode.REFUSED, check("com.example.more", SLIDES), terminal.out);
        assertTrue(terminal.out.contains("which has one from com.example.slides"), terminal.out);
    }
}
