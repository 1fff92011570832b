package org.hidewright.layout.open;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Scanner;
import java.util.stream.Stream;
import org.hidewright.layout.task.Laid;
import org.hidewright.layout.task.Outline;
import org.hidewright.layout.task.Piece;
import org.hidewright.layout.task.Sheet;
import org.hidewright.layout.task.Turning;

/**
 * A published layout known to be best, of pieces that fill panels exactly: what {@code src/test/resources/open/terashima} holds.
 *
 * @param layout every piece where it was drawn
 */
public record FilledPanels(String name, List<Piece> pieces, List<Sheet> sheets, List<Laid> layout) {

    /** All that are kept here, by name. */
    public static Stream<FilledPanels> all() {
        try (Stream<Path> files = Files.list(folder())) {
            return files.filter(file -> file.getFileName().toString().startsWith("Op")).sorted().toList().stream()
                    .map(FilledPanels::read);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** The folder of the instances kept here. */
    public static Path folder() {
        try {
            return Path.of(FilledPanels.class.getResource("/open/terashima").toURI());
        } catch (URISyntaxException failed) {
            throw new IllegalStateException(failed);
        }
    }

    private static FilledPanels read(Path file) {
        String text;
        try {
            text = Files.readString(file);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        Scanner numbers = new Scanner(text).useLocale(Locale.ROOT);
        int panels = numbers.nextInt();
        int[] counts = new int[panels];
        for (int panel = 0; panel < panels; panel++) {
            counts[panel] = numbers.nextInt();
        }
        Outline edge = Outline.rectangle(0, 0, numbers.nextDouble(), numbers.nextDouble());
        List<Piece> pieces = new ArrayList<>();
        List<Sheet> sheets = new ArrayList<>();
        List<Laid> layout = new ArrayList<>();
        for (int panel = 0; panel < panels; panel++) {
            sheets.add(Sheet.plain("panel " + panel, edge));
            for (int piece = 0; piece < counts[panel]; piece++) {
                double[] x = new double[numbers.nextInt()];
                double[] y = new double[x.length];
                for (int corner = 0; corner < x.length; corner++) {
                    x[corner] = numbers.nextDouble();
                    y[corner] = numbers.nextDouble();
                }
                layout.add(new Laid(pieces.size(), panel, 0, 0, 0));
                pieces.add(new Piece("piece " + pieces.size(), new Outline(x, y), Turning.free(), Piece.ALL));
            }
        }
        return new FilledPanels(file.getFileName().toString(), pieces, sheets, layout);
    }

    @Override
    public String toString() {
        return name;
    }
}
