package org.hidewright.core.find;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.hidewright.core.Nearest;
import org.hidewright.core.find.FoldedWords.Met;

/**
 * Finds things by words. Every word that is sought must be met; where it is met decides the rank: in the title before where a
 * thing stands, and that before its help; the very word before its beginning, its end, its inside.
 */
public final class Finder {
    /** Of one group no more are shown: who finds so many needs another word. */
    public static final int MOST_OF_GROUP = 30;

    private static final int TITLE = 0;
    private static final int WHERE = 10;
    private static final int HELP = 20;

    private final List<Folded> all;

    private record Folded(Findable thing, FoldedWords title, FoldedWords where, FoldedWords help) {
        private static Folded of(Findable thing) {
            return new Folded(
                    thing,
                    FoldedWords.of(thing.title()),
                    FoldedWords.of(thing.where()),
                    FoldedWords.of(thing.help() + " " + ids(thing)));
        }

        /** What a thing is called where it is typed; of what is asked or told on it that would be the same again and again. */
        private static String ids(Findable thing) {
            boolean itself = thing.goal().question().isEmpty() && thing.group() != Group.NOTICE;
            return itself ? thing.goal().calculator() + " " + thing.goal().slip() : "";
        }
    }

    private record Ranked(Findable thing, int rank, int words) {}

    public Finder(List<Findable> things) {
        this.all = things.stream().map(Folded::of).toList();
    }

    /**
     * What is met by all words of a text, the best first in its group, and the group of the best first; nothing for a text
     * without a word.
     */
    public Map<Group, List<Findable>> find(String text) {
        FoldedWords sought = FoldedWords.of(text);
        Map<Group, List<Findable>> found = new LinkedHashMap<>();
        if (sought.isEmpty()) {
            return found;
        }
        List<Ranked> ranked = new ArrayList<>();
        for (Folded thing : all) {
            rank(thing, sought)
                    .ifPresent(rank -> ranked.add(
                            new Ranked(thing.thing(), rank, thing.title().count())));
        }
        ranked.sort(Comparator.comparingInt(Ranked::rank).thenComparingInt(Ranked::words));
        Map<Group, Integer> left = new EnumMap<>(Group.class);
        for (Ranked one : ranked) {
            Group group = one.thing().group();
            if (left.merge(group, 1, Integer::sum) <= MOST_OF_GROUP) {
                found.computeIfAbsent(group, key -> new ArrayList<>()).add(one.thing());
            }
        }
        return found;
    }

    /** The lower the better; empty where a word is not met at all. */
    private static OptionalInt rank(Folded thing, FoldedWords sought) {
        int rank = thing.title().same(sought) ? 0 : 1;
        for (int word = 0; word < sought.count(); word++) {
            int best = Math.min(
                    met(thing.title(), sought, word, TITLE),
                    Math.min(met(thing.where(), sought, word, WHERE), met(thing.help(), sought, word, HELP)));
            if (best == Integer.MAX_VALUE) {
                return OptionalInt.empty();
            }
            rank += best;
        }
        return OptionalInt.of(rank);
    }

    private static int met(FoldedWords words, FoldedWords sought, int word, int place) {
        Met met = words.met(sought, word);
        return met == Met.NOT ? Integer.MAX_VALUE : place + met.ordinal();
    }

    /** A word of a title that may have been meant by a text that finds nothing. */
    public Optional<String> meant(String text) {
        TreeSet<String> words = new TreeSet<>();
        all.forEach(thing -> Stream.of(thing.thing().title().split("[^\\p{L}\\p{N}]+"))
                .filter(word -> word.length() > 2)
                .forEach(words::add));
        return Nearest.to(text.strip(), words).filter(word -> !find(word).isEmpty());
    }
}
