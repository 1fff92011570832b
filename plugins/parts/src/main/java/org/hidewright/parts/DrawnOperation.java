package org.hidewright.parts;

import java.util.List;
import java.util.Optional;
import org.hidewright.api.calculator.Asked;
import org.hidewright.api.calculator.RowId;
import org.hidewright.api.item.Operation;
import org.hidewright.api.measure.Duration;

/** One thing that is done to make the piece. */
public record DrawnOperation(
        @RowId String id,
        @Asked(example = "Glue the pocket on three sides") String what,
        @Asked(example = "front; back") Optional<List<String>> on,
        @Asked(example = "skive") Optional<List<String>> after,
        @Asked(example = "contact adhesive") Optional<String> tool,

        @Asked(unit = "min", min = "0 min", max = "1000 h", usual = "1-240 min", example = "10 min")
        Optional<Duration> handsOn,

        @Asked(unit = "min", min = "0 min", max = "10000 h", example = "20 min")
        Optional<Duration> waitLeast,

        @Asked(unit = "min", min = "0 min", max = "10000 h", example = "60 min")
        Optional<Duration> waitMost) {

    Operation operation() {
        Operation.Builder operation =
                Operation.of(id, what).on(stripped(on)).after(stripped(after)).tool(tool.orElse(""));
        handsOn.ifPresent(operation::handsOn);
        waitLeast.ifPresent(operation::leastWait);
        waitMost.ifPresent(operation::mostWait);
        return operation.build();
    }

    private static List<String> stripped(Optional<List<String>> ids) {
        return ids.orElse(List.of()).stream().map(String::strip).toList();
    }
}
