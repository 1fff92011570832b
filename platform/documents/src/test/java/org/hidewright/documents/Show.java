package org.hidewright.documents;
import java.nio.file.*;
public final class Show {
    public static void main(String[] a) throws Exception {
        Path d = Path.of(a[0]);
        for (Paper p : Paper.values()) {
            long t=System.nanoTime();
            Files.write(d.resolve("card-" + p + ".pdf"), new org.hidewright.documents.pdf.PdfBoxWriter().write(NeckStrapCard.inEnglish(), p));
            System.out.println((System.nanoTime()-t)/1000000);
            Files.write(d.resolve("long-" + p + ".pdf"), new org.hidewright.documents.pdf.PdfBoxWriter().write(NeckStrapCard.inLongWords(), p));
        }
    }
}
