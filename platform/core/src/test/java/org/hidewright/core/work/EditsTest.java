package org.hidewright.core.work;

import static org.hidewright.core.bench.Shop.json;
import static org.hidewright.core.bench.Shop.project;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.hidewright.core.CoreTexts;
import org.hidewright.core.bench.Relay;
import org.hidewright.core.bench.Sampler;
import org.hidewright.core.bench.Shop;
import org.hidewright.core.json.JsonNode.JsonArray;
import org.hidewright.core.json.JsonNode.JsonObject;
import org.hidewright.core.json.JsonText;
import org.hidewright.core.project.Project;
import org.hidewright.core.project.ProjectNotices;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.work.WorkedSlip.State;
import org.junit.jupiter.api.Test;

/** Edit after edit against working from nothing, over random projects: the same numbers, remarks, places and ranges. */
class EditsTest {
    private static final int PROJECTS = Boolean.getBoolean("hidewright.long") ? 1000 : 60;
    private static final int EDITS = 60;
    /** Ranges are asked for after some of the edits only: they cost some hundred calls a slip. */
    private static final int WITH_RANGES = 30;

    private static final String[] TAKES = {
        "'5 mm'",
        "'4 mm'",
        "'0.5 cm'",
        "'2-3 mm'",
        "'1-4 mm'",
        "'-1 mm'",
        "'5 sheep'",
        "'2000 m'",
        "null",
        "7",
        "[1,\n 2]"
    };
    private static final String[] BETWEEN = {",", ",\n", " ,\r\n\t", ",\r", ", 5,\n", ",\n\n"};

    private final Relay relay = new Relay();
    private final Shop shop = new Shop(relay, new Sampler());
    private final Map<State, Integer> met = new EnumMap<>(State.class);
    private final Set<String> told = new HashSet<>();

    private static <T> T one(SplittableRandom random, T[] of) {
        return of[random.nextInt(of.length)];
    }

    private static String take(SplittableRandom random, int slips) {
        return random.nextInt(3) > 0
                ? "{'from': 's" + random.nextInt(slips + 1) + "', 'answer': '"
                        + (random.nextInt(9) == 0 ? "gvie" : "give") + "'}"
                : one(random, TAKES);
    }

    private static String slip(SplittableRandom random, int i, int slips) {
        String id = random.nextInt(25) == 0 ? "s" + random.nextInt(slips) : "s" + i;
        String questions = switch (random.nextInt(4)) {
            case 0 -> "";
            case 1 -> ", 'questions': {'take': " + take(random, slips) + ", 'moer': 1}";
            case 2 -> ",\n 'questions': {'more': " + take(random, slips) + "}, 'tags': []";
            default -> ", 'questions': {'take': " + take(random, slips) + ",\r\n'more': " + take(random, slips) + "}";
        };
        return switch (random.nextInt(16)) {
            case 0 -> "{'id': '" + id + "', 'calculator': 'gone'" + questions + "}";
            case 1 -> "{'id': '" + id + "', 'calculator': 'relay', 'version': 3" + questions + "}";
            case 2 -> "{'calculator': 'relay'" + questions + "}";
            case 3 ->
                "{'id': '" + id + "', 'calculator': 'sampler', 'questions': {'thickness': '5-6 mm', 'glue': "
                        + take(random, slips) + "}}";
            default -> "{ 'id': '" + id + "', 'calculator': 'relay'" + questions + "}";
        };
    }

    private static String text(SplittableRandom random) {
        int slips = 1 + random.nextInt(14);
        StringBuilder text = new StringBuilder(random.nextInt(9) == 0 ? "\uFEFF" : "");
        text.append(
                random.nextBoolean() ? "{'hidewright': 1, 'nmae': 2, 'slips': [" : "{'hidewright': 1,\n'slips': [\n");
        for (int i = 0; i < slips; i++) {
            text.append(i == 0 ? "" : one(random, BETWEEN)).append(slip(random, i, slips));
        }
        return json(text.append(random.nextBoolean() ? "]}" : "\n], 'clour': 'tan'}\r\n")
                .toString());
    }

    /** Another answer, and now and then a slip that goes, comes, or is put where another was. */
    private Project edited(SplittableRandom random, Project project) throws Exception {
        List<String> ids = List.copyOf(project.index().keySet());
        if (random.nextInt(8) == 0 || ids.isEmpty()) {
            return project(withoutOrWith(random, project));
        }
        String id = ids.get(random.nextInt(ids.size()));
        String question = random.nextInt(3) == 0 ? "more" : "take";
        return project.answering(id, question, json(take(random, ids.size())));
    }

    private static String withoutOrWith(SplittableRandom random, Project project) throws Exception {
        String text = project.text();
        JsonText read = JsonText.read(text);
        var slips = (JsonArray) ((JsonObject) read.root()).get("slips").orElseThrow();
        int at = random.nextInt(slips.items().size());
        String other = json(slip(random, random.nextInt(16), 16));
        if (random.nextBoolean()) {
            return read.with(slips.items().get(at), other).text();
        }
        int end = slips.items().get(at).end();
        return text.substring(0, end) + ",\n" + other + text.substring(end);
    }

    @Test
    void anEditComesToWhatWorkingFromNothingDoes() throws Exception {
        int same = 0;
        for (int seed = 0; seed < PROJECTS; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            List<Project> versions = new ArrayList<>(List.of(project(text(random))));
            WorkedProject worked = shop.bench().work(versions.get(0));
            for (int i = 0; i < EDITS; i++) {
                boolean undo = random.nextInt(10) == 0;
                Project next = undo ? versions.get(random.nextInt(versions.size())) : edited(random, worked.project());
                versions.add(next);
                WorkedProject before = worked;
                worked = shop.bench().work(next, before);
                WorkedProject fresh = shop.bench().work(project(next.text()));
                String when = "project " + seed + ", edit " + i;
                assertSameWork(fresh, worked, when);
                if (i % WITH_RANGES == 0) {
                    assertSameRanges(fresh, worked, when);
                }
                for (Map.Entry<String, WorkedSlip> slip : worked.slips().entrySet()) {
                    same += before.slips().get(slip.getKey()) == slip.getValue() ? 1 : 0;
                }
                worked.slips().values().forEach(slip -> met.merge(slip.state(), 1, Integer::sum));
                worked.remarks().forEach(remark -> told.add(remark.key()));
            }
        }
        assertTrue(
                met.keySet().containsAll(Set.of(State.WORKED, State.REFUSED, State.WAITING, State.DORMANT)),
                met::toString);
        for (String key : List.of("circle", "in-circle", "circle-of-one", "link-no-slip-nearest", "slip-id-twice")) {
            assertTrue(told.contains("notice." + key), key + " never came up: " + told);
        }
        assertTrue(same > 10_000, "hardly a slip was shared: " + same);
    }

    private static void assertSameWork(WorkedProject fresh, WorkedProject worked, String when) {
        String text = worked.project().text();
        assertEquals(fresh.project().text(), text, when);
        assertEquals(fresh.project().remarks(), worked.project().remarks(), when);
        assertEquals(fresh.remarks(), worked.remarks(), () -> when + "\n" + text);
        assertEquals(
                List.copyOf(fresh.slips().keySet()), List.copyOf(worked.slips().keySet()), when);
        fresh.slips().forEach((id, slip) -> {
            WorkedSlip other = worked.slips().get(id);
            assertEquals(slip.state(), other.state(), when);
            assertEquals(slip.slip(), other.slip(), when);
            assertEquals(slip.questions(), other.questions(), when);
            assertEquals(slip.answers().map(Object::toString), other.answers().map(Object::toString), when);
            assertEquals(slip.asked().toString(), other.asked().toString(), when);
            assertEquals(slip.steps().toString(), other.steps().toString(), when);
        });
    }

    private static void assertSameRanges(WorkedProject fresh, WorkedProject worked, String when) {
        for (String id : fresh.slips().keySet()) {
            assertEquals(
                    ranges(fresh, id),
                    ranges(worked, id),
                    () -> when + "\n" + worked.project().text());
        }
    }

    private static Optional<String> ranges(WorkedProject worked, String id) {
        return worked.ranges(id).map(found -> found.inputs() + "\n" + found.study());
    }

    /** Where the parser sees each slip begin in the whole text. */
    @Test
    void slipsStandWhereTheParserFindsThemAfterAnyNumberOfEdits() throws Exception {
        for (int seed = 0; seed < 300; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Project project = project(text(random));
            for (int i = 0; i < 5; i++) {
                project = edited(random, project);
            }
            JsonObject root = (JsonObject) JsonText.read(project.text()).root();
            List<JsonObject> found = ((JsonArray) root.get("slips").orElseThrow())
                    .items().stream()
                            .filter(JsonObject.class::isInstance)
                            .map(JsonObject.class::cast)
                            .toList();
            assertEquals(found.size(), project.slips().size());
            for (int slip = 0; slip < found.size(); slip++) {
                Remark begins = Remark.of(ProjectNotices.SLIP_WITHOUT_ID.with(), CoreTexts.TEXTS)
                        .atPlace(project.slips().get(slip).node().place());
                assertEquals(
                        found.get(slip).place(), project.placed(begins, slip).place(), project.text());
            }
        }
    }
}
