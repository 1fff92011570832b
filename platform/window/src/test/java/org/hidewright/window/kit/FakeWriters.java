package org.hidewright.window.kit;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hidewright.core.paper.DrawingWriter;
import org.hidewright.core.paper.PagePictures;
import org.hidewright.window.papers.Writers;

/** Writers that note what they were given: a document is its title, and has as many pages as sections. */
public final class FakeWriters {
    private FakeWriters() {}

    public static Writers all() {
        return new Writers(
                Optional.of((document, paper) -> ("%" + document.title() + "%"
                                + "x".repeat(document.sections().size()))
                        .getBytes(StandardCharsets.UTF_8)),
                Optional.of(rows -> rows.size() + " rows"),
                List.of(new DrawingWriter() {
                    @Override
                    public String kind() {
                        return "svg";
                    }

                    @Override
                    public String ending() {
                        return ".svg";
                    }

                    @Override
                    public byte[] write(String title, List<Named> drawings) {
                        return title.getBytes(StandardCharsets.UTF_8);
                    }
                }),
                Optional.of(new PagePictures() {
                    @Override
                    public int pages(byte[] pdf) {
                        return Math.max(1, (int) new String(pdf, StandardCharsets.UTF_8)
                                .chars()
                                .filter(c -> c == 'x')
                                .count());
                    }

                    @Override
                    public Picture picture(byte[] pdf, int page, double pixelsPerMm) {
                        int width = (int) (210 * pixelsPerMm);
                        int height = (int) (297 * pixelsPerMm);
                        int[] pixels = new int[width * height];
                        Arrays.fill(pixels, 0xFFFFFF - page);
                        return new Picture(width, height, pixels);
                    }
                }));
    }
}
