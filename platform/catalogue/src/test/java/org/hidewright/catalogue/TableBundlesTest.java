package org.hidewright.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Hashtable;
import java.util.List;
import org.hidewright.core.brought.TableFiles;
import org.hidewright.core.template.TemplateFiles;
import org.hidewright.core.workshop.Tables;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;

/** Tables that bundles carry as texts: found while their bundles are there, and told where they cannot be used. */
class TableBundlesTest {
    private static final String NETS = """
            {"workshop": 1, "source": "Made up", "columns": {"nets": {"title": "Nets", "purpose": "By their ring", "columns": [
             {"key": "ring", "kind": "length", "unit": "mm", "label": "Ring", "help": "Across."}]}},
             "tables": {"nets": [{"id": "small", "ring": "200 mm"}]}}
            """;

    @TempDir
    Path folder;

    private final BundleContext context = mock(BundleContext.class);
    private final ServiceTables tables = new ServiceTables(context, new ThreadGuard(5));

    @BeforeEach
    void none() {
        there();
    }

    private void there(Bundle... bundles) {
        when(context.getBundles()).thenReturn(bundles);
    }

    private Bundle bundle(long id, String header, String text) throws Exception {
        Bundle bundle = mock(Bundle.class);
        Hashtable<String, String> headers = new Hashtable<>();
        headers.put(TableFiles.HEADER, header);
        when(bundle.getBundleId()).thenReturn(id);
        when(bundle.getSymbolicName()).thenReturn("org.example.bundle-" + id);
        when(bundle.getHeaders("")).thenReturn(headers);
        when(bundle.getState()).thenReturn(Bundle.ACTIVE);
        Path file = Files.writeString(folder.resolve(id + ".json"), text);
        when(bundle.getEntry("nets.json")).thenReturn(file.toUri().toURL());
        return bundle;
    }

    private List<String> problems() {
        tables.tables();
        return tables.problems().stream()
                .map(remark -> remark.key().replace("notice.", ""))
                .toList();
    }

    private static List<String> rows(Tables tables) {
        return tables.rows("nets").stream()
                .map(row -> row.row() + " of " + row.from().bundle())
                .toList();
    }

    @Test
    void aTableComesAndGoesWithItsBundle() throws Exception {
        Bundle nets = bundle(5, "nets.json", NETS);
        assertFalse(tables.tables().find("nets").isPresent());
        there(nets);
        Tables now = tables.tables();
        assertEquals(List.of("nets[small] of org.example.bundle-5"), rows(now));
        assertTrue(now.find("nets").orElseThrow().column("ring").isPresent());
        assertEquals(List.of(), problems());
        assertSame(now, tables.tables(), "read once");
        when(nets.getState()).thenReturn(Bundle.INSTALLED);
        assertFalse(tables.tables().find("nets").isPresent());
    }

    @Test
    void ofTwoTheOneInstalledFirstBringsARowAndAColumn() throws Exception {
        there(bundle(9, "nets.json", NETS), bundle(4, "nets.json", NETS.replace("200 mm", "300 mm")));
        assertEquals(List.of("nets[small] of org.example.bundle-4"), rows(tables.tables()));
        assertEquals(List.of("column-taken", "brought-row-taken"), problems());
    }

    @Test
    void aRowMayHaveColumnsOfAnotherBundle() throws Exception {
        String rows =
                "{\"workshop\": 1, \"source\": \"Mine\", \"tables\": {\"nets\": [{\"id\": \"large\", \"ring\": \"9 in\"}]}}";
        Bundle first = bundle(3, "nets.json", rows);
        there(first);
        assertEquals(List.of(), rows(tables.tables()), "nobody knows the table");
        assertEquals(List.of(), problems(), "and nobody is told at each start");
        there(first, bundle(7, "nets.json", NETS));
        assertEquals(
                List.of("nets[large] of org.example.bundle-3", "nets[small] of org.example.bundle-7"),
                rows(tables.tables()));
    }

    @Test
    void aChangeShowsAtOnceWhereTheFolderIsFollowed() throws Exception {
        Bundle nets = bundle(5, "nets.json", NETS);
        nets.getHeaders("").put(TemplateFiles.FOLLOWS, folder.toString());
        Path followed = Files.writeString(folder.resolve("nets.json"), NETS);
        there(nets);
        assertEquals(1, rows(tables.tables()).size());
        Files.writeString(
                followed,
                NETS.replace("{\"id\": \"small\"", "{\"id\": \"tiny\", \"ring\": \"9 mm\"}, {\"id\": \"small\""));
        assertEquals(2, rows(tables.tables()).size());
        assertEquals(List.of(), problems());
        Files.delete(followed);
        assertEquals(1, rows(tables.tables()).size(), "as it was packed");
        assertEquals(List.of("followed-gone"), problems(), "and is told");
    }

    @Test
    void aRowWithAFaultIsToldUnderItsTextAndTheOthersAreThere() throws Exception {
        there(bundle(
                5,
                "nets.json",
                NETS.replace("[{\"id\": \"small\"", "[{\"id\": \"odd\", \"ring\": \"200\"}, {\"id\": \"small\"")));
        assertEquals(List.of("nets[small] of org.example.bundle-5"), rows(tables.tables()));
        assertEquals(List.of("brought-left-out", "brought-no-unit"), problems());
    }

    @Test
    void aFileThatIsNotThereIsTold() throws Exception {
        there(bundle(5, "gone.json, nets.json", NETS));
        assertEquals(1, rows(tables.tables()).size());
        assertEquals(List.of("brought-unusable", "tables-not-there"), problems());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "[]",
                "{",
                "nonsense",
                "{\"workshop\": 1}",
                "{\"workshop\": 1, \"source\": \"x\", \"columns\": 5}"
            })
    void aTextThatIsNoneBreaksNothing(String text) throws Exception {
        there(bundle(4, "nets.json", text), bundle(5, "nets.json", NETS));
        assertEquals(List.of("nets[small] of org.example.bundle-5"), rows(tables.tables()));
        assertEquals("brought-unusable", problems().get(0));
    }

    @Test
    void aTextWithoutEndBreaksNothing() throws Exception {
        String deep = "{\"workshop\": 1, \"source\": \"x\", \"tables\": {\"nets\": " + "[".repeat(200_000);
        String wide = NETS.replace("\"200 mm\"", "\"" + "9".repeat(2 << 20) + " mm\"");
        there(bundle(3, "nets.json", deep), bundle(4, "nets.json", wide), bundle(5, "nets.json", NETS));
        assertEquals(List.of("nets[small] of org.example.bundle-5"), rows(tables.tables()));
        assertEquals(List.of("brought-unusable", "not-json", "brought-unusable", "not-json"), problems());
    }
}
