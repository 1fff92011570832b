package org.hidewright.window.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.hidewright.core.project.AnswerPath;
import org.hidewright.core.work.Bench;
import org.hidewright.window.kit.Nets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ComparisonTest {
    @TempDir
    Path folder;

    private ProjectFace face() throws Exception {
        var project = Nets.file(folder).project().answering("second", "end", "{\"loop\": {\"round\": \"30 mm\"}}");
        return Faces.whole(new Bench(Nets.catalogue()).work(project), Nets.ENGLISH, () -> true)
                .orElseThrow();
    }

    @Test
    void whatDiffersAndWhatOneAloneHasIsTold() throws Exception {
        Comparison comparison = Comparison.of(
                face().slip("first").orElseThrow(), face().slip("second").orElseThrow());
        assertEquals("First cord", comparison.left());
        assertEquals("Cord “second”", comparison.right());
        Comparison.Line length = comparison.answers().get(0);
        assertEquals("Length", length.label());
        assertTrue(length.differs());
        List<String> differing = comparison.questions().stream()
                .filter(Comparison.Line::differs)
                .map(Comparison.Line::label)
                .toList();
        assertEquals(List.of("Round", "End", "Round the loop"), differing);
        assertEquals(
                "30 mm",
                comparison.questions().stream()
                        .filter(line -> line.label().equals("Round the loop"))
                        .findFirst()
                        .orElseThrow()
                        .right());
        assertFalse(
                comparison.questions().stream().anyMatch(line -> line.label().equals("Spare")), "neither has it");
    }

    @Test
    void aSlipDoesNotDifferFromItself() throws Exception {
        SlipFace first = face().slip("first").orElseThrow();
        assertEquals(0, Comparison.of(first, first).differences());
        assertEquals(
                "Two strands",
                first.question(AnswerPath.of("lay")).orElseThrow().read(),
                "choices by their labels");
    }
}
