package org.hidewright.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Programs that share no code with ours and read what we wrote; where one is missing the test fails. */
public final class OutsideTool {
    private OutsideTool() {}

    /** Runs a program with a PDF file; the argument {@code FILE} stands for it. */
    public static byte[] run(byte[] pdf, String... command) {
        return runOn(pdf, ".pdf", command);
    }

    /** What Chromium makes of a page of HTML once its script has run, as text. */
    public static String chromium(String page) {
        return new String(
                runOn(
                        page.getBytes(StandardCharsets.UTF_8),
                        ".html",
                        "chromium",
                        "--headless",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--dump-dom",
                        "FILE"),
                StandardCharsets.UTF_8);
    }

    /** Runs a program with a file whose name ends so; the argument {@code FILE} stands for it. */
    public static byte[] runOn(byte[] bytes, String ending, String... command) {
        try {
            Path file = Files.createTempFile("page", ending);
            File errors = File.createTempFile("page", ".err");
            try {
                Files.write(file, bytes);
                List<String> words = Stream.of(command)
                        .map(word -> word.equals("FILE") ? file.toString() : word)
                        .toList();
                Process process =
                        new ProcessBuilder(words).redirectError(errors).start();
                byte[] output = process.getInputStream().readAllBytes();
                assertEquals(0, process.waitFor(), () -> command[0] + " failed: " + said(errors));
                return output;
            } finally {
                Files.delete(file);
                Files.delete(errors.toPath());
            }
        } catch (IOException missing) {
            throw new UncheckedIOException("install " + command[0] + ", the tests need it", missing);
        } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
        }
    }

    private static String said(File errors) {
        try {
            return Files.readString(errors.toPath());
        } catch (IOException gone) {
            return gone.toString();
        }
    }

    public static String text(byte[] pdf, String... command) {
        return new String(run(pdf, command), StandardCharsets.UTF_8);
    }
}
