package org.hidewright.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Stream;
import org.hidewright.core.packet.PacketFolder;
import org.hidewright.core.packet.PacketTrouble;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Where a packet goes: what is in its way there, what is not written over, and what it comes among. */
class PacketPlaceTest extends MakeRun {
    @Test
    void aFolderThatCannotBeWrittenIsTwo() throws Exception {
        Path file = Files.createFile(folder.resolve("out"));
        assertEquals(2, make(project("", slip("a", QUESTIONS)), "--language=en"));
        assertTrue(terminal.err.startsWith(file + " is a file and stands in the way of the folder."), terminal.err);
        assertTrue(Files.isRegularFile(file));
        Files.delete(file);
        Path data = Files.createDirectories(folder.resolve("out/deep/job-card.json"));
        assertEquals(2, make(project("", slip("a", QUESTIONS)), "--language=en"));
        assertTrue(terminal.err.startsWith(data + " is a folder and stands in the way of the file."), terminal.err);
        assertEquals(2, terminal.run("make", project("", slip("a", QUESTIONS)), "--into", "a\0b", "--language=en"));
        assertTrue(terminal.err.contains("could not be written"), terminal.err);
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void aFullDiskIsToldAsSuch() {
        IOException full = assertThrows(IOException.class, () -> Files.write(Path.of("/dev/full"), new byte[1]));
        assertEquals(
                "out could not be written: the disk is full. Make room on it, or name a folder on another disk with"
                        + " --into.",
                PacketPapers.words(
                        PacketTrouble.unwritten(Path.of("out"), full),
                        new CommandTexts(new Wording(Locale.ENGLISH, UnitSystem.METRIC))));
    }

    @Test
    void whatCannotBeWrittenSaysWhy() {
        Path path = Path.of("out");
        CommandTexts texts = new CommandTexts(new Wording(Locale.ENGLISH, UnitSystem.METRIC));
        assertEquals(
                "out could not be written: you may not write there. Check the permissions of the folder, or name another"
                        + " with --into.",
                PacketPapers.words(PacketTrouble.unwritten(path, new AccessDeniedException("out")), texts));
        assertEquals(
                PacketPapers.words(PacketTrouble.unwritten(path, new AccessDeniedException("out")), texts),
                PacketPapers.words(
                        PacketTrouble.unwritten(path, new FileSystemException("out", null, "Read-only file system")),
                        texts));
        assertEquals(
                "out could not be written: there is no folder up, and none can be made there. Name another folder with"
                        + " --into.",
                PacketPapers.words(PacketTrouble.unwritten(path, new NoSuchFileException("up")), texts));
        assertEquals(
                "out could not be written: File name too long. Name another folder with --into.",
                PacketPapers.words(
                        PacketTrouble.unwritten(path, new FileSystemException("out", null, "File name too long")),
                        texts));
    }

    @Test
    void thePacketOfAnotherProjectIsNotWrittenOverUnasked() throws Exception {
        assertEquals(0, make(project("", slip("a", QUESTIONS))));
        assertEquals(0, make(project("", slip("a", QUESTIONS.replace("2 mm", "3 mm")))), "its own packet is renewed");
        Path data = folder.resolve("out/deep/job-card.json");
        String before = Files.readString(data);
        String other = project("", slip("a", QUESTIONS)).replace("project.json", "other.json");
        Files.writeString(
                Path.of(other), Files.readString(folder.resolve("project.json")).replace("\"Kit\"", "\"Bag\""));
        assertEquals(2, make(other, "--language=en"));
        assertEquals(
                folder.resolve("out/deep")
                        + " holds the packet of another project, “Kit”. Name another folder with --into, or none, for one of its own in out/; or add --replace.\n",
                terminal.err);
        assertEquals(before, Files.readString(data));
        assertEquals(0, make(other, "--replace"));
        assertTrue(Files.readString(data).contains("\"project\": \"Bag\""));
        Files.writeString(data, "mine");
        assertEquals(2, make(other, "--language=en"));
        assertTrue(terminal.err.startsWith(data + " is not of a packet."), terminal.err);
        assertEquals("mine", Files.readString(data));
    }

    @ParameterizedTest
    @ValueSource(strings = {"job-card.pdf", "job-card.csv"})
    void pagesThatAreOfNoPacketAreNotWrittenOverUnasked(String name) throws Exception {
        Path mine = Files.createDirectories(folder.resolve("out/deep")).resolve(name);
        Files.writeString(mine, "mine");
        String project = project("", slip("a", QUESTIONS));
        assertEquals(2, make(project, "--language=en"));
        assertTrue(terminal.err.startsWith(mine + " is not of a packet."), terminal.err);
        assertEquals("mine", Files.readString(mine));
        assertEquals(0, make(project, "--replace"));
    }

    @Test
    void aFileOfThePacketThatHasASecondNameIsReplacedAndTheOtherLeft() throws Exception {
        String project = project("", slip("a", QUESTIONS));
        Path out = Files.createDirectories(folder.resolve("out/deep"));
        Files.createLink(out.resolve("job-card.csv"), Path.of(project));
        String before = Files.readString(Path.of(project));
        assertEquals(0, make(project, "--replace"));
        assertEquals(before, Files.readString(Path.of(project)));
        try (Stream<Path> files = Files.list(out)) {
            assertEquals(3, files.count(), "nothing half-written stays behind");
        }
    }

    @ParameterizedTest
    @CsvSource({"tools/strap.json,out/strap", "strap,out/strap", ".json,out/.json", "a.b.json,out/a.b"})
    void withoutAFolderAPacketGoesIntoOneCalledLikeItsProjectFile(String file, String into) {
        assertEquals(into, PacketFolder.usual(file));
    }

    @Test
    void amongOtherThingsItIsSaidHowThePacketGetsAFolderOfItsOwn() throws Exception {
        Path out = Files.createDirectories(folder.resolve("out/deep"));
        Files.writeString(out.resolve(".hidden"), "of the desktop");
        String project = project("", slip("a", QUESTIONS));
        assertEquals(0, make(project, "--language=en"));
        assertEquals("", terminal.err, "nothing else is to be seen there");
        assertEquals(0, make(project, "--language=en"));
        assertEquals("", terminal.err, "nor is its own packet");
        Files.delete(out.resolve("job-card.json"));
        Files.writeString(out.resolve("sketch.png"), "mine");
        assertEquals(0, make(project, "--replace", "--language=en"));
        assertEquals(
                "The packet lies among other things in " + out + ". With --into " + out.resolve("project")
                        + " it has a folder of its own.\n",
                terminal.err);
        assertTrue(terminal.out.startsWith(out.resolve("job-card.pdf") + "\n"), "it lies where it was asked for");
        assertEquals(0, make(project, "--language=en"));
        assertEquals("", terminal.err, "it is told once");
    }
}
