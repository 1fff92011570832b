package org.hidewright.documents;

import org.hidewright.api.document.Document;
import org.osgi.annotation.versioning.ProviderType;

/** Sets documents on pages. */
@ProviderType
public interface PdfWriter {
    /**
     * A document as a PDF file. The same document on the same paper gives the same bytes, on any day and machine. No text
     * is lost: long ones are wrapped, letters the font has not are shown as an empty box.
     *
     * <p>May be called on any thread.
     */
    byte[] write(Document document, Paper paper);
}
