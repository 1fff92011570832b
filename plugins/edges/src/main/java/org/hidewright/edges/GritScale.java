package org.hidewright.edges;

import java.util.Map;
import java.util.NavigableMap;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * A way of numbering abrasives, with the mean size of its grains in micrometres. Numbers of two scales are no measure of
 * each other: beyond 220 they drift apart, and two published charts of the American numbers disagree.
 */
public enum GritScale {
    /** FEPA P grades, ISO 6344-2 (P12 to P220) and ISO 6344-3 (P240 and finer); read in GNU Units 2.22, unit grit_P. */
    P(Map.ofEntries(
            Map.entry(12, 1815.0),
            Map.entry(16, 1324.0),
            Map.entry(20, 1000.0),
            Map.entry(24, 764.0),
            Map.entry(30, 642.0),
            Map.entry(36, 538.0),
            Map.entry(40, 425.0),
            Map.entry(50, 336.0),
            Map.entry(60, 269.0),
            Map.entry(80, 201.0),
            Map.entry(100, 162.0),
            Map.entry(120, 125.0),
            Map.entry(150, 100.0),
            Map.entry(180, 82.0),
            Map.entry(220, 68.0),
            Map.entry(240, 58.5),
            Map.entry(280, 52.2),
            Map.entry(320, 46.2),
            Map.entry(360, 40.5),
            Map.entry(400, 35.0),
            Map.entry(500, 30.2),
            Map.entry(600, 25.8),
            Map.entry(800, 21.8),
            Map.entry(1000, 18.3),
            Map.entry(1200, 15.3),
            Map.entry(1500, 12.6),
            Map.entry(2000, 10.3),
            Map.entry(2500, 8.4))),
    /** American grades by the older chart, CAMI. */
    CAMI(Map.ofEntries(
            Map.entry(24, 708.0),
            Map.entry(30, 632.0),
            Map.entry(36, 530.0),
            Map.entry(40, 425.0),
            Map.entry(50, 348.0),
            Map.entry(60, 265.0),
            Map.entry(80, 190.0),
            Map.entry(100, 140.0),
            Map.entry(120, 115.0),
            Map.entry(150, 92.0),
            Map.entry(180, 82.0),
            Map.entry(220, 68.0),
            Map.entry(240, 53.0),
            Map.entry(320, 36.0),
            Map.entry(360, 28.0),
            Map.entry(400, 23.0),
            Map.entry(500, 20.0),
            Map.entry(600, 16.0),
            Map.entry(800, 12.6),
            Map.entry(1000, 10.3))),
    /** American grades of coated abrasives by the makers’ association; read in GNU Units 2.22, unit grit_ansicoated. */
    ANSI(Map.ofEntries(
            Map.entry(24, 745.0),
            Map.entry(30, 625.0),
            Map.entry(36, 525.0),
            Map.entry(40, 438.0),
            Map.entry(60, 260.0),
            Map.entry(80, 185.0),
            Map.entry(100, 129.0),
            Map.entry(120, 109.0),
            Map.entry(150, 82.0),
            Map.entry(180, 69.0),
            Map.entry(220, 58.0),
            Map.entry(240, 50.0),
            Map.entry(280, 39.5),
            Map.entry(320, 29.5),
            Map.entry(360, 23.0),
            Map.entry(400, 18.25),
            Map.entry(500, 13.9),
            Map.entry(600, 10.55),
            Map.entry(800, 11.5),
            Map.entry(1000, 9.5),
            Map.entry(2000, 7.2))),
    /** Films and belts that are numbered by the grain itself. */
    MICRON(Map.of());

    /** Up to here all scales mean about the same. */
    static final int SCALES_AGREE_UP_TO = 220;

    private final NavigableMap<Integer, Double> grades;

    GritScale(Map<Integer, Double> grades) {
        this.grades = new TreeMap<>(grades);
    }

    /** Mean grain size in micrometres; nothing where the scale has no such grade. */
    OptionalDouble micrometres(int number) {
        if (this == MICRON) {
            return OptionalDouble.of(number);
        }
        Double size = grades.get(number);
        return size == null ? OptionalDouble.empty() : OptionalDouble.of(size);
    }

    /** A grade that the scale has. */
    Grit grit(int number) {
        return new Grit(label(number), micrometres(number).orElseThrow());
    }

    /** Its grades by number; none for grains told by their size. */
    NavigableMap<Integer, Double> grades() {
        return grades;
    }

    boolean isAmerican() {
        return this == CAMI || this == ANSI;
    }

    /** As it is printed on the back of a sheet. */
    String label(int number) {
        return switch (this) {
            case P -> "P" + number;
            case CAMI, ANSI -> name() + " " + number;
            case MICRON -> number + " µm";
        };
    }
}
