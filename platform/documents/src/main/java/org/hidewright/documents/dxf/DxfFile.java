package org.hidewright.documents.dxf;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hidewright.api.drawing.Box;
import org.hidewright.api.drawing.Role;
import org.hidewright.core.paper.DrawingWriter.Named;
import org.hidewright.documents.ArrowLines;

/** The frame round the entities that a release wants. */
final class DxfFile {
    private static final int MILLIMETRES = 4;

    private final DxfTags tags = new DxfTags();
    private final List<Named> drawings;
    private final List<Role> layers;

    private DxfFile(List<Named> drawings) {
        this.drawings = drawings;
        this.layers = Arrays.stream(Role.values())
                .filter(role -> drawings.stream()
                        .flatMap(named -> named.drawing().shapes().stream())
                        .anyMatch(shape -> shape.role() == role))
                .toList();
    }

    /** Release 12: no handles, no splines, no unit. */
    static byte[] r12(List<Named> drawings) {
        DxfFile file = new DxfFile(drawings);
        file.tags.add(999, "millimetres");
        file.section("HEADER");
        file.tags.add(9, "$ACADVER").add(1, "AC1009");
        file.tags.add(9, "$DWGCODEPAGE").add(3, "ANSI_1252");
        file.extents();
        file.endSection();
        file.section("TABLES");
        file.oldTable("LTYPE", 1);
        file.oldRecord("LTYPE", "CONTINUOUS", 64);
        file.tags.add(3, "Solid line").add(72, 65).add(73, 0).add(40, 0.0);
        file.tags.add(0, "ENDTAB");
        file.oldTable("LAYER", file.layers.size() + 1);
        file.oldRecord("LAYER", "0", 0);
        file.tags.add(62, 7).add(6, "CONTINUOUS");
        for (Role role : file.layers) {
            file.oldRecord("LAYER", DxfLayer.name(role), 0);
            file.tags.add(62, DxfLayer.colour(role)).add(6, "CONTINUOUS");
        }
        file.tags.add(0, "ENDTAB");
        file.endSection();
        file.entities(false, "");
        file.tags.add(0, "EOF");
        return file.tags.bytes();
    }

    private void oldTable(String name, int records) {
        tags.add(0, "TABLE").add(2, name).add(70, records);
    }

    private void oldRecord(String type, String name, int flags) {
        tags.add(0, type).add(2, name).add(70, flags);
    }

    /** Release 2000. */
    static byte[] r2000(List<Named> drawings) {
        DxfFile file = new DxfFile(drawings);
        file.header2000();
        file.section("CLASSES");
        file.endSection();
        String modelSpace = file.tables2000();
        file.entities(true, modelSpace);
        file.objects2000();
        file.tags.add(0, "EOF");
        return file.tags.bytes();
    }

    private void header2000() {
        section("HEADER");
        tags.add(9, "$ACADVER").add(1, "AC1015");
        tags.add(9, "$DWGCODEPAGE").add(3, "ANSI_1252");
        tags.add(9, "$INSUNITS").add(70, MILLIMETRES);
        tags.add(9, "$MEASUREMENT").add(70, 1);
        tags.add(9, "$HANDSEED").add(5, "FFFFF");
        extents();
        endSection();
    }

    private void extents() {
        Box box = drawings.stream()
                .map(named -> named.drawing().bounds())
                .reduce(Box::with)
                .orElseThrow();
        tags.add(9, "$EXTMIN").place(10, box.minX(), box.minY());
        tags.add(9, "$EXTMAX").place(10, box.maxX(), box.maxY());
    }

    /** @return handle of the block the entities are in */
    private String tables2000() {
        section("TABLES");
        table("VPORT", List.of());
        String lineTypes = table("LTYPE", List.of("ByBlock", "ByLayer", "Continuous"));
        for (String name : List.of("ByBlock", "ByLayer", "Continuous")) {
            record("LTYPE", lineTypes, "AcDbLinetypeTableRecord", name);
            tags.add(3, "").add(72, 65).add(73, 0).add(40, 0.0);
        }
        tags.add(0, "ENDTAB");
        List<String> names = new ArrayList<>(List.of("0"));
        layers.forEach(role -> names.add(DxfLayer.name(role)));
        String layerTable = table("LAYER", names);
        layer(layerTable, "0", 7);
        layers.forEach(role -> layer(layerTable, DxfLayer.name(role), DxfLayer.colour(role)));
        tags.add(0, "ENDTAB");
        String styles = table("STYLE", List.of("Standard"));
        record("STYLE", styles, "AcDbTextStyleTableRecord", "Standard");
        tags.add(40, 0.0)
                .add(41, 1.0)
                .add(50, 0.0)
                .add(71, 0)
                .add(42, 2.5)
                .add(3, "txt")
                .add(4, "");
        tags.add(0, "ENDTAB");
        table("VIEW", List.of());
        table("UCS", List.of());
        String applications = table("APPID", List.of("ACAD"));
        record("APPID", applications, "AcDbRegAppTableRecord", "ACAD");
        tags.add(0, "ENDTAB");
        dimensionStyles();
        String blocks = table("BLOCK_RECORD", List.of("*Model_Space", "*Paper_Space"));
        String model = record("BLOCK_RECORD", blocks, "AcDbBlockTableRecord", "*Model_Space");
        tags.add(340, "0");
        String paper = record("BLOCK_RECORD", blocks, "AcDbBlockTableRecord", "*Paper_Space");
        tags.add(340, "0");
        tags.add(0, "ENDTAB");
        endSection();
        section("BLOCKS");
        block(model, "*Model_Space");
        block(paper, "*Paper_Space");
        endSection();
        return model;
    }

    /** Starts a table; one without records is ended at once. */
    private String table(String name, List<String> records) {
        String handle = tags.handle();
        tags.add(0, "TABLE")
                .add(2, name)
                .add(5, handle)
                .add(330, "0")
                .add(100, "AcDbSymbolTable")
                .add(70, records.size());
        if (records.isEmpty()) {
            tags.add(0, "ENDTAB");
        }
        return handle;
    }

    private String record(String type, String table, String subclass, String name) {
        String handle = tags.handle();
        tags.add(0, type)
                .add(5, handle)
                .add(330, table)
                .add(100, "AcDbSymbolTableRecord")
                .add(100, subclass)
                .add(2, name);
        if (!type.equals("BLOCK_RECORD")) {
            tags.add(70, 0);
        }
        return handle;
    }

    private void layer(String table, String name, int colour) {
        record("LAYER", table, "AcDbLayerTableRecord", name);
        tags.add(62, colour).add(6, "Continuous");
    }

    private void dimensionStyles() {
        tags.add(0, "TABLE")
                .add(2, "DIMSTYLE")
                .add(5, tags.handle())
                .add(330, "0")
                .add(100, "AcDbSymbolTable")
                .add(70, 0)
                .add(100, "AcDbDimStyleTable")
                .add(0, "ENDTAB");
    }

    private void block(String record, String name) {
        tags.add(0, "BLOCK")
                .add(5, tags.handle())
                .add(330, record)
                .add(100, "AcDbEntity")
                .add(8, "0")
                .add(100, "AcDbBlockBegin")
                .add(2, name)
                .add(70, 0)
                .place(10, 0, 0)
                .add(3, name)
                .add(1, "");
        tags.add(0, "ENDBLK")
                .add(5, tags.handle())
                .add(330, record)
                .add(100, "AcDbEntity")
                .add(8, "0")
                .add(100, "AcDbBlockEnd");
    }

    private void objects2000() {
        section("OBJECTS");
        String root = tags.handle();
        String groups = tags.handle();
        tags.add(0, "DICTIONARY")
                .add(5, root)
                .add(330, "0")
                .add(100, "AcDbDictionary")
                .add(281, 1)
                .add(3, "ACAD_GROUP")
                .add(350, groups);
        tags.add(0, "DICTIONARY")
                .add(5, groups)
                .add(330, root)
                .add(100, "AcDbDictionary")
                .add(281, 1);
        endSection();
    }

    private void section(String name) {
        tags.add(0, "SECTION").add(2, name);
    }

    private void endSection() {
        tags.add(0, "ENDSEC");
    }

    private void entities(boolean splines, String owner) {
        section("ENTITIES");
        DxfEntities entities = new DxfEntities(tags, splines, owner);
        drawings.forEach(named -> ArrowLines.in(named.drawing()).forEach(entities::add));
        endSection();
    }
}
