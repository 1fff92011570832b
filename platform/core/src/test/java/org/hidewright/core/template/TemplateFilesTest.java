package org.hidewright.core.template;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.junit.jupiter.api.Test;

class TemplateFilesTest {
    @Test
    void filesAreCalledByTheIdsOfTheirTemplates() {
        assertEquals(
                "{key-fob=templates/key-fob.json, belt=belt.json}",
                TemplateFiles.byId("templates/key-fob.json, belt.json").toString());
        assertEquals(Map.of(), TemplateFiles.byId(null));
        assertEquals(Map.of(), TemplateFiles.byId(""));
        assertEquals(Map.of(), TemplateFiles.byId("Key Fob.json, notes.txt, -a.json, a-.json, a.json.bak"));
        assertEquals("{a=x/a.json}", TemplateFiles.byId("x/a.json,y/a.json").toString(), "of two the first");
    }
}
