package org.hidewright.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.stream.Collectors;
import org.hidewright.api.calculator.Phrase;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.addons.AddOn;
import org.hidewright.core.addons.AddOnChange;
import org.hidewright.core.addons.AddOnChange.Moved;
import org.hidewright.core.addons.AddOnIndexes;
import org.hidewright.core.addons.Index;
import org.hidewright.core.addons.TakenId;
import org.hidewright.core.store.FileTrouble;

/** Add-ons from indexes, and shops from files: what is asked for is done, and said. */
final class Supplies {
    private final Session session;
    private final CommandTexts texts;

    Supplies(Session session) {
        this.session = session;
        this.texts = session.texts();
    }

    private AddOnIndexes indexes() {
        return session.addOns().get().indexes();
    }

    private Path path(String named) throws BadArgument {
        return FileText.named(named, session.texts());
    }

    void index(String folder) throws FileTrouble, BadArgument {
        Index index = indexes().write(path(folder));
        session.out()
                .println(session.texts()
                        .text(
                                "addons.indexed",
                                index.offers().size(),
                                index.file().toString()));
        session.out().println(session.texts().text("addons.indexed-more", folder));
        if (!index.leftOut().isEmpty()) {
            print(texts.text(
                    "addons.index-left-out",
                    index.leftOut().stream()
                            .map(path -> path.getFileName().toString())
                            .collect(Collectors.joining(", "))));
            index.leftOut().stream()
                    .filter(path -> Files.exists(path.resolve(JarFile.MANIFEST_NAME)))
                    .forEach(path -> print("  " + texts.text("addons.index-pack", path)));
        }
    }

    void offers(String from) throws FileTrouble, BadArgument {
        new AddOnIndexPrinter(session).print(indexes().read(path(from)), from);
    }

    void install(String from, List<String> names, boolean older) throws FileTrouble, BadArgument {
        List<AddOn> before = session.addOns().get().all();
        AddOnChange change = indexes().install(path(from), names, older);
        tell(change, false);
        tellUnfollowed(before, change, false);
    }

    void update(String from, List<String> names) throws FileTrouble, BadArgument {
        List<AddOn> before = session.addOns().get().all();
        AddOnChange change = indexes().update(path(from), names);
        tell(change, false);
        tellUnfollowed(before, change, false);
    }

    void back() throws FileTrouble {
        List<AddOn> before = session.addOns().get().all();
        AddOnChange change = indexes().back();
        print(texts.text("addons.taken-back"));
        tell(change, false);
        List<String> off = change.staysOff(before);
        if (!off.isEmpty()) {
            print(texts.text("addons.stays-off", String.join(", ", off)));
        }
    }

    void apply(String file, boolean only) throws FileTrouble, BadArgument {
        List<AddOn> before = session.addOns().get().all();
        AddOnChange change = session.addOns().get().profiles().apply(path(file), only);
        tell(change, only);
        tellUnfollowed(before, change, only);
    }

    void profile(String file, String from) throws FileTrouble, BadArgument {
        List<String> lacking =
                session.addOns().get().profiles().write(path(file), from.isEmpty() ? List.of() : List.of(path(from)));
        print(texts.text("addons.profile-written", file));
        if (!lacking.isEmpty()) {
            String named = String.join(", ", lacking);
            print(
                    from.isEmpty()
                            ? texts.text("addons.profile-from", named, file)
                            : texts.text("addons.profile-lacks", named, from));
        }
    }

    /**
     * Says what a change did.
     *
     * @param only whether it was only tried
     */
    private void tell(AddOnChange change, boolean only) {
        if (change.isNothing()) {
            print(texts.text("addons.nothing-to-do"));
            return;
        }
        if (change.strange()) {
            print(texts.text("addons.rights"));
            session.out().println();
        }
        change.moved().forEach(this::tell);
        change.turned().forEach(this::tell);
        session.out().println();
        Set<String> gone = new TreeSet<>();
        change.moved().stream()
                .filter(moved -> moved.now().isEmpty())
                .forEach(moved -> gone.addAll(moved.calculators()));
        if (!gone.isEmpty()) {
            print(texts.text("addons.dormant", String.join(", ", gone)));
        }
        TakenId.after(session.addOns().get().all(), change)
                .forEach(taken -> session.tell(session.out(), taken.remark()));
        print(only ? texts.text("addons.only-tried") : texts.text("addons.changed-back"));
    }

    /** Whose texts were read from a folder each time, where somebody writes them: now they are those of a jar. */
    private void tellUnfollowed(List<AddOn> before, AddOnChange change, boolean only) {
        for (AddOn addOn : before) {
            boolean givesWay =
                    change.moved().stream().anyMatch(moved -> moved.id().equals(addOn.id()));
            if (givesWay && !addOn.follows().isEmpty()) {
                print(
                        only
                                ? texts.text("addons.would-unfollow", addOn.id(), addOn.follows())
                                : texts.text("addons.unfollowed", addOn.id(), addOn.follows()));
            }
        }
    }

    private void tell(Moved moved) {
        tell(moved.words());
        if (!moved.now().isEmpty() && !moved.calculators().isEmpty()) {
            session.out()
                    .println("    "
                            + session.texts().text("addons.calculators", String.join(", ", moved.calculators())));
        }
    }

    private void tell(Phrase words) {
        print(session.wording().phrase(CoreTexts.TEXTS, words));
    }

    private void print(String line) {
        session.out().println(line);
    }
}
