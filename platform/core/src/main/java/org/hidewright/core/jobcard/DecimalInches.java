package org.hidewright.core.jobcard;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.hidewright.api.document.Section;
import org.hidewright.api.document.Table;

/** Whether a page has inches that no rule shows: with three decimals or more, and no fraction beside them. */
final class DecimalInches {
    private static final Pattern DECIMAL = Pattern.compile("\\d[.,]\\d{3,}[\\u00A0 ]in(?![\\w²])");
    private static final Pattern FRACTION = Pattern.compile("[\\d/ ]+ in");

    private DecimalInches() {}

    static boolean inTablesOf(List<Section> sections) {
        return sections.stream()
                .flatMap(section -> section.blocks().stream())
                .filter(Table.class::isInstance)
                .flatMap(table -> ((Table) table).rows().stream())
                .anyMatch(DecimalInches::in);
    }

    private static boolean in(List<String> row) {
        return IntStream.range(0, row.size())
                .anyMatch(i -> DECIMAL.matcher(row.get(i)).find()
                        && !(i + 1 < row.size()
                                && FRACTION.matcher(row.get(i + 1)).matches()));
    }
}
