package org.hidewright.documents.svg;

import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import org.hidewright.core.json.Place;
import org.hidewright.core.outline.DrawingReader;
import org.hidewright.core.outline.OutlineNotices;
import org.hidewright.core.outline.ReadDrawing;
import org.hidewright.core.store.FileTrouble;
import org.osgi.service.component.annotations.Component;

/** Reads the lines of an SVG (W3C Recommendation 1.1). What is declared at its head or lies in other files is not looked at. */
@Component
public final class SvgReader implements DrawingReader {
    private static final Pattern ENCODING = Pattern.compile("^<\\?xml[^>]*\\sencoding\\s*=\\s*[\"']([^\"']+)[\"']");
    /** The declaration of an encoding stands in as many bytes. */
    private static final int HEAD = 200;

    @Override
    public String ending() {
        return ".svg";
    }

    @Override
    public ReadDrawing read(byte[] file) throws FileTrouble {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        try {
            return new SvgLines(factory.createXMLStreamReader(new StringReader(text(file)))).read();
        } catch (XMLStreamException e) {
            throw e.getLocation() == null
                    ? noSvg(1, 1)
                    : noSvg(e.getLocation().getLineNumber(), e.getLocation().getColumnNumber());
        }
    }

    private static FileTrouble noSvg(int line, int column) {
        return OutlineNotices.trouble(OutlineNotices.NO_SVG.with(), new Place(Math.max(1, line), Math.max(1, column)));
    }

    /** Decoded here, since the parser of the JDK prints a byte that does not fit its encoding past everybody. */
    private static String text(byte[] file) throws FileTrouble {
        ByteBuffer bytes = ByteBuffer.wrap(file);
        CharBuffer text = CharBuffer.allocate(file.length + 1); // no encoding makes more of them
        if (encoding(file).newDecoder().decode(bytes, text, true).isError()) {
            String sound = text.flip().toString();
            throw noSvg((int) sound.lines().count(), 1);
        }
        String decoded = text.flip().toString();
        return decoded.startsWith("\ufeff") ? decoded.substring(1) : decoded;
    }

    private static Charset encoding(byte[] file) throws FileTrouble {
        boolean wide = file.length > 1 && (file[0] & 0xff) >= 0xfe && (file[1] & 0xff) >= 0xfe;
        Matcher declared =
                ENCODING.matcher(new String(file, 0, Math.min(HEAD, file.length), StandardCharsets.ISO_8859_1));
        try {
            return wide
                    ? StandardCharsets.UTF_16
                    : declared.find() ? Charset.forName(declared.group(1)) : StandardCharsets.UTF_8;
        } catch (IllegalCharsetNameException | UnsupportedCharsetException e) {
            throw noSvg(1, 1);
        }
    }
}
