package org.hidewright.thickness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.hidewright.api.calculator.Calculator;
import org.hidewright.api.declaration.Answer;
import org.hidewright.api.declaration.RecordCalculator;
import org.junit.jupiter.api.Test;

/** What leads a slip on the first page is what is cut or taken off, not another name for it. */
class LeadingAnswersTest {
    private static List<String> leads(Calculator<?, ?> calculator) {
        return RecordCalculator.of(calculator).declaration().answers().stream()
                .filter(Answer::lead)
                .map(Answer::key)
                .toList();
    }

    @Test
    void aThicknessLeadsByItsMillimetresNotByItsOuncesOrLabel() {
        assertEquals(List.of("millimetres"), leads(new Thickness()));
        assertEquals(List.of("mean"), leads(new GaugeReadings()));
        assertEquals(List.of("total"), leads(new Stack()));
    }

    @Test
    void aSkiveAndAScarfLeadByTheirMeasuresNotByTheirSlope() {
        assertEquals(List.of("depth", "width"), leads(new Skive()));
        assertEquals(List.of("lap"), leads(new Scarf()));
    }
}
