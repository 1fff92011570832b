package org.hidewright.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Hashtable;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.template.TemplateFiles;
import org.hidewright.core.wording.Remark;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;

class TemplateBundlesTest {
    private static final String TEMPLATE = """
            {"template": 1, "id": "key-fob", "title": "Key fob", "purpose": "A strip over a ring.",
             "questions": [], "answers": [],
             "draws": {"calculator": "parts", "questions": {"parts": []}}}
            """;

    @TempDir
    Path folder;

    private final BundleContext context = mock(BundleContext.class);
    private final TemplateBundles templates = new TemplateBundles(context, id -> Optional.empty());

    private Bundle bundle(long id, String name, String header, int state) throws Exception {
        Bundle bundle = mock(Bundle.class);
        Hashtable<String, String> headers = new Hashtable<>();
        if (header != null) {
            headers.put(TemplateFiles.HEADER, header);
        }
        when(bundle.getBundleId()).thenReturn(id);
        when(bundle.getSymbolicName()).thenReturn(name);
        when(bundle.getHeaders("")).thenReturn(headers);
        when(bundle.getState()).thenReturn(state);
        return bundle;
    }

    private void has(Bundle bundle, String path, String text) throws Exception {
        Path file = Files.writeString(folder.resolve(bundle.getBundleId() + path.replace('/', '-')), text);
        when(bundle.getEntry(path)).thenReturn(file.toUri().toURL());
    }

    private static List<String> keys(List<Remark> remarks) {
        return remarks.stream()
                .map(remark -> remark.key().replace("notice.", ""))
                .toList();
    }

    @Test
    void filesAreListedByTheIdsTheyAreCalledBy() throws Exception {
        Bundle shop = bundle(5, "org.example.shop", "templates/key-fob.json, belt.json, notes.txt", Bundle.ACTIVE);
        Bundle code = bundle(3, "org.example.code", null, Bundle.ACTIVE);
        Bundle off = bundle(4, "org.example.off", "tray.json", Bundle.INSTALLED);
        Bundle later = bundle(9, "org.example.later", "belt.json,wallet.json, Odd Name.json", Bundle.ACTIVE);
        when(context.getBundles()).thenReturn(new Bundle[] {later, shop, code, off});
        assertEquals(
                List.of(
                        "belt org.example.later",
                        "wallet org.example.later",
                        "key-fob org.example.shop",
                        "belt org.example.shop"),
                templates.all().stream()
                        .map(named -> named.id() + " " + named.file().name())
                        .toList(),
                "by the names of their bundles, whichever was installed first");
        assertEquals("templates/key-fob.json", templates.all().get(2).file().path());
    }

    /** As the catalogue does it. */
    private Optional<Installed> find(String id) {
        return templates.all().stream()
                .filter(named -> named.id().equals(id))
                .findFirst()
                .flatMap(named -> templates.find(id, named.file()));
    }

    @Test
    void aTemplateIsReadOnceWhenItIsLookedFor() throws Exception {
        Bundle shop = bundle(5, "org.example.shop", "key-fob.json", Bundle.ACTIVE);
        has(shop, "key-fob.json", TEMPLATE);
        when(context.getBundles()).thenReturn(new Bundle[] {shop});
        Installed installed = find("key-fob").orElseThrow();
        assertEquals("org.example.shop", installed.bundle());
        assertEquals("key-fob", installed.id());
        assertTrue(installed == find("key-fob").orElseThrow(), "read once");
        assertEquals(Optional.empty(), find("belt"));
        assertEquals(List.of(), templates.problems());
    }

    @Test
    void aBundleThatGoesWhileItsTemplateIsReadLeavesNoTrace() throws Exception {
        Bundle shop = bundle(5, "org.example.shop", "key-fob.json", Bundle.ACTIVE);
        when(shop.getEntry("key-fob.json")).thenThrow(new IllegalStateException("Bundle is uninstalled."));
        when(context.getBundles()).thenReturn(new Bundle[] {shop});
        assertEquals(Optional.empty(), find("key-fob"));
        assertEquals(List.of("invalid-template", "template-not-there"), keys(templates.problems()));
        when(context.getBundles()).thenReturn(new Bundle[0]);
        assertEquals(List.of(), templates.problems());
    }

    @Test
    void aChangeShowsAtOnceWhereTheFolderIsFollowed() throws Exception {
        Bundle shop = bundle(5, "org.example.shop", "key-fob.json", Bundle.ACTIVE);
        shop.getHeaders("").put(TemplateFiles.FOLLOWS, folder.toString());
        has(shop, "key-fob.json", TEMPLATE.replace("A strip", "A packed strip"));
        when(context.getBundles()).thenReturn(new Bundle[] {shop});
        assertEquals("A packed strip over a ring.", purpose(), "a folder that is gone leaves what was packed");
        assertEquals(List.of("followed-gone"), keys(templates.problems()), "and is told");
        Path followed = Files.writeString(folder.resolve("key-fob.json"), TEMPLATE);
        assertEquals("A strip over a ring.", purpose());
        Files.writeString(followed, TEMPLATE.replace("A strip", "A long strip"));
        assertEquals("A long strip over a ring.", purpose());
        Files.writeString(followed, TEMPLATE.replace("\"title\"", "\"tile\""));
        assertEquals(Optional.empty(), find("key-fob"));
        Files.writeString(followed, TEMPLATE);
        assertEquals("A strip over a ring.", purpose());
        assertEquals(List.of(), templates.problems(), "what is mended is not told any more");
    }

    private String purpose() {
        return find("key-fob")
                .orElseThrow()
                .calculator()
                .texts()
                .find("key-fob.purpose", Locale.ENGLISH)
                .orElseThrow();
    }

    @Test
    void whatCannotBeUsedIsToldWithTheFileAndThePlace() throws Exception {
        Bundle shop = bundle(5, "org.example.shop", "key-fob.json,belt.json,tray.json", Bundle.ACTIVE);
        has(shop, "key-fob.json", TEMPLATE.replace("\"title\"", "\"tile\""));
        has(shop, "tray.json", TEMPLATE);
        when(context.getBundles()).thenReturn(new Bundle[] {shop});
        assertEquals(Optional.empty(), find("key-fob"));
        List<Remark> problems = templates.problems();
        assertEquals(List.of("invalid-template", "unknown-key-nearest", "template-missing"), keys(problems));
        assertEquals("1:34", problems.get(1).place().toString());
        assertEquals(Optional.empty(), find("belt"));
        assertTrue(keys(templates.problems()).contains("template-not-there"));
        assertEquals(Optional.empty(), find("tray"));
        assertTrue(keys(templates.problems()).contains("other-id"));
    }
}
