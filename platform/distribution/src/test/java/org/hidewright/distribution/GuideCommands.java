package org.hidewright.distribution;

import java.util.Arrays;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** The commands of a guide, block by block, as they stand in it. */
final class GuideCommands {
    private static final Pattern BLOCK = Pattern.compile("(?ms)^```(\\w*)\\n(.*?)^```$");
    /** What nobody would write in a block of something else. */
    private static final Pattern COMMAND =
            Pattern.compile("(?m)^(?:mvn|cd|cp|java|sh|sudo|export|\\S*hidewright|\\S*contract/start)\\b.*");

    private GuideCommands() {}

    /** Blocks to be run by a shell, in their order. */
    static List<String> in(String guide) {
        return BLOCK.matcher(guide)
                .results()
                .filter(block -> block.group(1).equals("sh"))
                .map(block -> block.group(2))
                .toList();
    }

    /** Commands in blocks that are not marked as commands, which nobody would run and which could rot. */
    static List<String> unmarked(String guide) {
        return BLOCK.matcher(guide)
                .results()
                .filter(block -> block.group(1).isEmpty())
                .flatMap(block -> COMMAND.matcher(block.group(2)).results())
                .map(MatchResult::group)
                .toList();
    }

    /** How many commands a block holds: what a maker types. */
    static long commands(String block) {
        return Arrays.stream(block.split("\\n"))
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .count();
    }

    /** A script that runs the blocks one after another in one shell, and says before each which it is and when it began. */
    static String script(List<String> blocks) {
        StringBuilder script = new StringBuilder("set -eu\n");
        for (int i = 0; i < blocks.size(); i++) {
            script.append("echo \"block ")
                    .append(i)
                    .append(" at $(date +%s%3N)\"\n")
                    .append(blocks.get(i));
        }
        return script.append("echo \"done at $(date +%s%3N)\"\n").toString();
    }
}
