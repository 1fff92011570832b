package org.hidewright.core.packet;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.hidewright.core.catalogue.Contributor;
import org.hidewright.core.jobcard.JobCardJson;
import org.hidewright.core.jobcard.JobCardRows;
import org.hidewright.core.jobcard.Packet;
import org.hidewright.core.paper.CsvWriter;
import org.hidewright.core.paper.PdfWriter;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.Wording;
import org.hidewright.core.work.WorkedProject;
import org.hidewright.core.work.WorkedSlip;

/**
 * Writes the packet of a worked project.
 *
 * @param pdf who writes pages; empty where no bundle does
 * @param csv who writes rows; empty where no bundle does
 * @param contributors who adds documents
 */
public record PacketWriting(Optional<PdfWriter> pdf, Optional<CsvWriter> csv, List<Contributor> contributors) {
    /** Hears of what is written while it is. */
    public interface Told {
        void wrote(Path file);

        /** A page of an earlier packet that nothing makes any more was removed. */
        void removed(Path file);

        /** A page of an earlier packet stays: what made it may be what cannot be worked now. */
        void kept(Path file);

        /** A document could not be made. */
        void failed(Remark remark);
    }

    /**
     * Writes everything that is made into a folder that is free for it.
     *
     * @param whole the project with what it only tries out, which is left out
     * @return whether every part of the packet was written
     * @throws PacketTrouble if a file cannot be written
     */
    public boolean write(
            WorkedProject whole, Wording wording, Papers papers, LocalDate date, PacketFolder folder, Told told)
            throws PacketTrouble {
        WorkedProject worked = whole.toMake();
        folder.make();
        List<Remark> missing = new ArrayList<>();
        Map<String, byte[]> pages = pages(worked, wording, papers, date, remark -> {
            told.failed(remark);
            missing.add(remark);
        });
        List<String> kept = List.of();
        if (pdf.isPresent() && missing.isEmpty() && isWorked(worked)) {
            folder.take(pages.keySet(), told::removed);
        } else {
            kept = folder.takeBeside(pages.keySet(), told::kept);
        }
        for (Map.Entry<String, byte[]> page : pages.entrySet()) {
            told.wrote(folder.save(page.getKey(), page.getValue()));
        }
        told.wrote(folder.save(
                PacketFolder.DATA, utf8(JobCardJson.write(worked, wording, date, List.copyOf(pages.keySet()), kept))));
        if (csv.isPresent()) {
            told.wrote(folder.save(PacketFolder.ROWS, utf8(csv.get().write(JobCardRows.of(worked, wording)))));
        }
        return pdf.isPresent() && csv.isPresent() && missing.isEmpty();
    }

    /** What is turned off, broken or half typed says nothing about which pages it would make. */
    private static boolean isWorked(WorkedProject worked) {
        return worked.slips().values().stream().allMatch(slip -> slip.state() == WorkedSlip.State.WORKED);
    }

    private Map<String, byte[]> pages(
            WorkedProject worked, Wording wording, Papers papers, LocalDate date, Consumer<Remark> failed) {
        Map<String, byte[]> pages = new LinkedHashMap<>();
        Packet packet = new Packet(worked, wording);
        pdf.ifPresent(writer -> packet.documents(date, contributors, failed)
                .forEach((name, document) -> pages.put(name + ".pdf", writer.write(document, papers.of(name)))));
        pages.putAll(papers.files(packet));
        return pages;
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
