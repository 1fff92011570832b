package org.hidewright.documents.dxf;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hidewright.core.json.Place;
import org.hidewright.core.outline.DrawingReader;
import org.hidewright.core.outline.DrawnLine;
import org.hidewright.core.outline.OutlineNotices;
import org.hidewright.core.outline.ReadDrawing;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.wording.Remark;
import org.hidewright.documents.LeftOut;
import org.osgi.service.component.annotations.Component;

/** Reads the lines of a DXF as text, of whatever release, with the layers they lie on. */
@Component
public final class DxfReader implements DrawingReader {
    /** Millimetres of the units of $INSUNITS (DXF Reference, HEADER section) that a hide may be drawn in. */
    private static final Map<Integer, Double> UNITS =
            Map.of(1, 25.4, 2, 304.8, 4, 1.0, 5, 10.0, 6, 1000.0, 10, 914.4, 14, 100.0);

    private static final String READ_UNITS = "1 (in), 2 (ft), 4 (mm), 5 (cm), 6 (m), 10 (yd), 14 (dm)";
    /** What draws no outline. */
    private static final Set<String> WRITING =
            Set.of("TEXT", "MTEXT", "ATTDEF", "DIMENSION", "LEADER", "POINT", "VIEWPORT", "SEQEND", "VERTEX", "ATTRIB");

    @Override
    public String ending() {
        return ".dxf";
    }

    @Override
    public ReadDrawing read(byte[] file) throws FileTrouble {
        List<DxfRecord> records = DxfText.records(file);
        List<Remark> remarks = new ArrayList<>();
        List<DxfRecord> entities = section("ENTITIES", records);
        DxfLines lines = new DxfLines(unitMm(section("HEADER", records), remarks));
        Set<String> hidden = hidden(section("TABLES", records));
        List<DrawnLine> drawn = new ArrayList<>();
        LeftOut leftOut = new LeftOut();
        for (int i = 0; i < entities.size(); i++) {
            DxfRecord entity = entities.get(i);
            int end = i + 1;
            while (end < entities.size() && entities.get(end).type().equals("VERTEX")) {
                end++;
            }
            boolean shown = entity.whole(60, 0) == 0 && entity.whole(67, 0) == 0 && !hidden.contains(entity.layer());
            if (shown && !WRITING.contains(entity.type())) {
                Optional<DrawnLine> line = lines.of(entity, entities.subList(i + 1, end));
                line.ifPresent(drawn::add);
                if (line.isEmpty()) {
                    leftOut.add(entity.type());
                }
            }
        }
        leftOut.told().ifPresent(remarks::add);
        return new ReadDrawing(Chains.of(drawn), remarks);
    }

    /** The records of a section, the one that begins it among them where it is the header, which has no others. */
    private static List<DxfRecord> section(String name, List<DxfRecord> records) {
        List<DxfRecord> section = new ArrayList<>();
        boolean inside = false;
        for (DxfRecord record : records) {
            boolean begins = record.type().equals("SECTION");
            inside = begins
                    ? record.text(2, "").equals(name)
                    : inside && !record.type().equals("ENDSEC");
            if (inside && (!begins || name.equals("HEADER"))) {
                section.add(record);
            }
        }
        return section;
    }

    private static double unitMm(List<DxfRecord> header, List<Remark> remarks) throws FileTrouble {
        Optional<DxfRecord.Pair> unit = header.stream().findFirst().flatMap(DxfReader::unit);
        int number = unit.isEmpty() ? 0 : (int) unit.get().number("$INSUNITS");
        if (number == 0) {
            remarks.add(OutlineNotices.told(OutlineNotices.MILLIMETRES_TAKEN.with(), null));
            return 1;
        }
        if (!UNITS.containsKey(number)) {
            throw OutlineNotices.trouble(
                    OutlineNotices.DRAWING_UNIT.with(number, READ_UNITS),
                    new Place(unit.get().line(), 1));
        }
        return UNITS.get(number);
    }

    /** The pair behind the name of the variable. */
    private static Optional<DxfRecord.Pair> unit(DxfRecord header) {
        List<DxfRecord.Pair> pairs = header.pairs();
        for (int i = 0; i + 1 < pairs.size(); i++) {
            if (pairs.get(i).code() == 9 && pairs.get(i).value().strip().equals("$INSUNITS")) {
                return Optional.of(pairs.get(i + 1));
            }
        }
        return Optional.empty();
    }

    /** Layers that are turned off or frozen. */
    private static Set<String> hidden(List<DxfRecord> tables) throws FileTrouble {
        Set<String> hidden = new HashSet<>();
        for (DxfRecord record : tables) {
            if (record.type().equals("LAYER") && (record.number(62, 0) < 0 || (record.whole(70, 0) & 1) != 0)) {
                hidden.add(record.words(2, ""));
            }
        }
        return hidden;
    }
}
