package org.hidewright.core.project;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.json.Place;
import org.hidewright.core.wording.Remark;

/**
 * What stands in a project's text before, between and behind its slips, and what was said of it. Stays the same whatever
 * becomes of the slips.
 */
final class Gaps {
    private static final Comparator<Place> IN_ORDER =
            Comparator.comparingInt(Place::line).thenComparingInt(Place::column);

    /**
     * One of them.
     *
     * @param text its characters
     * @param end the place behind it, counted from where it begins
     */
    private record Gap(String text, Place end) {}

    /**
     * Something said of a gap.
     *
     * @param gap which
     * @param remark with its place counted from where the gap begins
     */
    private record Said(int gap, Remark remark) {}

    private final List<Gap> gaps;
    private final List<Said> said;

    private Gaps(List<Gap> gaps, List<Said> said) {
        this.gaps = List.copyOf(gaps);
        this.said = List.copyOf(said);
    }

    /** Cuts a text at its slips; what was said of it outside of them goes with the gaps. */
    static Gaps around(List<JsonObject> slips, JsonText source, List<Remark> remarks) {
        String text = source.text();
        String mark = JsonText.markOf(text);
        Map<String, Gap> alike = new HashMap<>(); // most are a comma and a new line
        List<Gap> gaps = new ArrayList<>();
        List<Place> starts = new ArrayList<>();
        Place start = Place.START;
        int from = 0;
        for (JsonObject slip : slips) {
            starts.add(start);
            gaps.add(gap(text.substring(from, slip.start()), from == 0 ? mark : "", alike));
            start = slip.place().behind(source.textOf(slip));
            from = slip.end();
        }
        starts.add(start);
        gaps.add(gap(text.substring(from), from == 0 ? mark : "", alike));
        List<Said> said = new ArrayList<>();
        for (Remark remark : remarks) {
            int found = Collections.binarySearch(starts, remark.place(), IN_ORDER);
            int gap = found >= 0 ? found : -found - 2;
            said.add(new Said(gap, remark.atPlace(remark.place().from(starts.get(gap)))));
        }
        return new Gaps(gaps, said);
    }

    private static Gap gap(String text, String mark, Map<String, Gap> alike) {
        return alike.computeIfAbsent(text, same -> new Gap(same, Place.START.behind(same.substring(mark.length()))));
    }

    /** The gaps with the slips between them. */
    String text(List<Slip> slips) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < slips.size(); i++) {
            text.append(gaps.get(i).text()).append(slips.get(i).text());
        }
        return text.append(gaps.get(slips.size()).text()).toString();
    }

    /** Where each slip begins, and at last where a slip behind them would. */
    List<Place> starts(List<Slip> slips) {
        List<Place> starts = new ArrayList<>(gaps.size());
        Place at = Place.START;
        for (int i = 0; i < gaps.size(); i++) {
            at = gaps.get(i).end().within(at);
            starts.add(at);
            at = i < slips.size() ? slips.get(i).end().within(at) : at;
        }
        return starts;
    }

    /** What was said of the gaps, at its places in a text where slips begin at these places. */
    List<Remark> remarks(List<Slip> slips, List<Place> starts) {
        return said.stream()
                .map(one -> one.remark()
                        .atPlace(one.remark()
                                .place()
                                .within(
                                        one.gap() == 0
                                                ? Place.START
                                                : slips.get(one.gap() - 1).end().within(starts.get(one.gap() - 1)))))
                .toList();
    }
}
