package org.hidewright.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.io.File;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TurnedOffTest {
    @TempDir
    Path folder;

    private File jar(String file, String... headers) throws Exception {
        Path jar = folder.resolve(file);
        try (OutputStream out = Files.newOutputStream(jar);
                ZipOutputStream zip = new ZipOutputStream(out)) {
            zip.putNextEntry(new ZipEntry("META-INF/MANIFEST.MF"));
            zip.write(
                    ("Manifest-Version: 1.0\n" + String.join("\n", headers) + "\n\n").getBytes(StandardCharsets.UTF_8));
        }
        return jar.toFile();
    }

    @Test
    void whatIsTurnedOffIsFoundByItsNameAndByWhatItExports() throws Exception {
        TurnedOff off = new TurnedOff(List.of(
                Files.writeString(folder.resolve("torn.jar"), "torn").toFile(),
                jar("a.jar", "Bundle-SymbolicName: org.example.blanks;singleton:=true"),
                jar(
                        "b.jar",
                        "Bundle-SymbolicName: org.example.nets",
                        "Export-Package: org.a;uses:=\"org.x,org.y\";version=1,org.b;org.c;version=2")));
        assertEquals("org.example.blanks", off.called("org.example.blanks"));
        assertNull(off.called("org.example.ropes"));
        assertEquals("org.example.nets", off.exporting("org.a"));
        assertEquals("org.example.nets", off.exporting("org.c"));
        assertNull(off.exporting("org.y"), "which is only used");
        assertNull(new TurnedOff(List.of()).called("org.example.blanks"));
    }
}
