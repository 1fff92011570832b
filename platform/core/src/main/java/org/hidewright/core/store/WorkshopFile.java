package org.hidewright.core.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.workshop.Stock;
import org.hidewright.core.workshop.WorkshopReader;
import org.hidewright.core.workshop.WorkshopText;

/**
 * A workshop and the file it was opened from, saved whole or not at all as {@link KeptFile} tells. Immutable; a save gives
 * another one, from which the next save goes on.
 */
public final class WorkshopFile {
    private final KeptFile file;
    private final WorkshopText text;
    private final Stock tables;
    private final List<Remark> putRight;

    private WorkshopFile(KeptFile file, WorkshopText text, Stock tables, List<Remark> putRight) {
        this.file = file;
        this.text = text;
        this.tables = tables;
        this.putRight = putRight;
    }

    /**
     * Opens a workshop file, after putting right what a save that was cut short has left.
     *
     * @param tables what can be taken without it
     * @throws FileTrouble if it cannot be read or is no workshop
     */
    public static WorkshopFile open(Path file, Stock tables) throws FileTrouble {
        KeptFile.Opened opened = KeptFile.open(file, text -> read(text).isPresent());
        WorkshopReader.Result read = WorkshopReader.read(opened.text());
        WorkshopText text = WorkshopText.of(read).orElseThrow(() -> opened.refused(read.remarks()));
        return new WorkshopFile(opened.file(), text, tables, opened.remarks());
    }

    private static Optional<WorkshopText> read(String text) {
        return WorkshopText.of(WorkshopReader.read(text));
    }

    /**
     * Begins a workshop in which nothing is yet.
     *
     * @throws FileTrouble if something is there already, or nothing can be written there
     */
    public static void begin(Path file, String name) throws FileTrouble {
        if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            throw new FileTrouble(StoreNotices.FILE_THERE.with(file.toString()), null);
        }
        try {
            WholeFile.write(file, WorkshopText.begun(name).text().getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new FileTrouble(StoreNotices.NOT_SAVED.with(file.toString(), WriteFault.reason(e)), e);
        }
    }

    /** What can be taken, as far as the file can be read. */
    public Stock stock() {
        return text.stock(tables);
    }

    /** What is wrong with the file, and what was noticed when it was opened or saved. */
    public List<Remark> remarks() {
        List<Remark> all = new ArrayList<>(putRight);
        all.addAll(text.remarks());
        return all;
    }

    public WorkshopText text() {
        return text;
    }

    /** Whether another program has changed the file, or taken it away, since it was opened or saved. */
    public boolean changedMeanwhile() {
        return file.changedMeanwhile();
    }

    /**
     * Saves the workshop as it is now; a text that is the same as what was opened writes nothing.
     *
     * @throws FileTrouble if it was not saved; the remarks say why, and where the text is put when another program has
     *     changed the file or taken it away
     */
    public WorkshopFile save(WorkshopText changed) throws FileTrouble {
        KeptFile.Saved saved = file.save(changed.text(), Disk.REAL);
        return new WorkshopFile(saved.file(), changed, tables, saved.remarks());
    }
}
