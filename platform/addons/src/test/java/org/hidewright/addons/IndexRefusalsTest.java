package org.hidewright.addons;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What an index does not give, and what is said then: nothing is installed, and nothing written. */
class IndexRefusalsTest extends OnAShelf {
    @Test
    void whatIsNowhereIsToldWithWhoNeedsIt() throws Exception {
        shelved("nets", "1.2", "Import-Package", "org.knots");
        shelved("knots", "1.3", "Export-Package", "org.knots", "Import-Package", "org.contract;version=\"[2,3)\"");
        shelved("mats", "1", "Require-Bundle", "felt;bundle-version=2");
        shelved("pads", "1", "Require-Capability", "hemp;filter:=\"(strength>=3)\"");
        indexes().write(shelf);
        String next =
                ", and it is neither here nor in the index. Add the bundle that brings it to the index, or ask its"
                        + " author.";
        assertEquals(
                "nets cannot be installed: knots 1.3.0 needs the package org.contract [2.0.0,3.0.0)" + next,
                told(() -> installed("nets")));
        assertEquals(
                "mats cannot be installed: mats 1.0.0 needs the bundle felt 2.0.0" + next,
                told(() -> installed("mats")));
        assertEquals(
                "pads cannot be installed: pads 1.0.0 needs hemp (strength>=3)" + next, told(() -> installed("pads")));
        assertEquals(List.of(), installedFiles());
        assertFalse(Files.exists(settings), "nothing was written at all");
    }

    @Test
    void whatDoesNotGoTogetherIsTold() throws Exception {
        shelved("nets", "1", "Import-Package", "org.knots;version=\"[2,3)\",org.loops");
        shelved("loops", "1", "Export-Package", "org.loops", "Import-Package", "org.knots;version=\"[1,2)\"");
        shelved("knots", "2", "Export-Package", "org.knots;version=2");
        shelved("knots", "1", "Export-Package", "org.knots;version=1");
        indexes().write(shelf);
        assertTrue(
                told(() -> installed("nets")).startsWith("nets cannot be installed: "), told(() -> installed("nets")));
        assertEquals(List.of(), installedFiles());
    }

    @Test
    void aJarThatIsNotWhatTheIndexSaysIsRefused() throws Exception {
        Path jar = shelved("nets", "1.0");
        byte[] honest = Files.readAllBytes(jar);
        indexes().write(shelf);
        byte[] changed = honest.clone();
        changed[changed.length / 2] ^= 1;
        Files.write(jar, changed);
        String next = " Copy both again. If the jar is yours and meant so, make the index anew with hidewright addons"
                + " index.";
        assertEquals(
                "shelf/nets-1.0.jar is not what the index says: its checksum (SHA-256) is another." + next,
                told(() -> installed("nets")));
        Files.write(jar, new byte[honest.length + 1]);
        assertEquals(
                "shelf/nets-1.0.jar is not what the index says: it has " + (honest.length + 1) + " bytes instead of "
                        + honest.length + "." + next,
                told(() -> installed("nets")));
        Files.delete(jar);
        assertEquals(
                "nets is in the index, and its jar shelf/nets-1.0.jar is not there. Copy it again, or make the index anew"
                        + " with hidewright addons index.",
                told(() -> installed("nets")));
        Path index = shelf.resolve("index.xml");
        Path other = bundle("mats", "3.0").write(shelf.resolve("mats.jar"));
        String asWritten = Files.readString(index);
        Files.writeString(
                index,
                asWritten
                        .replace(Sha256.of(honest), Sha256.of(Files.readAllBytes(other)))
                        .replace("\"" + honest.length + "\"", "\"" + Files.size(other) + "\"")
                        .replace("nets-1.0.jar", "mats.jar"));
        assertEquals(
                "shelf/mats.jar is not what the index says: it is mats 3.0.0." + next, told(() -> installed("nets")));
        for (String away : List.of("../nets.jar", "file:/elsewhere/nets.jar", "https://example.org/nets.jar", "::")) {
            Files.writeString(index, asWritten.replace("nets-1.0.jar", away));
            assertEquals(
                    "nets is not installed: the index says its jar is " + away + ", which is not in the folder of the"
                            + " index. Put the jar beside the index and make it anew with hidewright addons index.",
                    told(() -> installed("nets")));
        }
        assertEquals(List.of(), installedFiles());
    }

    @Test
    void whatIsPackedAsNoHonestJarIsRefusedThoughTheIndexVouchesForIt() throws Exception {
        shelved("nets", "1.0");
        shelved("patch", "1.0", "Fragment-Host", "straps");
        indexes().write(shelf);
        faults.put("nets-1.0.jar", "leads-out");
        assertTrue(told(() -> installed("nets")).contains("the name of a file in it leads out"));
        assertTrue(told(() -> installed("patch")).contains("needs the bundle straps"), told(() -> installed("patch")));
        assertEquals(List.of(), installedFiles());
    }

    @Test
    void namesThatAreNotOfferedAreTold() throws Exception {
        shelved("nets", "1");
        shelved("mats", "1");
        indexes().write(shelf);
        assertEquals(
                "shelf offers no bundle “nest”; perhaps nets is meant. hidewright addons --from shelf lists all that it"
                        + " offers.",
                told(() -> installed("nest")).replace(folder + "/", ""));
        assertEquals(
                "shelf offers no bundle “telephone”. It offers: mats, nets. hidewright addons --from shelf says more about"
                        + " each.",
                told(() -> installed("telephone")));
    }

    @Test
    void anIndexInsideAJarIsLookedOverAndRead() throws Exception {
        shelved("nets", "1.0");
        Path index = indexes().write(shelf).file();
        Path packed = Jar.empty().with("index.xml", Files.readString(index)).write(shelf.resolve("shelf-index.jar"));
        assertEquals(1, indexes().read(packed).offers().size());
        indexes().install(packed, List.of("nets"), false);
        assertEquals(List.of("nets.jar"), installedFiles());
        indexes().write(shelf); // the packed index is none of the bundles
        assertEquals(1, indexes().read(shelf).offers().size());
        faults.put("shelf-index.jar", "seal");
        assertEquals(
                "shelf/shelf-index.jar cannot be installed: it is signed, and was changed since. Copy it again, or ask its"
                        + " author for another.",
                told(() -> indexes().read(packed)));
        faults.clear();
        Jar.empty().with("other.xml", "x").write(packed);
        assertTrue(told(() -> indexes().read(packed)).startsWith("There is no index shelf/shelf-index.jar."));
        Files.delete(packed);
        assertTrue(told(() -> indexes().read(packed)).startsWith("There is no index shelf/shelf-index.jar."));
    }
}
