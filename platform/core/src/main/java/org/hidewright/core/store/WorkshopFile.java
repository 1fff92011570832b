package org.hidewright.core.store;

import java.nio.file.Path;
import java.util.List;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.workshop.Stock;
import org.hidewright.core.workshop.Workshop;
import org.hidewright.core.workshop.WorkshopReader;

/**
 * Stock with a workshop file.
 *
 * @param stock what can be taken, as far as the file can be read
 * @param remarks what is wrong with the file
 */
public record WorkshopFile(Stock stock, List<Remark> remarks) {
    /**
     * Opens a workshop file.
     *
     * @param tables what can be taken without it
     * @throws FileTrouble if it cannot be read or is no workshop
     */
    public static WorkshopFile open(Path file, Stock tables) throws FileTrouble {
        WorkshopReader.Result read = WorkshopReader.read(TextFile.read(file).text());
        if (read.workshop().isEmpty()) {
            throw new FileTrouble(read.remarks(), null);
        }
        Workshop workshop = read.workshop().get();
        return new WorkshopFile(
                read.remarks().stream().anyMatch(Remark::stops) ? tables.withParts(workshop) : tables.with(workshop),
                read.remarks());
    }
}
