package org.hidewright.distribution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.hidewright.core.catalogue.Catalogue;
import org.hidewright.core.catalogue.Installed;
import org.hidewright.core.proof.Proof;
import org.hidewright.core.proof.Surroundings;
import org.hidewright.core.proof.TablesProof;
import org.hidewright.core.proof.TemplateProof;
import org.hidewright.core.proof.TranslationProof;
import org.hidewright.core.wording.Remark;
import org.hidewright.core.wording.UnitSystem;
import org.hidewright.core.wording.Wording;
import org.hidewright.distribution.BuiltProgram.Ended;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What authors of texts have tried out for them: the texts of ours pass, and each fault that is planted is found where it is. */
class TextProofsIT {
    private static final Path ROOT = Path.of("../..").toAbsolutePath().normalize();
    private static final Path TAG = ROOT.resolve("samples/specimen-tag/specimen-tag.json");
    private static final Wording WORDING = new Wording(Locale.ENGLISH, UnitSystem.METRIC);

    private static Catalogue catalogue;

    @TempDir
    Path scratch;

    @BeforeAll
    static void find() throws Exception {
        catalogue = BundledCalculators.catalogue();
    }

    static List<Path> texts() throws IOException {
        List<Path> texts = new ArrayList<>(VisibleWords.templates(ROOT));
        texts.add(TAG);
        return texts;
    }

    private static Proof look(String text, String id) {
        return TemplateProof.of(
                text,
                id,
                new Surroundings(other -> catalogue.find(other).map(Installed::calculator), catalogue.tables()),
                WORDING);
    }

    private static String said(Remark remark) {
        return WORDING.what(remark) + " | " + WORDING.where(remark).orElse("") + " | " + WORDING.why(remark) + " | "
                + WORDING.next(remark);
    }

    private static List<String> said(Proof proof) {
        return proof.remarks().stream().map(TextProofsIT::said).toList();
    }

    @Test
    void thereAreSevenTemplatesOfOurs() throws IOException {
        assertEquals(7, texts().size(), texts().toString());
    }

    @ParameterizedTest
    @MethodSource("texts")
    void everyTemplateOfOursPasses(Path text) throws IOException {
        String id = text.getFileName().toString().replace(".json", "");
        Proof proof = look(Files.readString(text), id);
        assertEquals(List.of(), said(proof));
        assertTrue(proof.asked() > 400, "asked only " + proof.asked());
    }

    /** What somebody begins their own with. */
    @Test
    void theTemplateThatIsStartedFromPasses() throws IOException {
        Path start = ROOT.resolve("platform/command/src/main/resources/org/hidewright/command/starting-template.json");
        String text = Files.readString(start).replace("NAME", "pen-case").replace("TITLE", "Pen case");
        assertEquals(List.of(), said(look(text, "pen-case")));
    }

    @Test
    void theSizesOfHardwarePass() throws IOException {
        Proof proof = TablesProof.of(
                Files.readString(ROOT.resolve("samples/strap-slides/strap-slides.json")), "slides", catalogue.tables());
        assertEquals(List.of(), said(proof));
        assertEquals(3, proof.asked());
    }

    @ParameterizedTest(name = "{2}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '§',
            value = {
                // what it says of itself
                "\"label\": \"Width\", |§§|template-missing|\"key\": \"width\"",
                "\"help\": \"How many are cut.\"|\"help\": \" \"|proof-blank|\"help\": \" \"",
                "\"what\": \"A knife cuts what is in its way.\"|\"what\": \"\"|proof-blank|\"what\": \"\"",
                ", \"preset\": \"4 mm\"|§§|proof-no-example|\"key\": \"hole\"",
                "\"min\": \"12 mm\", |§§|proof-no-limits|\"key\": \"width\"",
                ", \"max\": \"50\"|§§|proof-no-limits|\"key\": \"tags\"",
                "\"usual\": \"25-70 mm\"|\"usual\": \"5-70 mm\"|proof-usual-outside|\"key\": \"width\"",
                "\"preset\": \"75 mm\"|\"preset\": \"140 mm\"|proof-preset-unusual|\"key\": \"length\"",
                "\"preset\": \"40 mm\"|\"preset\": \"40\"|proof-example-unread|\"key\": \"width\"",
                "\"preset\": \"75 mm\"|\"example\": \"75\"|proof-example-unread|\"key\": \"length\"",
                "\"preset\": \"4 mm\"|\"from\": \"held-thing.widht\", \"preset\": \"4 mm\"|proof-no-such-place|\"key\": \"hole\"",
                "\"preset\": \"4 mm\"|\"stock\": \"leather.thicknes\", \"preset\": \"4 mm\"|proof-no-such-place|\"key\": \"hole\"",
                "{\"key\": \"tags\"|{\"key\": \"spare\", \"kind\": \"flag\", \"preset\": \"no\", \"label\": \"Spare\", \"help\": \"One more.\"}, {\"key\": \"tags\"|proof-unused|\"key\": \"spare\"",
                "tag of {1}.|tag of {2}.|proof-unfilled|\"what\": \"A hole",
                "\"id\": \"specimen-tag\"|\"id\": \"tag\"|proof-other-id|\"id\": \"tag\"",
                // what it refuses
                "\"when\": \"width < 5 * hole\"|\"when\": \"width < 50 * hole\"|proof-example-refused|\"key\": \"specimen-tag-narrow\"",
                "\"when\": \"length < from-top + 2 * hole\"|\"when\": \"length < 60 mm\"|proof-refused|\"key\": \"specimen-tag-short\"",
                "\"when\": \"width < 5 * hole\"|\"when\": \"width > 500 mm\"|proof-never-told|\"key\": \"specimen-tag-narrow\"",
                "\"when\": \"width < 5 * hole\"|\"when\": \"width < 15 in\"|proof-always-told|\"key\": \"specimen-tag-narrow\"",
                "\"together\": true, |§§|proof-refused|\"key\": \"specimen-tag-narrow\"",
                "\"when\": \"width < 5 * hole\"|\"when\": \"width is not 40 mm or length is not 75 mm or hole is not 4 mm\"|proof-few|{",
                "\"tags * 250 mm\"|\"tags * 250 mm * (1 mm / (width - 12 mm))\"|proof-not-its-words|\"cord\"",
                "\"from-top\": \"max(|\"root\": \"sqrt(width - 20 mm) * 1\", \"from-top\": \"max(|expression-no-root|\"root\"",
                "\"width\": \"=hole\"|\"width\": \"=hole - 3 mm\"|proof-not-drawn|\"width\": \"=hole - 3 mm\"",
                // what it asks of another
                "\"openings\": [|\"opennings\": [|proof-not-asked-nearest|\"opennings\"",
                "\"name\": \"Tag\", |\"name\": \"Tag\", \"left-standng\": \"1.5 mm\", |proof-not-asked-nearest|\"left-standng\"",
                "{\"path\": {|{\"path\": {\"colour\": \"red\", |proof-not-asked|\"colour\"",
                // what cannot be cut
                "\"from-top\": \"max(8 mm, 2.5 * hole)\"|\"from-top\": \"hole / 4\"|proof-part|\"id\": \"tag\"",
                "\"openings\": [|\"stitches\": [{\"id\": \"tag.row\", \"pitch\": \"4 mm\", \"along\": {\"between\": {\"from-x\": \"10 mm\", \"from-y\": \"5 mm\", \"to-x\": \"10 mm\", \"to-y\": \"=length + 5 mm\"}}}], \"openings\": [|proof-part|\"id\": \"tag\"",
                "\"corner\": \"min(width / 3, 15 mm)\"|\"corner\": \"25 mm\"|proof-not-drawn|\"shape\"",
                "{length - corner} Z\"|{length - corner}\"|proof-not-drawn|\"shape\"",
                "min(width / 3, 15 mm)|15 mm * 4 / (tags - 4)|proof-not-drawn|\"corner\"",
                "\"operations\": [|\"folds\": [{\"id\": \"tag.over\", \"line\": {\"from-x\": \"0 mm\", \"from-y\": \"=length + 30 mm\", \"to-x\": \"=width\", \"to-y\": \"=length + 30 mm\"}}], \"operations\": [|proof-part|\"id\": \"tag\"",
                "\"y\": \"=length - from-top\"|\"y\": \"=from-top - length\"|proof-example-part|\"id\": \"tag\"",
            })
    void aPlantedFaultIsFoundWhereItIs(String was, String now, String key, String at) throws IOException {
        String text = Files.readString(TAG);
        assertTrue(text.contains(was), was);
        String spoilt = text.replace(was, now);
        Proof proof = look(spoilt, "specimen-tag");
        assertTrue(!proof.sound(), "nothing was found");
        Remark found = proof.remarks().stream()
                .filter(remark -> remark.key().equals("notice." + key))
                .findFirst()
                .orElseThrow(() -> new AssertionError(said(proof).toString()));
        assertNotNull(found.place(), said(found));
        String line = spoilt.lines().toList().get(found.place().line() - 1);
        assertTrue(at == null || line.contains(at), said(found) + " in " + line);
        assertTrue(!said(found).contains("{0}") && !said(found).contains("{1}"), said(found));
    }

    private static final Path FOB = ROOT.resolve("plugins/key-fob/src/main/resources/key-fob.json");

    /** What each template says, which takes a while to find out. */
    private static final Map<String, Map<String, String>> SAYS = new HashMap<>();

    private static Proof german(String spoilt, Path template) throws IOException {
        String text = Files.readString(template);
        String name = template.getFileName().toString();
        String id = name.replace(".json", "");
        return TranslationProof.of(
                id + "_de.properties",
                spoilt,
                text,
                SAYS.computeIfAbsent(id, none -> look(text, id).says()));
    }

    private static Path german(Path template) {
        return template.resolveSibling(template.getFileName().toString().replace(".json", "_de.properties"));
    }

    @ParameterizedTest
    @MethodSource("texts")
    void theGermanOfOursPasses(Path text) throws IOException {
        if (!text.equals(TAG)) {
            Proof proof = german(Files.readString(german(text)), text);
            assertEquals(List.of(), said(proof));
            assertTrue(proof.asked() > 30, "looked at only " + proof.asked());
        }
    }

    @ParameterizedTest(name = "{2} {3}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '§',
            value = {
                "key-fob.width = Breite|key-fob.widht = Breite|proof-translation-nearest|key-fob.widht",
                "key-fob.title|# Vom Anhänger\\nkey-fob.inscription = Gravur\\nkey-fob.title|proof-translation-unknown|inscription",
                "item.part.strip|item.part.flap|proof-translation-unknown|item.part.flap",
                "item.leather.strap-leather|item.leather.hide|proof-translation-unknown|item.leather.hide",
                "item.step.close =|item.step.colse =|proof-translation-nearest|item.step.colse",
                "notice.punch-and-knife.why|notice.punch-and-knife.how|proof-translation-nearest|notice.punch-and-knife.how",
                "key-fob.pitch = Stichlänge\\n|§§|proof-translation-missing|item.on.right-front",
                "formula.value-margin = Randabstand\\n|§§|proof-translation-missing|item.on.right-front",
                "item.fitting.rivet = Niete\\n|§§|proof-translation-missing|item.on.right-front",
                "Ein Streifen von {0} liegt|Ein Streifen liegt|proof-translation-places|too-wide-for-ring.what",
                "sie sitzt {0} vom Ring|sie sitzt {0} vom Ring, {1} hoch|proof-translation-places|short-for-rivet.what",
                "item.part.strip = Streifen|item.part.strip = Streifen {0}|proof-translation-places|item.part.strip",
                "key-fob.closed-by.seam = Naht|key-fob.closed-by.seam =|proof-blank|closed-by.seam",
                "Randabstand|R\\u00e Abstand|proof-translation-escape|value-margin",
                "formula.value-cut = Zu|key-fob.width = Weite\\nformula.value-cut = Zu|proof-translation-twice|Weite",
                "Schlüsselanhänger|Schl\uFFFDsselanh\uFFFDnger|proof-translation-spoilt|key-fob.title",
                "Stichlänge|StichlÃ¤nge|proof-translation-spoilt|key-fob.pitch",
            })
    void aPlantedFaultOfTheGermanIsFoundWhereItIs(String was, String now, String key, String at) throws IOException {
        String text = Files.readString(german(FOB));
        String old = was.replace("\\n", "\n");
        assertTrue(text.contains(old), old);
        String spoilt = text.replace(old, now.replace("\\n", "\n"));
        Proof proof = german(spoilt, FOB);
        assertTrue(!proof.sound(), "nothing was found");
        Remark found = proof.remarks().stream()
                .filter(remark -> remark.key().equals("notice." + key))
                .findFirst()
                .orElseThrow(() -> new AssertionError(said(proof).toString()));
        String line = spoilt.lines().toList().get(found.place().line() - 1);
        assertTrue(line.contains(at), said(found) + " in " + line);
    }

    @Test
    void whatIsToldHasNoMoreDigitsThanAnybodyTypes() throws IOException {
        String spoilt = Files.readString(TAG).replace("min(width / 3, 15 mm)", "width * 0.51 + length / 1000");
        for (String said : said(look(spoilt, "specimen-tag"))) {
            assertTrue(!said.matches(".*\\d\\.\\d{4}.*hidewright work.*|.*hidewright work.*\\d\\.\\d{4}.*"), said);
        }
    }

    /** Rows that are drawn many times are one thing to mend. */
    @Test
    void oneFaultOfManyRowsIsToldOnce() throws IOException {
        String spoilt = Files.readString(TAG)
                .replace(
                        "{\"id\": \"tag.cord\",",
                        "{\"each\": \"=4\", \"id\": \"tag.cord-{nth}\", \"x\": \"=nth * 60 mm\",");
        assertEquals(
                1,
                said(look(spoilt, "specimen-tag")).stream()
                        .filter(said -> said.contains("is not in the leather"))
                        .count());
    }

    /** None of it can be seen in the text alone. */
    @Test
    void aFaultOfTheDrawingIsToldWhereItIsDrawnAndWithoutAdviceForOthers() throws IOException {
        String spoilt = Files.readString(TAG).replace("{length - corner} Z", "{length - corner}");
        List<Remark> told = look(spoilt, "specimen-tag").remarks();
        assertEquals(1, told.size(), told.toString());
        assertTrue(said(told.get(0)).startsWith("It cannot be worked or drawn: "), said(told.get(0)));
        assertTrue(said(told.get(0)).contains("Mend what stands here."), said(told.get(0)));
    }

    @Test
    void aColumnThatIsThereAlreadyIsTold() throws IOException {
        Proof proof = TablesProof.of(
                "{\"workshop\": 1, \"source\": \"Mine\", \"columns\": {\"leather\": {\"columns\": [{\"key\": \"thickness\","
                        + " \"kind\": \"length\", \"unit\": \"mm\", \"min\": \"1 mm\", \"max\": \"9 mm\", \"example\": \"2 mm\","
                        + " \"label\": \"Thickness\", \"help\": \"Of it.\"}]}}}",
                "com.example.tables",
                catalogue.tables());
        assertTrue(!proof.sound(), said(proof).toString());
        assertEquals("notice.column-taken", proof.remarks().get(0).key());
    }

    @Test
    void whatIsToldCanBeTypedAndSeen() throws Exception {
        String spoilt = Files.readString(TAG).replace("\"together\": true, ", "");
        Remark refused = look(spoilt, "specimen-tag").remarks().get(0);
        String command = WORDING.why(refused).replaceFirst(".*hidewright work specimen-tag", "");
        List<String> arguments = new ArrayList<>(List.of("work", "specimen-tag"));
        Stream.of(command.strip().split(" (?=[a-z]+=)"))
                .map(part -> part.replace("\"", ""))
                .forEach(arguments::add);
        BuiltProgram program = BuiltProgram.copyInto(scratch);
        assertEquals(
                0, program.run("addons", "install", TAG.getParent().toString()).code());
        Ended ended = program.run(arguments.toArray(String[]::new));
        assertEquals(1, ended.code(), arguments + ended.answer());
        assertTrue(ended.answer().contains("With less leather beside it the cord tears it out."), ended.answer());
    }

    @Test
    void oneCommandLooksAFolderOver() throws Exception {
        BuiltProgram program = BuiltProgram.copyInto(scratch);
        Ended sound = program.run(
                "addons",
                "check",
                TAG.getParent().toString(),
                ROOT.resolve("samples/strap-slides").toString(),
                "--language",
                "en");
        assertEquals(0, sound.code(), sound.answer() + sound.told());
        assertTrue(sound.answer().contains("3 rows were looked at."), sound.answer());
        assertTrue(sound.answer().contains("Nothing has to be mended."), sound.answer());
        assertTrue(!program.run("addons").answer().contains("fieldkit"), "nothing is installed by it");
        Path own = Files.createDirectories(scratch.resolve("own/META-INF")).getParent();
        Files.writeString(
                own.resolve("META-INF/MANIFEST.MF"),
                "Manifest-Version: 1.0\nBundle-ManifestVersion: 2\nBundle-SymbolicName: com.example.tags\n"
                        + "Hidewright-Templates: specimen-tag.json, gone.json\nHidewright-Tables: sizes.json");
        Files.writeString(
                own.resolve("specimen-tag.json"), Files.readString(TAG).replace("max(8 mm, 2.5 * hole)", "hole / 4"));
        Files.writeString(
                own.resolve("sizes.json"),
                "{\"workshop\": 1, \"source\": \"Mine\",\n \"tables\":"
                        + " {\"hardware\": [\n  {\"id\": \"d-20\", \"name\": \"D 20\", \"kind\": \"ring\", \"inside-width\": 20}]}}");
        Ended faulty = program.run("addons", "check", own.toString(), "--language", "en");
        assertEquals(1, faulty.code(), faulty.answer());
        String said = faulty.answer();
        assertTrue(said.contains("The manifest names gone.json"), said);
        assertTrue(said.contains("A part cannot be made"), said);
        assertTrue(said.contains("To see it: hidewright work specimen-tag"), said);
        assertTrue(said.contains("(line 3, column "), said);
        assertTrue(said.contains("is 20, without a unit"), said);
        assertTrue(said.contains("Mend what is told above"), said);
    }
}
