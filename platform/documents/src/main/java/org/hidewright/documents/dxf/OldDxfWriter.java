package org.hidewright.documents.dxf;

import java.util.List;
import org.hidewright.core.paper.DrawingWriter;
import org.osgi.service.component.annotations.Component;

/** DXF of release 12, for machines that read nothing newer: arcs are true, cubic curves are chains of lines. */
@Component
public final class OldDxfWriter implements DrawingWriter {
    @Override
    public String kind() {
        return "dxf-r12";
    }

    @Override
    public String ending() {
        return "-r12.dxf";
    }

    @Override
    public byte[] write(String title, List<Named> drawings) {
        return DxfFile.r12(drawings);
    }
}
