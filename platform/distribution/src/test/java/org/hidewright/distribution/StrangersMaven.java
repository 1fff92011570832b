package org.hidewright.distribution;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;

/**
 * Maven as somebody else runs it, without the net: what it needs of Central is taken from what this build has fetched, and what it
 * keeps lies in a repository of its own, so that nothing of ours is found that was not brought.
 */
final class StrangersMaven {
    private static final long MINUTES = 4;

    private static final String SETTINGS = """
            <settings>
              <profiles>
                <profile>
                  <id>fetched</id>
                  <repositories>
                    <repository>
                      <id>central</id>
                      <url>%1$s</url>
                      <releases>
                        <checksumPolicy>ignore</checksumPolicy>
                      </releases>
                    </repository>
                  </repositories>
                  <pluginRepositories>
                    <pluginRepository>
                      <id>central</id>
                      <url>%1$s</url>
                      <releases>
                        <checksumPolicy>ignore</checksumPolicy>
                      </releases>
                    </pluginRepository>
                  </pluginRepositories>
                </profile>
              </profiles>
              <activeProfiles>
                <activeProfile>fetched</activeProfile>
              </activeProfiles>
            </settings>
            """;

    private final Path home = Path.of(System.getProperty("maven.home"));
    private final Path settings;
    private final Path repository;

    StrangersMaven(Path scratch) throws IOException {
        Path fetched = Path.of(System.getProperty("hidewright.maven.cache"));
        settings = Files.writeString(scratch.resolve("settings.xml"), SETTINGS.formatted(fetched.toUri()));
        repository = scratch.resolve("repository");
    }

    /** What any run of it is given. */
    List<String> options() {
        return List.of(
                "-B",
                "-ntp",
                "-o",
                "-Daether.offline.protocols=file",
                "-s",
                settings.toString(),
                "-Dmaven.repo.local=" + repository);
    }

    /** The text of a script that runs it with these options, to be called as somebody else calls {@code mvn}. */
    String asScript() {
        String quoted = options().stream().map(option -> "'" + option + "'").collect(Collectors.joining(" "));
        return "#!/bin/sh\nexec '" + home.resolve("bin/mvn") + "' " + quoted + " \"$@\"\n";
    }

    /** Runs it in a folder; what it says goes into the log. */
    int run(Path folder, Path log, String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(home.resolve("bin/mvn").toString()));
        command.addAll(options());
        command.addAll(Arrays.asList(arguments));
        return run(command, folder, log);
    }

    /** Runs a command that finds Maven on its path. */
    int run(List<String> command, Path folder, Path log) throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(log.toFile());
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        builder.environment().merge("PATH", home.resolve("bin").toString(), (path, bin) -> bin + ":" + path);
        builder.environment().keySet().removeAll(List.of("MAVEN_OPTS", "MAVEN_ARGS", "MAVEN_CONFIG"));
        Process process = builder.start();
        if (!process.waitFor(MINUTES, TimeUnit.MINUTES)) {
            process.destroyForcibly();
            throw new IOException("The build did not end within " + MINUTES + " minutes.");
        }
        return process.exitValue();
    }
}
