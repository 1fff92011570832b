package org.hidewright.core.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The page of all keys says what the readers know: a key more, or one that need not be there any more, and this fails. */
class ReferencePageTest {
    private static final Path PAGE = Path.of("../../docs/reference/texts.md");
    private static final Path ANEW = Path.of("target/reference/texts.md");

    @Test
    void thePageIsAsTheProgramReads() throws Exception {
        ReferencePage reference = new ReferencePage();
        String page = reference.write();
        Files.createDirectories(ANEW.getParent());
        Files.writeString(ANEW, page);
        assertEquals(Set.of(), reference.idle(), "described, and known to no reader");
        assertEquals(
                page,
                Files.isRegularFile(PAGE) ? Files.readString(PAGE) : "",
                "docs/reference/renew writes the page anew; read it as an author would");
    }

    @Test
    void itsExamplesAreReadWithoutAWord() throws Exception {
        assertEquals(List.of(), ReferencePage.whatIsToldOfTheWhole());
    }
}
