package org.hidewright.core.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import org.hidewright.core.wording.Remark;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * Kills a program in the middle of its saves, with SIGKILL where there is such a thing, and looks what is there: the last
 * save it acknowledged or the one it was at, whole, and it opens. This shows that no step of a save leaves less than that;
 * it does not show what a loss of power would do, since all that was given to the system is written out all the same.
 *
 * <p>20 kills in every run; with {@code -Dhidewright.long=true} 200, of them 20 at least in each step.
 */
class KilledSaveTest {
    private static final boolean LONG = Boolean.getBoolean("hidewright.long");
    private static final int KILLS = LONG ? 200 : 20;
    private static final int IN_EACH_STEP = LONG ? 20 : 1;
    /** What a Java tells of a program that ended by signal 9, or of one that Windows was asked to end. */
    private static final int KILLED = OS.WINDOWS.isCurrentOs() ? 1 : 128 + 9;

    @TempDir
    Path folder;

    private final SplittableRandom random = new SplittableRandom();

    /** What a killed program had said: the last step it began, the number of the last save it acknowledged. */
    private record Death(String step, int acknowledged) {}

    @Test
    void aKilledSaveLeavesTheLastOneAcknowledgedOrTheOneInFlight() throws Exception {
        Map<String, Integer> kills = new TreeMap<>();
        Map<String, Integer> found = new TreeMap<>();
        for (int kill = 1; kill <= KILLS || !enough(kills) && kill <= 2 * KILLS; kill++) {
            Path file = Files.createDirectory(folder.resolve("kill-" + kill)).resolve("strap.json");
            Saved.write(file, EndlessSaver.text(0));
            String aim = EndlessSaver.STEPS.get(kill % EndlessSaver.STEPS.size());
            Death death = killed(file, aim);
            kills.merge(death.step(), 1, Integer::sum);
            String which = check(file, death);
            found.merge(which, 1, Integer::sum);
            if (LONG) {
                System.out.println("kill " + kill + " in " + death.step() + " after save " + death.acknowledged()
                        + " was acknowledged: the file holds " + which);
            }
        }
        System.out.println("Kills by step: " + kills + "; found: " + found);
        assertTrue(enough(kills), kills.toString());
    }

    private static boolean enough(Map<String, Integer> kills) {
        return EndlessSaver.STEPS.stream().allMatch(step -> kills.getOrDefault(step, 0) >= IN_EACH_STEP);
    }

    /** Lets a program save for a while, and kills it a random moment after it has begun the step aimed at. */
    private Death killed(Path file, String aim) throws Exception {
        Process saver = Child.start(EndlessSaver.class, file.toString());
        try {
            AtomicInteger acknowledged = new AtomicInteger();
            CompletableFuture<Void> answers =
                    read(saver.inputReader(StandardCharsets.UTF_8), line -> acknowledged.set(Integer.parseInt(line)));
            AtomicInteger left = new AtomicInteger(1 + random.nextInt(6));
            long wait = random.nextLong(aim.equals(SaveStep.WRITE.name()) ? 600_000 : 2_500_000);
            String[] last = {"START"};
            CompletableFuture<Void> steps = read(saver.errorReader(StandardCharsets.UTF_8), line -> {
                last[0] = line;
                if (line.equals(aim) && left.decrementAndGet() == 0) {
                    long until = System.nanoTime() + wait;
                    while (System.nanoTime() < until) {
                        Thread.onSpinWait();
                    }
                    saver.toHandle().destroyForcibly(); // of the process itself it would close what it had said too
                }
            });
            steps.get();
            answers.get();
            assertEquals(KILLED, saver.waitFor(), () -> "it saves until it is killed, and ended by itself: " + last[0]);
            return new Death(last[0], acknowledged.get());
        } finally {
            saver.destroyForcibly().waitFor();
        }
    }

    private static CompletableFuture<Void> read(BufferedReader from, Consumer<String> line) {
        // a thread of its own: the common pool of a machine of two cores has one, and both streams are to be read
        Executor ownThread = task -> new Thread(task).start();
        return CompletableFuture.runAsync(
                () -> {
                    try (from) {
                        for (String read = from.readLine(); read != null; read = from.readLine()) {
                            line.accept(read);
                        }
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                },
                ownThread);
    }

    /** Which save the file holds, seen before anything is put right, and again by opening it. */
    private static String check(Path file, Death death) throws Exception {
        int acknowledged = death.acknowledged();
        String text = Files.readString(file);
        boolean inFlight = text.equals(EndlessSaver.text(acknowledged + 1));
        assertTrue(
                inFlight || text.equals(EndlessSaver.text(acknowledged)),
                () -> death + ", and the file holds " + text.length() + " characters: "
                        + text.substring(0, Math.min(80, text.length())));
        Path left = Beside.newVersion(file);
        boolean half = Files.exists(left) && !Files.readString(left).endsWith("}\n");
        ProjectFile opened = ProjectFile.open(file);
        assertEquals(text, opened.project().text());
        assertEquals(
                List.of(),
                opened.project().remarks().stream().filter(Remark::stops).toList());
        List<String> names = Saved.names(file.getParent());
        assertTrue(
                names.stream().allMatch(name -> name.matches("strap\\.json(\\.before|\\.unsaved)?")),
                "left over after opening: " + names);
        Path aside = file.resolveSibling("strap.json.unsaved");
        assertEquals(
                Files.exists(aside)
                        ? List.of("notice.save-cut-short")
                        : half ? List.of("notice.save-half-written") : List.of(),
                opened.remarks().stream().map(Remark::key).toList(),
                "what is put aside is told, and so is what was half written");
        if (Files.exists(aside)) {
            assertEquals(EndlessSaver.text(acknowledged + 1), Files.readString(aside));
        }
        Path before = file.resolveSibling("strap.json.before");
        if (Files.exists(before)) {
            String kept = Files.readString(before);
            assertTrue(
                    kept.equals(EndlessSaver.text(acknowledged)) || kept.equals(EndlessSaver.text(acknowledged - 1)),
                    "the version before is whole too");
        }
        ProjectFile saved = opened.save(Saved.project("Then"));
        assertEquals("Then", saved.project().name());
        return inFlight ? "the save in flight" : "the last acknowledged";
    }
}
