package org.hidewright.core.search;

import static org.hidewright.core.bench.Shop.json;
import static org.hidewright.core.bench.Shop.project;
import static org.hidewright.core.bench.Shop.projectText;
import static org.hidewright.core.bench.Shop.slip;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hidewright.api.declaration.DeclaredSearch;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.measure.Length;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.bench.Spotting;
import org.hidewright.core.bench.Whole;
import org.hidewright.core.project.Project;
import org.hidewright.core.project.ProjectReader;
import org.hidewright.core.work.SlipSearch;
import org.hidewright.core.work.WorkedSlip;
import org.junit.jupiter.api.Test;

/** What was found, as it is written for the maker to read and to change. */
class FoundTextTest {
    private final Shop shop = new Shop(new Whole(), new Spotting());
    private final Project project =
            project(projectText(slip("s", "whole", ""), slip("line", "spotting", json("'line': '80 mm'"))));

    private WorkedSlip worked(Project of, String slip) {
        return shop.bench().work(of).slips().get(slip);
    }

    private DeclaredSearch search(String slip) {
        return worked(project, slip)
                .installed()
                .orElseThrow()
                .calculator()
                .search()
                .orElseThrow();
    }

    private Values found(long seed) {
        List<Values> found = new ArrayList<>();
        search("s").search(worked(project, "s").questions().orElseThrow(), SearchBudget.ofTries(1, seed), found::add);
        return found.get(0);
    }

    @Test
    void answersOfEveryKindAreReadAgainAsTheyWereFound() throws Exception {
        for (long seed = 1; seed <= 200; seed++) {
            List<SlipSearch.Find> find = new ArrayList<>();
            SlipSearch.of(worked(project, "s")).orElseThrow().run(SearchBudget.ofTries(1, seed), find::add);
            String text = find.get(0).in(project).text();
            WorkedSlip read = worked(ProjectReader.read(text).project().orElseThrow(), "s");
            assertEquals(
                    found(seed), read.questions().orElseThrow().get("found").orElseThrow(), text);
        }
    }

    private String spots(double mm, double share) {
        Map<String, Object> spot = new LinkedHashMap<>();
        spot.put("at", Length.ofMm(mm));
        return FoundText.json(
                search("line").sought(),
                Values.of(Map.of("spots", List.of(Values.row("spot-1", spot)), "share", share)));
    }

    @Test
    void aRowIsALineAndNumbersHaveNoMoreDigitsThanTheyNeed() {
        assertEquals(json("""
                {
                  'spots': [
                    {'id':'spot-1','at':'7.5 mm'}
                  ],
                  'share': '12.5 %'
                }""").replace(" ", ""), spots(7.5, 0.125).replace(" ", ""));
        assertTrue(spots(0.1 + 0.2, 0).contains("\"0.30000000000000004 mm\""), spots(0.1 + 0.2, 0));
        assertTrue(spots(-0.0, 0).contains("\"0.0 mm\""), spots(-0.0, 0));
        assertTrue(spots(1e-7, 0).contains("\"0.00000010 mm\""), spots(1e-7, 0));
    }

    @Test
    void aShareIsWrittenAsNearAsItComes() {
        assertTrue(spots(1, 1 / 3.0).contains("\"33.33333333333333 %\""), spots(1, 1 / 3.0));
    }
}
