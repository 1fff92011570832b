package org.hidewright.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hidewright.core.addons.Carried;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.proof.Proof;
import org.hidewright.core.proof.Surroundings;
import org.hidewright.core.proof.TablesProof;
import org.hidewright.core.proof.TemplateProof;
import org.hidewright.core.proof.TranslationProof;
import org.hidewright.core.store.FileTrouble;
import org.hidewright.core.template.TemplateFiles;
import org.hidewright.core.workshop.Tables;

/** Looks the templates and tables over that bundles carry as texts, without installing anything, and tells what their authors have to mend. */
final class AddOnsCheck {
    private final Session session;
    private final CommandTexts texts;
    private boolean sound = true;

    private AddOnsCheck(Session session) {
        this.session = session;
        this.texts = session.texts();
    }

    /** @return 0 where nothing has to be mended */
    static int of(List<String> named, Session session) throws FileTrouble, BadArgument {
        List<Path> files = new ArrayList<>();
        for (String name : named) {
            files.add(FileText.named(name, session.texts()));
        }
        AddOnsCheck check = new AddOnsCheck(session);
        for (Carried carried : session.addOns().get().carried(files)) {
            check.bundle(carried);
        }
        return check.sound ? ExitCode.DONE : ExitCode.REFUSED;
    }

    private void say(String words) {
        session.out().println(words);
    }

    private void bundle(Carried carried) {
        say(carried.id() + " " + carried.version());
        for (String path : carried.missing()) {
            say(texts.text("addons.check-missing", path));
            sound = false;
        }
        // an older version that is installed vouches for nothing; but columns of its code cannot be read off it
        Tables all = session.catalogue().tables();
        Tables installed = carried.code() ? all : all.without(carried.id());
        Tables beside = TablesProof.with(installed, carried.tables().values(), carried.id());
        Map<String, Map<String, String>> says = new HashMap<>();
        carried.templates().forEach((path, text) -> {
            Proof proof = template(path, text, beside);
            says.put(path, proof.says());
            tell(path, proof, texts.text("addons.check-template", proof.asked()));
        });
        carried.properties().forEach((path, text) -> translation(path, text, carried, says));
        carried.tables().forEach((path, text) -> {
            Proof proof = TablesProof.of(text, carried.id(), installed);
            tell(path, proof, texts.text("addons.check-tables", proof.asked()));
        });
        if (carried.code()) {
            say(texts.text("addons.check-code"));
        } else if (carried.templates().isEmpty() && carried.tables().isEmpty()) {
            say(texts.text("addons.check-nothing"));
            sound = false;
        }
    }

    /** A template is called by the name of its file. */
    private Proof template(String path, String text, Tables beside) {
        return TemplateProof.of(
                text,
                TemplateFiles.byId(path).keySet().iterator().next(),
                new Surroundings(id -> session.catalogue().find(id).map(Installed::calculator), beside),
                session.wording());
    }

    /** Of a template that cannot be read nobody knows what it says; messages of code belong to none. */
    private void translation(String path, String text, Carried carried, Map<String, Map<String, String>> says) {
        Optional<String> of = TranslationProof.template(path);
        if (of.filter(says::containsKey).isPresent()) {
            String template = of.get();
            if (!says.get(template).isEmpty()) {
                Proof proof =
                        TranslationProof.of(path, text, carried.templates().get(template), says.get(template));
                tell(path, proof, texts.text("addons.check-translation", proof.asked()));
            }
        } else if (!carried.code()) {
            say("");
            say(texts.text("addons.check-of-none", path));
            sound = false;
        }
    }

    private void tell(String path, Proof proof, String asked) {
        say("");
        say(path);
        proof.remarks().forEach(remark -> session.tell(session.out(), remark));
        say(asked);
        say(proof.sound() ? texts.text("addons.check-sound") : texts.text("addons.check-mend"));
        sound &= proof.sound();
    }
}
