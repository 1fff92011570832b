package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import org.hidewright.core.jobcard.RangeCheck;
import org.hidewright.core.jobcard.RangeChecks;
import org.hidewright.core.jobcard.RangeWords;
import org.hidewright.core.project.Project;
import org.hidewright.core.project.ProjectReader;
import org.hidewright.core.range.Part;
import org.hidewright.core.range.Raised;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.Bench;
import org.hidewright.core.work.WorkedProject;
import org.junit.jupiter.api.Test;

/**
 * A check that a shipped calculator tells at one end of a range only. Where it begins is held against the calculator itself,
 * worked at single values on either side.
 */
class RangeChecksIT {
    private static final String FEATHERED = "notice.skive-feathered";

    private final Bench bench = new Bench(BundledCalculators.catalogue());

    RangeChecksIT() throws Exception {}

    private WorkedProject skive(String target) {
        Project project = ProjectReader.read(
                        "{\"hidewright\": 1, \"slips\": [{\"id\": \"edge\", \"calculator\": \"skive\","
                                + " \"questions\": {\"thickness\": \"2 mm\", \"target\": \"" + target + "\"}}]}")
                .project()
                .orElseThrow();
        return bench.work(project);
    }

    private long feathered(String target) {
        return skive(target).remarks().stream()
                .filter(remark -> remark.key().equals(FEATHERED))
                .count();
    }

    @Test
    void anEdgeSkivedTooThinAtTheThinEndOfItsRangeIsToldOnce() {
        WorkedProject worked = skive("0.1-0.6 mm");
        assertEquals(0, feathered("0.1-0.6 mm"), "not at the midpoint");
        List<Raised<Remark>> raised = worked.ranges("edge").orElseThrow().study().raised().stream()
                .filter(one -> one.what().key().equals(FEATHERED))
                .toList();
        assertEquals(1, raised.size());
        assertEquals(1, raised.get(0).parts().size());
        Part part = raised.get(0).parts().get(0);
        assertEquals(0.1, part.from(), 1e-12);
        assertEquals(1, feathered(part.to() - 1e-4 + " mm"));
        assertEquals(0, feathered(part.to() + 1e-4 + " mm"));
        List<RangeCheck> checks =
                RangeChecks.of(worked, worked.slips().get("edge"), new Wording(Locale.ENGLISH, UnitSystem.METRIC));
        assertEquals(1, checks.size());
        assertEquals(
                "Where Skive to is 0.200 mm or less: ",
                checks.get(0).what().replace('\u00A0', ' ').split("(?<=: )")[0]);
    }

    /** Sold one ounce wide, a range ends where two labels meet; which of them holds at the very end is rounding. */
    @Test
    void aLabelThatChangesOnlyAtTheEndOfTheRangeIsNotASwitch() {
        Project project = ProjectReader.read("{\"hidewright\": 1, \"slips\": [{\"id\": \"hide\", \"calculator\":"
                        + " \"thickness\", \"questions\": {\"thickness\": \"2-4 oz\"}}]}")
                .project()
                .orElseThrow();
        WorkedProject worked = bench.work(project);
        List<String> sold = RangeWords.of(
                        worked, worked.slips().get("hide"), new Wording(Locale.ENGLISH, UnitSystem.METRIC))
                .orElseThrow()
                .sentences()
                .stream()
                .map(sentence -> sentence.replace('\u00A0', ' '))
                .filter(sentence -> sentence.startsWith("Sold as"))
                .toList();
        assertEquals(
                List.of(),
                sold.stream()
                        .filter(text -> text.matches(".* passes (2|4)\\.000 oz\\."))
                        .toList());
        assertEquals(
                2,
                sold.stream().filter(text -> text.endsWith(" passes 3.000 oz.")).count(),
                sold::toString);
    }
}
