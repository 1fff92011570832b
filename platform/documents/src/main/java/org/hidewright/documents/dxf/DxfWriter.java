package org.hidewright.documents.dxf;

import java.util.List;
import org.hidewright.core.paper.DrawingWriter;
import org.osgi.service.component.annotations.Component;

/** DXF of release 2000: true arcs and splines, a layer for each kind of line. */
@Component
public final class DxfWriter implements DrawingWriter {
    @Override
    public String kind() {
        return "dxf";
    }

    @Override
    public String ending() {
        return ".dxf";
    }

    @Override
    public byte[] write(String title, List<Named> drawings) {
        return DxfFile.r2000(drawings);
    }
}
