package org.hidewright.distribution;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/** A zip file put together byte by byte, since the tools of the JDK refuse what nobody should write. */
final class ZipBytes {
    private static final int LOCAL = 0x04034b50;
    private static final int CENTRAL = 0x02014b50;
    private static final int END = 0x06054b50;
    private static final int VERSION = 20;
    /** Made by Unix, so that the kind of file is read off the attributes. */
    private static final int UNIX = 3 << 8 | VERSION;

    private static final int NAMES_ARE_UTF_8 = 1 << 11;
    private static final int LOCAL_LENGTH = 30;
    private static final int CENTRAL_LENGTH = 46;
    private static final int END_LENGTH = 22;
    /** First day that can be told, 1980-01-01. */
    private static final int NO_TIME = 1 << 21 | 1 << 16;

    private static final int SYMBOLIC_LINK = 0120777;
    private static final int PLAIN = 0100644;

    private final List<Part> parts = new ArrayList<>();

    /** One file in it. */
    private record Part(String name, byte[] content, int crc, int mode) {}

    /** The files of a jar as they are. */
    static ZipBytes of(byte[] jar) {
        ZipBytes zip = new ZipBytes();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(jar))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                zip.with(entry.getName(), in.readAllBytes());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return zip;
    }

    /** One more, whatever it is called and even where there is one of that name. */
    ZipBytes with(String name, byte[] content) {
        parts.add(new Part(name, content, crc(content), PLAIN));
        return this;
    }

    ZipBytes with(String name, String content) {
        return with(name, content.getBytes(StandardCharsets.UTF_8));
    }

    /** What unpacks as a link where a tool believes it. */
    ZipBytes link(String name, String to) {
        byte[] target = to.getBytes(StandardCharsets.UTF_8);
        parts.add(new Part(name, target, crc(target), SYMBOLIC_LINK));
        return this;
    }

    ZipBytes without(String name) {
        if (!parts.removeIf(part -> part.name().equals(name))) {
            throw new IllegalArgumentException(name);
        }
        return this;
    }

    /** Another content for a file that is there. */
    ZipBytes changed(String name, byte[] content) {
        return without(name).with(name, content);
    }

    byte[] content(String name) {
        return parts.stream()
                .filter(part -> part.name().equals(name))
                .findFirst()
                .orElseThrow()
                .content();
    }

    /** A checksum that its content does not have. */
    ZipBytes wrongSum(String name) {
        parts.replaceAll(part ->
                part.name().equals(name) ? new Part(part.name(), part.content(), part.crc() ^ 1, part.mode()) : part);
        return this;
    }

    byte[] bytes() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream directory = new ByteArrayOutputStream();
        for (Part part : parts) {
            byte[] name = part.name().getBytes(StandardCharsets.UTF_8);
            byte[] packed = deflated(part.content());
            int at = out.size();
            ByteBuffer about = buffer(LOCAL_LENGTH - 4)
                    .putShort((short) VERSION)
                    .putShort((short) NAMES_ARE_UTF_8)
                    .putShort((short) ZipEntry.DEFLATED)
                    .putInt(NO_TIME)
                    .putInt(part.crc())
                    .putInt(packed.length)
                    .putInt(part.content().length)
                    .putShort((short) name.length)
                    .putShort((short) 0);
            out.writeBytes(buffer(4).putInt(LOCAL).array());
            out.writeBytes(about.array());
            out.writeBytes(name);
            out.writeBytes(packed);
            directory.writeBytes(buffer(CENTRAL_LENGTH)
                    .putInt(CENTRAL)
                    .putShort((short) UNIX)
                    .put(about.array())
                    .position(CENTRAL_LENGTH - 8)
                    .putInt(part.mode() << 16)
                    .putInt(at)
                    .array());
            directory.writeBytes(name);
        }
        int at = out.size();
        out.writeBytes(directory.toByteArray());
        return whole(out, directory.size(), at);
    }

    private byte[] whole(ByteArrayOutputStream out, int length, int at) {
        int count = parts.size();
        out.writeBytes(buffer(END_LENGTH)
                .putInt(END)
                .putInt(0)
                .putShort((short) count)
                .putShort((short) count)
                .putInt(length)
                .putInt(at)
                .array());
        return out.toByteArray();
    }

    private static ByteBuffer buffer(int length) {
        return ByteBuffer.allocate(length).order(ByteOrder.LITTLE_ENDIAN);
    }

    private static int crc(byte[] content) {
        CRC32 sum = new CRC32();
        sum.update(content);
        return (int) sum.getValue();
    }

    private static byte[] deflated(byte[] content) {
        Deflater deflater = new Deflater(Deflater.BEST_SPEED, true);
        try {
            deflater.setInput(content);
            deflater.finish();
            ByteArrayOutputStream packed = new ByteArrayOutputStream();
            byte[] some = new byte[8192];
            while (!deflater.finished()) {
                packed.write(some, 0, deflater.deflate(some));
            }
            return packed.toByteArray();
        } finally {
            deflater.end();
        }
    }
}
