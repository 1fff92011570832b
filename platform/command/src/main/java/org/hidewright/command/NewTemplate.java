package org.hidewright.command;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.jar.JarFile;
import java.util.regex.Pattern;
import org.hidewright.core.template.TemplateFiles;

/** Writes a template that works, as a folder with a manifest and one text, for a maker to change. */
final class NewTemplate {
    private static final Pattern ID = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*");

    private final Session session;

    NewTemplate(Session session) {
        this.session = session;
    }

    int run(String folder) throws BadArgument {
        if (folder.isEmpty()) {
            throw new BadArgument(session.texts().text("new.template-name"));
        }
        Path at = FileText.named(folder, session.texts());
        String id = String.valueOf(at.getFileName());
        if (!ID.matcher(id).matches()) {
            throw new BadArgument(session.texts().text("new.template-bad-name", id));
        } else if (session.catalogue().ids().contains(id)) {
            throw new BadArgument(session.texts().text("new.template-taken", id));
        }
        try {
            if (Files.exists(at)) {
                throw new FileAlreadyExistsException(folder);
            }
            Path manifest = at.resolve(JarFile.MANIFEST_NAME);
            Files.createDirectories(manifest.getParent());
            Files.writeString(manifest, manifest(id));
            Files.writeString(
                    at.resolve(id + ".json"), start().replace("NAME", id).replace("TITLE", title(id)));
        } catch (FileAlreadyExistsException e) {
            throw new BadArgument(session.texts().text("new.template-there", folder));
        } catch (IOException e) {
            throw new BadArgument(session.texts().text("new.not-written", folder, String.valueOf(e.getMessage())));
        }
        session.out().println(session.texts().text("new.template-done", folder, id));
        session.out().println("  " + session.texts().text("new.template-install", folder));
        session.out().println("  " + session.texts().text("new.template-work", id));
        session.out().println("  " + session.texts().text("new.template-project", id));
        return ExitCode.DONE;
    }

    private static String manifest(String id) {
        return String.join(
                        "\n",
                        "Manifest-Version: 1.0",
                        "Bundle-ManifestVersion: 2",
                        "Bundle-SymbolicName: workshop." + id,
                        "Bundle-Name: " + title(id),
                        "Bundle-Version: 0.1.0",
                        TemplateFiles.HEADER + ": " + id + ".json")
                + "\n";
    }

    private static String title(String id) {
        return Character.toUpperCase(id.charAt(0)) + id.substring(1).replace('-', ' ');
    }

    private static String start() throws IOException {
        try (InputStream in = NewTemplate.class.getResourceAsStream("starting-template.json")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
