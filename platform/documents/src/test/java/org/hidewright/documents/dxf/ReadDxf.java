package org.hidewright.documents.dxf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.hidewright.documents.OutsideTool;

/** A DXF file as ezdxf reads it. */
record ReadDxf(List<List<String>> records) {
    /** What ezdxf reads of the bytes; its Python is Debian's. */
    static ReadDxf of(byte[] dxf) {
        try (InputStream script = ReadDxf.class.getResourceAsStream("read_dxf.py")) {
            String program = new String(script.readAllBytes(), StandardCharsets.UTF_8);
            String said = new String(
                    OutsideTool.runOn(dxf, ".dxf", "/usr/bin/python3", "-c", program, "FILE"), StandardCharsets.UTF_8);
            return new ReadDxf(
                    said.lines().map(line -> Arrays.asList(line.split(" "))).toList());
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
    }

    /** The words after the name of each record of a name. */
    List<List<String>> of(String name) {
        return records.stream()
                .filter(words -> words.get(0).equals(name))
                .map(words -> words.subList(1, words.size()))
                .toList();
    }

    /** The numbers of each entity of a kind on a layer. */
    List<double[]> on(String kind, String layer) {
        return of(kind).stream()
                .filter(words -> words.get(0).equals(layer))
                .map(words ->
                        words.stream().skip(1).mapToDouble(Double::parseDouble).toArray())
                .toList();
    }
}
