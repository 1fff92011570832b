package org.hidewright.window;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.hidewright.core.packet.PacketFolder;
import org.hidewright.core.packet.PacketTrouble;
import org.hidewright.core.packet.PacketWriting;
import org.hidewright.core.packet.Papers;
import org.hidewright.core.paper.Paper;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.WorkedProject;

/** Writes the packet of a project, away from the thread of the window, and says what came of it. */
final class PacketExport {
    private final Workroom room;
    private final Wording wording;

    PacketExport(Workroom room, Wording wording) {
        this.room = room;
        this.wording = wording;
    }

    /**
     * Writes the packet into a folder; into one of its own in that folder where that holds anything else.
     *
     * @param file of the project
     * @param said hears in a sentence how it went, on whatever thread it was
     */
    void write(WorkedProject worked, Path file, Path folder, Consumer<String> said) {
        if (worked.project().slips().isEmpty()) {
            said.accept(room.texts().text("packet.no-slips.help"));
            return;
        }
        room.work().execute(() -> said.accept(written(worked, file, folder)));
    }

    private String written(WorkedProject worked, Path file, Path into) {
        List<Path> files = new ArrayList<>();
        List<String> failed = new ArrayList<>();
        List<String> kept = new ArrayList<>();
        if (room.writers().pdf().isEmpty()) {
            failed.add("PDF");
        }
        Paper paper = Papers.usual(worked.project());
        Papers papers = new Papers(paper, paper, Papers.usual(room.writers().drawings()));
        try {
            PacketFolder folder = PacketFolder.chosen(into, file, worked.project());
            folder.mustBeFreeFor(worked.project());
            new PacketWriting(
                            room.writers().pdf(),
                            room.writers().csv(),
                            room.catalogue().contributors())
                    .write(
                            worked,
                            wording,
                            papers,
                            LocalDate.now(ZoneId.systemDefault()),
                            folder,
                            new PacketWriting.Told() {
                                @Override
                                public void wrote(Path made) {
                                    files.add(made);
                                }

                                @Override
                                public void removed(Path old) {
                                    // nothing of this project makes it any more
                                }

                                @Override
                                public void kept(Path old) {
                                    kept.add(String.valueOf(old.getFileName()));
                                }

                                @Override
                                public void failed(Remark remark) {
                                    failed.add(wording.what(remark));
                                }
                            });
            String done = failed.isEmpty()
                    ? room.texts().text("packet.done.help", folder.path(), files.size())
                    : room.texts().text("packet.parts.help", folder.path(), String.join(" ", failed));
            return kept.isEmpty() ? done : done + " " + room.texts().text("packet.kept.help", String.join(", ", kept));
        } catch (PacketTrouble e) {
            return room.texts()
                    .text("packet." + e.kind().key() + ".help", e.args().toArray());
        }
    }
}
