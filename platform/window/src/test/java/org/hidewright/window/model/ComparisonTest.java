package org.hidewright.window.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.hidewright.core.project.AnswerPath;
import org.hidewright.core.store.ProjectFile;
import org.hidewright.core.work.Bench;
import org.hidewright.window.kit.Nets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ComparisonTest {
    @TempDir
    Path folder;

    private ProjectFace face() throws Exception {
        var project = Nets.file(folder).project().answering("second", "end", "{\"loop\": {\"round\": \"30 mm\"}}");
        return Faces.whole(new Bench(Nets.catalogue()).work(project), Nets.ENGLISH, List.of(), () -> true)
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
    void rowsAndTablesAreComparedRowByRowAndGroupsByWhatIsInThem() throws Exception {
        var project =
                ProjectFile.open(Nets.write(folder.resolve("bags.json"), """
                        {"hidewright": 1, "name": "Bags", "slips": [
                          {"id": "small", "calculator": "bag", "questions": {"width": "100 mm",
                            "eyelets": [{"id": "left", "across": "10 mm", "up": "20 mm"}]}},
                          {"id": "large", "calculator": "bag", "questions": {"width": "100 mm",
                            "room": {"beside": "3 mm", "above": "6 mm"},
                            "eyelets": [{"id": "left", "across": "12 mm", "up": "20 mm"}]}}
                        ]}
                        """)).project();
        ProjectFace bags = Faces.whole(new Bench(Nets.catalogue()).work(project), Nets.ENGLISH, List.of(), () -> true)
                .orElseThrow();
        Comparison comparison = Comparison.of(
                bags.slip("small").orElseThrow(), bags.slip("large").orElseThrow());
        assertEquals(
                List.of(
                        "0 Cut height: 84.0\u00A0mm, 86.0\u00A0mm",
                        "0 Punched: , ",
                        "1 left: From the left 10.0\u00A0mm, From the left 12.0\u00A0mm"),
                comparison.answers().stream()
                        .filter(line -> !line.label().equals("Cut width"))
                        .limit(3) // then the parts
                        .map(ComparisonTest::told)
                        .toList());
        assertEquals(
                List.of("0 Room: , ", "1 Above: 4 mm, 6 mm", "0 Eyelets: , ", "1 left: 10 mm · 20 mm, 12 mm · 20 mm"),
                comparison.questions().stream()
                        .filter(line -> line.differs() || line.left().isEmpty())
                        .map(ComparisonTest::told)
                        .toList());
        assertEquals(
                7,
                comparison.differences(),
                "height, punched row, part, its stitch line, all parts; room above, eyelet");
    }

    private static String told(Comparison.Line line) {
        return line.depth() + " " + line.label() + ": " + line.left() + ", " + line.right();
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
