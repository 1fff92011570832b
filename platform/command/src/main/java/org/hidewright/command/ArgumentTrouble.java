package org.hidewright.command;

import java.util.ArrayList;
import java.util.List;
import org.hidewright.core.Nearest;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Arguments that do not fit a command, in our own words and the language asked for. */
final class ArgumentTrouble {
    private final CommandSpec spec;
    private final CommandTexts texts;

    ArgumentTrouble(CommandSpec spec, CommandTexts texts) {
        this.spec = spec;
        this.texts = texts;
    }

    String words(ParameterException e, List<String> arguments) {
        if (e instanceof UnmatchedArgumentException unmatched) {
            String first = unmatched.getUnmatched().get(0);
            return unmatched.isUnknownOption() ? unknown(first) : texts.text("trouble.left-over", first);
        } else if (e instanceof MissingParameterException missing
                && !missing.getMissing().isEmpty()) {
            return missing(missing.getMissing());
        } else if (e instanceof OverwrittenOptionException twice && twice.getOverwritten() != null) {
            return texts.text("trouble.option-twice", name(twice.getOverwritten()));
        }
        return arguments.stream()
                .filter(this::joinedToNothing)
                .findFirst()
                .map(argument -> texts.text("trouble.option-alone", argument.split("=", 2)[0]))
                .orElseGet(() -> texts.text("trouble.arguments"));
    }

    /** An option that takes nothing and was given something all the same. */
    private boolean joinedToNothing(String argument) {
        OptionSpec option = spec.optionsMap().get(argument.split("=", 2)[0]);
        return argument.contains("=") && option != null && option.arity().max() == 0;
    }

    private String unknown(String option) {
        String name = option.split("=", 2)[0];
        List<String> known = new ArrayList<>(spec.optionsMap().keySet());
        known.removeIf(candidate -> !candidate.startsWith("--"));
        return Nearest.to(name, known)
                .map(near -> texts.text("trouble.option-nearest", name, near))
                .orElseGet(() -> texts.text("trouble.option", name, String.join(", ", known)));
    }

    private String missing(List<ArgSpec> missing) {
        return missing.get(0) instanceof OptionSpec option
                ? texts.text("trouble.option-value", name(option), option.paramLabel())
                : texts.text(
                        "trouble.missing",
                        String.join(
                                ", ", missing.stream().map(ArgSpec::paramLabel).toList()));
    }

    private static String name(ArgSpec argument) {
        return argument instanceof OptionSpec option ? option.longestName() : argument.paramLabel();
    }
}
