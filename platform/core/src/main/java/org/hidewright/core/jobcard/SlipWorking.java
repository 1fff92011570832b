package org.hidewright.core.jobcard;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hidewright.api.calculator.Formula;
import org.hidewright.api.document.Working;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.WorkedSlip;
import org.hidewright.core.work.WorkedSlip.Step;

/** The working of one slip: each formula once, below it the numbers of every place it was used for. */
public final class SlipWorking {
    private final WorkedSlip slip;
    private final Wording wording;
    private final SlipWording words;

    public SlipWorking(WorkedSlip slip, Wording wording) {
        this.slip = slip;
        this.wording = wording;
        this.words = new SlipWording(slip, wording);
    }

    public Working block() {
        Map<Formula, List<Step>> byFormula = new LinkedHashMap<>();
        slip.steps()
                .forEach(step -> byFormula
                        .computeIfAbsent(step.formula(), key -> new ArrayList<>())
                        .add(step));
        List<Working.Line> lines = new ArrayList<>();
        byFormula.forEach((formula, steps) -> lines.addAll(lines(formula, steps)));
        return Working.of(lines);
    }

    /** Places with the same numbers are told once. */
    private List<Working.Line> lines(Formula formula, List<Step> steps) {
        List<Numbers> all = steps.stream().map(this::numbers).distinct().toList();
        List<Working.Line> lines = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            lines.add(Working.Line.of(
                    i == 0 ? words.formulaName(formula.key()) : "",
                    i == 0 ? wording.formula(formula.symbols()) : "",
                    all.get(i).putIn(),
                    all.get(i).result(),
                    ""));
        }
        return lines;
    }

    private record Numbers(String putIn, String result) {}

    private Numbers numbers(Step step) {
        String putIn = FormulaText.numbers(step, wording);
        String result = FormulaText.result(step, wording);
        return new Numbers(putIn, putIn.isEmpty() && FormulaText.says(step, result, wording) ? "" : result);
    }
}
