package org.hidewright.core.search;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.hidewright.api.declaration.Chosen;
import org.hidewright.api.declaration.Values;
import org.hidewright.api.drawing.Path;
import org.hidewright.api.drawing.Point;
import org.hidewright.api.drawing.Segment;
import org.hidewright.api.item.Hole;
import org.hidewright.api.item.Item;
import org.hidewright.api.item.Part;
import org.hidewright.api.measure.Money;
import org.hidewright.api.measure.Quantity;
import org.hidewright.api.measure.Size;

/**
 * A short text that differs when what was asked differs: kept with what a search has found, it tells whether that was found for
 * what is asked now. Of an item it goes by what is cut. Numbers are taken to a millionth of their base unit, so that the last digit,
 * which need not be the same on another machine, does not count.
 */
public final class AskedPrint {
    private static final double STEPS = 1e6;
    private static final int BYTES = 8;

    private final StringBuilder text = new StringBuilder();

    private AskedPrint() {}

    /** The print of all answers but one. */
    public static String of(Values asked, String without) {
        AskedPrint print = new AskedPrint();
        Map<String, Object> rest = new TreeMap<>(asked.entries());
        rest.remove(without);
        print.add(rest);
        return print.shortened();
    }

    private String shortened() {
        try {
            byte[] digest =
                    MessageDigest.getInstance("SHA-256").digest(text.toString().getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest, 0, BYTES);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private void add(Object value) {
        if (value instanceof Values values) {
            word(values.rowId());
            add(new TreeMap<>(values.entries()));
        } else if (value instanceof Chosen chosen) {
            word(chosen.variant());
            add(chosen.values());
        } else if (value instanceof Map<?, ?> map) {
            text.append('{');
            map.forEach((key, inside) -> {
                word(String.valueOf(key));
                add(inside);
            });
            text.append('}');
        } else if (value instanceof List<?> list) {
            text.append('[');
            list.forEach(this::add);
            text.append(']');
        } else if (value instanceof Item item) {
            item.parts().forEach(this::add);
        } else if (value instanceof Part part) {
            part(part);
        } else if (value instanceof Money money) {
            word(money.toString());
        } else if (value instanceof Quantity<?> quantity) {
            number(quantity.base());
        } else if (value instanceof Size size) {
            number(size.width().mm());
            number(size.height().mm());
        } else if (value instanceof Number number) {
            number(number.doubleValue());
        } else {
            word(String.valueOf(value));
        }
    }

    private void part(Part part) {
        word(part.id());
        word(part.leather());
        number(part.count());
        number(part.mirrored());
        number(part.oversize());
        number(part.allowance());
        part.direction().ifPresent(this::number);
        path(part.outline());
        part.cutOuts().forEach(this::path);
        for (Hole hole : part.holes()) {
            point(hole.centre());
            number(hole.diameter());
        }
    }

    private void path(Path path) {
        text.append('<');
        for (Segment segment : path.segments()) {
            point(segment.start());
            if (segment instanceof Segment.Arc arc) {
                point(arc.centre());
                number(arc.sweep());
            } else if (segment instanceof Segment.Cubic cubic) {
                point(cubic.control1());
                point(cubic.control2());
            }
            point(segment.end());
        }
        text.append('>');
    }

    private void point(Point point) {
        number(point.x());
        number(point.y());
    }

    private void number(double number) {
        text.append((long) Math.rint(number * STEPS)).append(' ');
    }

    /** With its length before it, so that two words are never read as one. */
    private void word(String word) {
        text.append(word.length()).append(':').append(word).append(' ');
    }
}
