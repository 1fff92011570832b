package org.hidewright.core.project;

import static org.hidewright.core.bench.Shop.json;
import static org.hidewright.core.bench.Shop.project;
import static org.hidewright.core.bench.Shop.projectText;
import static org.hidewright.core.bench.Shop.slip;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class StockUsesTest {
    @Test
    void everyQuestionThatTakesSomethingIsFoundAlsoInRowsAndVariantsOfSlipsNobodyKnows() {
        Project project = project(projectText(
                slip("strap", "unknown", json("""
                        'thickness': {'workshop': 'leather', 'row': 'side', 'column': 'thickness'},
                        'width': '20 mm',
                        'length': {'from': 'other', 'answer': 'length'},
                        'holes': [{'across': '2 mm'}, {'id': 'far', 'hole': {'diameter': {'workshop': 'punches', 'row': 'two', 'column': 'diameter'}}}]
                        """)),
                slip("cost", "unknown", json("'leather': {'workshop': 'leather'}"))));
        assertEquals(
                List.of(
                        "strap thickness leather[side].thickness",
                        "strap holes[far].hole.diameter punches[two].diameter",
                        "cost leather leather"),
                StockUses.of(project).stream()
                        .map(use -> use.slip().id() + " " + use.path() + " " + use.link())
                        .toList());
    }
}
