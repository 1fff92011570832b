package org.hidewright.documents.dxf;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.hidewright.core.json.Place;
import org.hidewright.core.outline.OutlineNotices;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.documents.dxf.DxfRecord.Pair;

/** A DXF as text, parted into its records. */
final class DxfText {
    /** Of files older than release 2007, and of all letters but those of layers without meaning here. */
    private static final Charset OLD = Charset.forName("windows-1252");

    private static final Pattern LINE_END = Pattern.compile("\r\n|\r|\n");
    private static final int COMMENT = 999;

    private DxfText() {}

    /** @throws FileTrouble if it is no such text, or has no end */
    static List<DxfRecord> records(byte[] file) throws FileTrouble {
        String[] lines = LINE_END.split(decoded(file), -1);
        List<DxfRecord> records = new ArrayList<>();
        List<Pair> pairs = new ArrayList<>();
        for (int i = 0; i + 1 < lines.length; i += 2) {
            Pair pair = new Pair(code(lines[i], i + 1), lines[i + 1], i + 2);
            if (pair.code() == 0) {
                pairs = new ArrayList<>();
                records.add(new DxfRecord(pair.value().strip(), pair.line(), pairs));
                if (pair.value().strip().equals("EOF")) {
                    return records;
                }
            } else if (pair.code() != COMMENT && records.isEmpty()) {
                throw noDxf(i + 1);
            } else if (pair.code() != COMMENT) {
                pairs.add(pair);
            }
        }
        throw noDxf(lines.length);
    }

    private static FileTrouble noDxf(int line) {
        return OutlineNotices.trouble(OutlineNotices.NO_DXF.with(), new Place(line, 1));
    }

    private static int code(String text, int line) throws FileTrouble {
        try {
            return Integer.parseInt(text.strip());
        } catch (NumberFormatException e) {
            throw noDxf(line);
        }
    }

    private static String decoded(byte[] file) {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(file))
                    .toString();
            return text.startsWith("\ufeff") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            return new String(file, OLD);
        }
    }
}
