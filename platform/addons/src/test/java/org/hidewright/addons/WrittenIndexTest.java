package org.hidewright.addons;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import aQute.bnd.osgi.repository.XMLResourceParser;
import aQute.bnd.osgi.resource.ResourceBuilder;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import javax.xml.parsers.DocumentBuilderFactory;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.core.addons.AddOnIndexes;
import org.hidewright.core.addons.Index;
import org.hidewright.core.addons.Offer;
import org.hidewright.core.addons.Offer.Standing;
import org.junit.jupiter.api.Test;
import org.osgi.resource.Capability;
import org.osgi.resource.Requirement;
import org.osgi.resource.Resource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * An index made of jars. What it says is held against bnd, a library that many build with: it reads the file, and says of each jar
 * by itself what it offers and needs.
 */
class WrittenIndexTest extends MakersSettings {
    private static final Set<String> ELEMENTS =
            Set.of("repository", "resource", "capability", "requirement", "attribute", "directive");

    private AddOnIndexes indexes() {
        return addOns().indexes();
    }

    private Path shelf() throws IOException {
        Path shelf = folder.resolve("shelf");
        Jar.bundle(
                        "nets",
                        "Bundle-Version",
                        "1.2.0.first",
                        "Bundle-Name",
                        "Nets & <Mesh>, “big”",
                        "Bundle-Vendor",
                        "A. Stranger",
                        "Service-Component",
                        "OSGI-INF/*.xml",
                        "Import-Package",
                        "org.knots;version=\"[1.1,2)\",org.maybe;resolution:=optional",
                        "Require-Capability",
                        "osgi.ee;filter:=\"(&(osgi.ee=JavaSE)(version=17))\",osgi.service;filter:=\"(objectClass=a.B)\""
                                + ";effective:=active")
                .component("OSGI-INF/a.xml", Calculates.ID_PROPERTY, "net")
                .write(shelf.resolve("nets one+two.jar"));
        Jar.bundle(
                        "knots;singleton:=true",
                        "Bundle-Version",
                        "1.3",
                        "Export-Package",
                        "org.knots;version=1.3;uses:=\"org.ropes\";strength=3,org.ropes",
                        "Provide-Capability",
                        "rope;thick:Double=\"1.5\";of:List<Version>=\"1.0,2.0\"")
                .write(shelf.resolve("knots.jar"));
        Jar.bundle("patch", "Fragment-Host", "knots;bundle-version=\"[1,2)\"").write(shelf.resolve("patch.jar"));
        return shelf;
    }

    private static Set<String> says(Resource resource, Predicate<String> namespace) {
        Set<String> says = new TreeSet<>();
        for (Capability offered : resource.getCapabilities(null)) {
            if (namespace.test(offered.getNamespace())) {
                says.add("offers " + offered.getNamespace() + new TreeMap<>(offered.getAttributes())
                        + new TreeMap<>(offered.getDirectives()));
            }
        }
        for (Requirement needed : resource.getRequirements(null)) {
            says.add("needs " + needed.getNamespace() + new TreeMap<>(needed.getDirectives()));
        }
        return says;
    }

    /** Without what bnd adds of its own: a remark on licences and more in the identity, hashes of packages. */
    private static Set<String> asWritten(Path jar) throws Exception {
        ResourceBuilder builder = new ResourceBuilder();
        builder.addFile(jar.toFile(), jar.toUri());
        Set<String> says = new TreeSet<>();
        says(builder.build(), namespace -> !namespace.equals("osgi.content") && !namespace.equals("osgi.identity"))
                .forEach(line -> says.add(line.replaceAll("bnd\\.hashes=\\[[^\\]]*\\], ", "")));
        return says;
    }

    /** A template that is a text lies unpacked while it is written. */
    @Test
    void foldersBesideTheJarsAreToldAsLeftOut() throws Exception {
        Path shelf = shelf();
        Files.createDirectories(shelf.resolve("pen-case/META-INF"));
        Files.createDirectories(shelf.resolve("drafts"));
        Files.createDirectories(shelf.resolve(".kept"));
        Index index = indexes().write(shelf);
        assertEquals(List.of(shelf.resolve("drafts"), shelf.resolve("pen-case")), index.leftOut());
        assertEquals(index.offers(), indexes().read(shelf).offers());
    }

    @Test
    void anotherLibraryReadsOfEachJarWhatItMakesOfTheJarItself() throws Exception {
        Path shelf = shelf();
        Index index = indexes().write(shelf);
        assertEquals(shelf.resolve("index.xml"), index.file());
        List<Resource> read = new XMLResourceParser(index.file().toFile()).parse();
        assertEquals(3, read.size());
        List<String> files = List.of("knots.jar", "nets one+two.jar", "patch.jar");
        for (int i = 0; i < files.size(); i++) {
            Path jar = shelf.resolve(files.get(i));
            Resource resource = read.get(i);
            assertEquals(
                    asWritten(jar),
                    says(
                            resource,
                            namespace -> !Set.of(
                                            "osgi.content",
                                            "osgi.identity",
                                            "hidewright.brings",
                                            "hidewright.calculator")
                                    .contains(namespace)),
                    files.get(i));
            Map<String, Object> content =
                    resource.getCapabilities("osgi.content").get(0).getAttributes();
            assertEquals(Files.size(jar), content.get("size"));
            assertEquals("application/vnd.osgi.bundle", content.get("mime"));
            // as sha256sum of the GNU core utilities prints it
            assertEquals(printedSum(jar), content.get("osgi.content"));
        }
        Map<String, Object> identity =
                read.get(2).getCapabilities("osgi.identity").get(0).getAttributes();
        assertEquals("osgi.fragment", identity.get("type"));
        assertEquals(
                "nets%20one+two.jar",
                IndexFile.in(shelf).read(null).get(1).url(), "where its jar lies, from where the index does");
    }

    private static String printedSum(Path jar) throws Exception {
        Process sum = new ProcessBuilder("sha256sum", jar.toString()).start();
        return new String(sum.getInputStream().readAllBytes(), StandardCharsets.UTF_8).split(" ")[0].replace("\\", "");
    }

    /** OSGi Compendium 8, section 132.5: the elements, where they stand, and the attributes they must have. */
    @Test
    void itHasTheElementsOfTheFormatAndNoOthers() throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        Element root = factory.newDocumentBuilder()
                .parse(indexes().write(shelf()).file().toFile())
                .getDocumentElement();
        assertEquals("repository", root.getLocalName());
        assertEquals("1", root.getAttribute("increment"));
        NodeList all = root.getOwnerDocument().getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            Element element = (Element) all.item(i);
            assertEquals("http://www.osgi.org/xmlns/repository/v1.0.0", element.getNamespaceURI());
            assertTrue(ELEMENTS.contains(element.getLocalName()), element.getLocalName());
            String in = element == root ? "" : element.getParentNode().getLocalName();
            switch (element.getLocalName()) {
                case "resource" -> assertEquals("repository", in);
                case "capability", "requirement" -> {
                    assertEquals("resource", in);
                    assertFalse(element.getAttribute("namespace").isEmpty());
                }
                case "attribute", "directive" -> {
                    assertTrue(Set.of("capability", "requirement").contains(in), in);
                    assertFalse(element.getAttribute("name").isEmpty());
                    assertTrue(element.hasAttribute("value"));
                }
                default -> assertEquals("", in);
            }
        }
    }

    @Test
    void theSameJarsMakeTheSameIndexAndAnotherCountsOn() throws Exception {
        Path shelf = shelf();
        String first = Files.readString(indexes().write(shelf).file());
        Path elsewhere = Files.createDirectories(folder.resolve("elsewhere"));
        for (String file : List.of("patch.jar", "knots.jar", "nets one+two.jar")) {
            Files.copy(shelf.resolve(file), elsewhere.resolve(file));
        }
        assertEquals(first, Files.readString(indexes().write(elsewhere).file()), "no place and no time is in it");
        indexes().write(shelf);
        assertEquals(first, Files.readString(shelf.resolve("index.xml")));
        Jar.bundle("mats").write(shelf.resolve("mats.jar"));
        indexes().write(shelf);
        String second = Files.readString(shelf.resolve("index.xml"));
        assertTrue(second.contains("increment=\"2\""), second);
        assertTrue(second.contains("\n    <attribute name=\"osgi.identity\" value=\"mats\"/>\n"), second);
        Files.writeString(shelf.resolve("index.xml"), "torn");
        indexes().write(shelf);
        assertEquals(
                second.replace("increment=\"2\"", "increment=\"1\""), Files.readString(shelf.resolve("index.xml")));
    }

    @Test
    void itTellsWhatEachIsAndHowItStandsToWhatIsHere() throws Exception {
        Path shelf = shelf();
        Jar.bundle("nets", "Bundle-Version", "1.10").write(shelf.resolve("nets-newer.jar"));
        Jar.bundle("straps", "Bundle-Version", "9").write(shelf.resolve("straps.jar"));
        Jar.bundle("core").write(shelf.resolve("core.jar"));
        there("nets.jar", "on", Jar.bundle("nets", "Bundle-Version", "1.5"));
        there("knots.jar", "on", Jar.bundle("knots", "Bundle-Version", "1.3.0"));
        indexes().write(shelf);
        assertEquals(
                List.of(
                        new Offer("core", "core", "", "0.0.0", List.of(), List.of(), Standing.OF_PROGRAM, ""),
                        new Offer("knots", "knots", "", "1.3.0", List.of(), List.of(), Standing.HERE, "1.3.0"),
                        new Offer("nets", "nets", "", "1.10.0", List.of(), List.of(), Standing.NEWER, "1.5.0"),
                        new Offer(
                                "nets",
                                "Nets & <Mesh>, “big”",
                                "A. Stranger",
                                "1.2.0.first",
                                List.of("net"),
                                List.of(),
                                Standing.OLDER,
                                "1.5.0"),
                        new Offer("patch", "patch", "", "0.0.0", List.of(), List.of(), Standing.NEW, ""),
                        new Offer("straps", "straps", "", "9.0.0", List.of(), List.of(), Standing.OF_PROGRAM, "")),
                indexes().read(shelf).offers());
        assertEquals(6, indexes().read(shelf.resolve("index.xml")).offers().size());
    }

    @Test
    void whatIsNoIndexIsToldWithTheLine() throws Exception {
        Path shelf = Files.createDirectories(folder.resolve("shelf"));
        assertEquals(
                "There is no index shelf/index.xml. Check the name. Where the folder holds jars, make its index:"
                        + " hidewright addons index shelf",
                told(() -> indexes().read(shelf)));
        Path file = shelf.resolve("index.xml");
        String head = "<repository xmlns='http://www.osgi.org/xmlns/repository/v1.0.0' name='n' increment='1'>\n";
        for (Map.Entry<String, Integer> wrong : Map.of(
                        head + "<resource>\n<capability namespace='a'></resource></repository>",
                        3,
                        "<html/>",
                        1,
                        "",
                        1,
                        "<!DOCTYPE r [<!ENTITY e SYSTEM 'file:/etc/hostname'>]>" + head + "&e;</repository>",
                        1,
                        head + "\n\n<resource>\n<capability namespace='a' knots='3'/></resource></repository>",
                        5,
                        "no XML",
                        1)
                .entrySet()) {
            Files.writeString(file, wrong.getKey());
            assertEquals(
                    "shelf/index.xml cannot be read as an index of add-ons (line " + wrong.getValue()
                            + "). Make it anew from its jars with hidewright addons index, or ask who made it for another.",
                    told(() -> indexes().read(shelf)),
                    wrong.getKey());
        }
        Files.write(file, new byte[(16 << 20) + 1]);
        assertTrue(told(() -> indexes().read(shelf)).startsWith("shelf/index.xml is longer than 16 MB"));
    }

    @Test
    void whatHasNoJarOrNoChecksumIsNotOffered() throws Exception {
        Path file = Files.createDirectories(folder.resolve("shelf")).resolve("index.xml");
        String identity = "<capability namespace='osgi.identity'><attribute name='osgi.identity' value='%s'/>"
                + "<attribute name='type' value='%s'/></capability>";
        String content = "<capability namespace='osgi.content'><attribute name='osgi.content' value='AB'/><attribute"
                + " name='url' value='a.jar'/><attribute name='size' type='Long' value='3'/></capability>";
        Files.writeString(
                file,
                "<repository xmlns='http://www.osgi.org/xmlns/repository/v1.0.0' name='n' increment='1'><resource>"
                        + String.format(identity, "bare", "osgi.bundle") + "</resource><resource>" + content
                        + "</resource><resource>" + String.format(identity, "text", "text") + content
                        + "</resource><resource>" + String.format(identity, "nets", "osgi.bundle") + content
                        + "</resource></repository>");
        List<Listed> read = IndexFile.in(file).read(null);
        assertEquals(List.of("nets"), read.stream().map(Listed::id).toList());
        assertEquals("ab", read.get(0).sha256(), "in small letters, as we write it");
        assertEquals("0.0.0", read.get(0).version().toString());
        assertEquals("nets", read.get(0).name());
        assertEquals("", read.get(0).maker());
        assertEquals(List.of(), read.get(0).calculators());
        assertEquals(4, new XMLResourceParser(file.toFile()).parse().size(), "an index all the same, says bnd");
        assertFalse(Files.exists(folder.resolve("nowhere")));
        assertEquals(
                "nowhere is no folder. Name the folder that the jars lie in.",
                told(() -> indexes().write(folder.resolve("nowhere"))));
    }

    @Test
    void aJarThatIsNoBundleOrThereTwiceMakesNoIndex() throws Exception {
        Path shelf = shelf();
        Jar.bundle("nets", "Bundle-Version", "1.2.0.first").write(shelf.resolve("z.jar"));
        assertEquals(
                "shelf/nets one+two.jar and shelf/z.jar are both nets 1.2.0.first. Take one of the two out of the folder.",
                told(() -> indexes().write(shelf)));
        Jar.bundle("nets", "Import-Package", "a,a").write(shelf.resolve("z.jar"));
        assertTrue(
                told(() -> indexes().write(shelf))
                        .startsWith("shelf/z.jar is no bundle: its manifest contradicts itself ("),
                told(() -> indexes().write(shelf)));
        faults.put("z.jar", "doubled");
        assertTrue(told(() -> indexes().write(shelf)).startsWith("shelf/z.jar cannot be installed: a file is in it"));
        assertFalse(Files.exists(shelf.resolve("index.xml")));
        Files.createDirectories(shelf.resolve("index.xml/full"));
        Files.delete(shelf.resolve("z.jar"));
        assertTrue(told(() -> indexes().write(shelf)).startsWith("shelf/index.xml c"));
    }

    @Test
    void wordsThatAnIndexCannotHoldAreLeftOut() throws Exception {
        Path shelf = folder.resolve("shelf");
        Jar.bundle("nets", "Bundle-Vendor", "A\u0007\u001b[2JB").write(shelf.resolve("nets.jar"));
        indexes().write(shelf);
        assertEquals("A [2JB", indexes().read(shelf).offers().get(0).maker());
        assertEquals(
                1,
                new XMLResourceParser(shelf.resolve("index.xml").toFile())
                        .parse()
                        .size());
    }
}
