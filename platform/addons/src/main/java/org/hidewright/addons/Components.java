package org.hidewright.addons;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.hidewright.api.calculator.Calculates;
import org.hidewright.api.workshop.Tabulates;

/**
 * What the component descriptions of a bundle announce (OSGi Compendium, Declarative Services). A description that cannot
 * be read announces nothing; whether it is in order shows when the bundle is started.
 *
 * @param calculators ids of calculators, in alphabetical order
 * @param tables ids of tables of the workshop, in alphabetical order
 */
record Components(List<String> calculators, List<String> tables) {
    private static final int LONGEST = 1 << 20;
    private static final String TABLE = Tabulates.PREFIX_ + "tabulates";

    /**
     * Reads descriptions.
     *
     * @param header names of their files, where an asterisk in the last part stands for anything; null if there are none
     */
    static Components read(String header, Entries entries) throws IOException {
        Set<String> calculators = new TreeSet<>();
        Set<String> tables = new TreeSet<>();
        List<String> names = entries.names();
        for (String part : header == null ? new String[0] : header.split(",")) {
            Pattern named = pattern(part.split(";", 2)[0].strip());
            for (String name : names) {
                if (named.matcher(name).matches()) {
                    try (InputStream in = entries.open(name)) {
                        collect(in.readNBytes(LONGEST), calculators, tables);
                    }
                }
            }
        }
        return new Components(List.copyOf(calculators), List.copyOf(tables));
    }

    /** These and what is carried as texts: templates, which are calculators too, and tables. */
    Components with(Set<String> templates, Set<String> texts) {
        Set<String> all = new TreeSet<>(calculators);
        all.addAll(templates);
        Set<String> allTables = new TreeSet<>(tables);
        allTables.addAll(texts);
        return new Components(List.copyOf(all), List.copyOf(allTables));
    }

    private static Pattern pattern(String name) {
        String quoted = "\\Q" + name.replace("*", "\\E[^/]*\\Q") + "\\E";
        return Pattern.compile(quoted);
    }

    private static void collect(byte[] description, Set<String> calculators, Set<String> tables) {
        XMLInputFactory factory = XMLInputFactory.newInstance();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false); // a stranger's text fetches nothing
        try {
            XMLStreamReader reader = factory.createXMLStreamReader(new ByteArrayInputStream(description));
            while (reader.hasNext()) {
                if (reader.next() == XMLStreamConstants.START_ELEMENT
                        && reader.getLocalName().equals("property")
                        && reader.getAttributeValue(null, "value") != null) {
                    String name = reader.getAttributeValue(null, "name");
                    if (Calculates.ID_PROPERTY.equals(name)) {
                        calculators.add(reader.getAttributeValue(null, "value"));
                    } else if (TABLE.equals(name)) {
                        tables.add(reader.getAttributeValue(null, "value"));
                    }
                }
            }
        } catch (XMLStreamException unreadable) {
            return; // the component runtime says what is wrong with it
        }
    }
}
