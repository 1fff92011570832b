package org.hidewright.command;

import java.io.File;
import java.util.Locale;
import java.util.Optional;
import org.hidewright.core.wording.LanguageTag;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** What several commands take: language and units, where the maker’s settings lie, the project they are about. */
final class SharedOptions {
    static final String LANGUAGE = "--language";
    static final String UNITS = "--units";
    private static final String SETTINGS = "--settings";

    private SharedOptions() {}

    static void describe(CommandSpec spec, CommandTexts texts) {
        spec.addOption(OptionSpec.builder(UNITS)
                .paramLabel("mm|in")
                .type(String.class)
                .description(texts.text("option.units"))
                .build());
        spec.addOption(OptionSpec.builder(LANGUAGE)
                .paramLabel("TAG")
                .type(String.class)
                .description(texts.text("option.language"))
                .build());
        // These two are the launcher's to read, since they say what it starts; here they only have to be known.
        spec.addOption(OptionSpec.builder(SETTINGS)
                .paramLabel("FOLDER")
                .type(String.class)
                .description(texts.text("option.settings"))
                .build());
        spec.addOption(flag("--without-addons", texts.text("option.without-addons")));
        spec.addOption(OptionSpec.builder("-h", "--help")
                .usageHelp(true)
                .description(texts.text("option.help"))
                .build());
    }

    /** The project file that a command is about, which has to be named first. */
    static PositionalParamSpec project(String description) {
        return PositionalParamSpec.builder()
                .index("0")
                .paramLabel("PROJECT")
                .type(String.class)
                .required(true)
                .arity("1")
                .description(description)
                .build();
    }

    /** An option that takes nothing after it. */
    static OptionSpec flag(String name, String description) {
        return OptionSpec.builder(name)
                .type(boolean.class)
                .arity("0")
                .description(description)
                .build();
    }

    /**
     * The language named by an option anywhere in the arguments, so that even help and trouble are in it.
     *
     * @throws BadArgument if it is no language tag
     */
    static Locale language(String[] arguments, CommandTexts texts) throws BadArgument {
        for (int i = 0; i < arguments.length; i++) {
            if (arguments[i].equals(LANGUAGE) && i + 1 < arguments.length) {
                return language(arguments[i + 1], texts);
            }
            if (arguments[i].startsWith(LANGUAGE + "=")) {
                return language(arguments[i].substring(LANGUAGE.length() + 1), texts);
            }
        }
        return Locale.getDefault();
    }

    private static Locale language(String tag, CommandTexts texts) throws BadArgument {
        return LanguageTag.of(tag).orElseThrow(() -> new BadArgument(texts.text("trouble.language", tag)));
    }

    /** @throws BadArgument if what is named as the folder of settings is a file */
    static void checkSettings(ParseResult arguments, CommandTexts texts) throws BadArgument {
        String settings = arguments.matchedOptionValue(SETTINGS, "");
        if (new File(settings).isFile()) {
            throw new BadArgument(texts.text("trouble.settings-file", settings));
        }
    }

    /**
     * The wording asked for: by option, else as the project says, else as the system has it.
     *
     * @param projectLanguage language tag in the project, if any
     * @param projectUnits unit system in the project, if any
     * @throws BadArgument if an option has a value that is none
     */
    static Wording wording(
            ParseResult arguments, Session session, Optional<String> projectLanguage, Optional<String> projectUnits)
            throws BadArgument {
        Optional<Locale> language =
                arguments.hasMatchedOption(LANGUAGE) ? Optional.empty() : projectLanguage.flatMap(LanguageTag::of);
        UnitSystem system = units(arguments, session)
                .or(() -> projectUnits.flatMap(UnitSystem::of))
                .orElse(UnitSystem.METRIC);
        return new Wording(language.orElse(session.wording().language()), system);
    }

    /**
     * The units asked for by option; empty where none are.
     *
     * @throws BadArgument if they are none
     */
    static Optional<UnitSystem> units(ParseResult arguments, Session session) throws BadArgument {
        String units = arguments.matchedOptionValue(UNITS, "");
        Optional<UnitSystem> system = UnitSystem.of(units);
        if (arguments.hasMatchedOption(UNITS) && system.isEmpty()) {
            throw new BadArgument(session.texts().text("trouble.units", units));
        }
        return system;
    }
}
