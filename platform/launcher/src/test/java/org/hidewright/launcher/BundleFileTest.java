package org.hidewright.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.File;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class BundleFileTest {

    @Test
    void spacesPlusSignsAndUmlautsInAFolderSurviveFelixsDecoding() {
        File jar = new File("/work shop/a+b/Lederhülle.jar");
        String decoded = URLDecoder.decode(new BundleFile(40, jar).location(), StandardCharsets.UTF_8);
        assertEquals("reference:file:" + jar.toURI().getPath(), decoded);
    }
}
