package org.hidewright.command;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hidewright.core.window.ProjectWindow;
import org.hidewright.core.window.ProjectWindow.Opening;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** Shows a project in a window. */
final class WindowCommand implements Subcommand {
    static final String NAME = "window";
    private static final String PICTURES = "--pictures";

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public void describe(CommandSpec spec, CommandTexts texts) {
        spec.addPositional(PositionalParamSpec.builder()
                .paramLabel("PROJECT")
                .type(String.class)
                .arity("0..1")
                .description(texts.text("window.project"))
                .build());
        spec.addOption(OptionSpec.builder(PICTURES)
                .paramLabel("FOLDER")
                .type(String.class)
                .description(texts.text("window.pictures"))
                .build());
        WorkshopOption.describe(spec, texts);
    }

    @Override
    public int run(ParseResult arguments, Session session) throws BadArgument {
        if (!hasScreen(System.getProperty("os.name", ""), System.getenv())) {
            throw new BadArgument(session.texts().text("trouble.no-screen"));
        }
        ProjectWindow window = session.window()
                .get()
                .orElseThrow(() -> new BadArgument(session.texts().text("trouble.no-window")));
        return window.open(new Opening(
                file(arguments.matchedPositionalValue(0, (String) null), session),
                file(arguments.matchedOptionValue(WorkshopOption.NAME, (String) null), session),
                session.wording().language(),
                SharedOptions.units(arguments, session),
                file(arguments.matchedOptionValue(PICTURES, (String) null), session)));
    }

    private static Optional<Path> file(String name, Session session) throws BadArgument {
        return name == null ? Optional.empty() : Optional.of(FileText.named(name, session.texts()));
    }

    /** Whether this run could show a window. */
    static boolean isPossible(Session session) {
        return hasScreen(System.getProperty("os.name", ""), System.getenv())
                && session.window().get().isPresent();
    }

    /** On Linux and its kin a screen is named by the environment, as X.Org and Wayland have it; elsewhere there is one. */
    static boolean hasScreen(String system, Map<String, String> environment) {
        String name = system.toLowerCase(Locale.ROOT);
        return name.startsWith("windows")
                || name.startsWith("mac")
                || !environment.getOrDefault("DISPLAY", "").isEmpty()
                || !environment.getOrDefault("WAYLAND_DISPLAY", "").isEmpty();
    }
}
