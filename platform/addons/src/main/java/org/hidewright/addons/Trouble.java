package org.hidewright.addons;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.hidewright.api.calculator.Notice;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.addons.AddOnNotices;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.store.WriteFault;
import org.hidewright.core.wording.Remark;

/** What goes wrong with add-ons, as the maker is told it. */
final class Trouble {
    private Trouble() {}

    static FileTrouble of(Notice notice) {
        return of(notice, null);
    }

    private static FileTrouble of(Notice notice, IOException cause) {
        return new FileTrouble(List.of(Remark.of(notice, CoreTexts.TEXTS)), cause);
    }

    static FileTrouble notRead(Path file, IOException cause) {
        return of(AddOnNotices.ADD_ON_NOT_READ.with(file.toString(), WriteFault.reason(cause)), cause);
    }

    static FileTrouble notChanged(Path file, IOException cause) {
        return of(AddOnNotices.ADD_ON_NOT_CHANGED.with(file.toString(), words(cause)), cause);
    }

    private static Object words(IOException cause) {
        WriteFault fault = WriteFault.of(cause);
        return fault == WriteFault.OTHER
                ? WriteFault.reason(cause)
                : Phrase.of("write-" + fault.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }
}
