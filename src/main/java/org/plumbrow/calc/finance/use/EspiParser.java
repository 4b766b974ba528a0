package org.plumbrow.calc.finance.use;

import java.io.StringReader;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Reads the feed as a stream. A document type ends the reading before anything in it is looked at; entities, addresses
 * and stylesheets are never followed; size, number of entries and of readings, and depth are limited.
 */
final class EspiParser {

    private static final int MOST_CHARACTERS = 50_000_000;
    private static final int MOST_ENTRIES = 100_000;
    private static final int MOST_READINGS = 1_000_000;
    private static final int MOST_DEPTH = 40;
    private static final String ATOM = "http://www.w3.org/2005/Atom";
    private static final String ESPI = "http://naesb.org/espi";
    private static final String WHOLE_FILE = "Ask the utility for a whole Green Button file.";

    private final XMLStreamReader xml;
    private final EspiFeed feed = new EspiFeed();
    private final StringBuilder text = new StringBuilder();
    private EspiDraft draft = new EspiDraft();
    private int depth;
    private int entries;
    private int readings;

    private EspiParser(XMLStreamReader xml) {
        this.xml = xml;
    }

    static EspiFeed parse(String text) {
        if (text.length() > MOST_CHARACTERS) {
            throw new UseRefused("The file is larger than 50 MB.", "Ask the utility for one or two years.");
        }
        String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
        try {
            XMLStreamReader reader = factory().createXMLStreamReader(new StringReader(plain));
            EspiFeed feed = new EspiParser(reader).read();
            if (feed.isEmpty()) {
                throw new UseRefused("This is no Green Button file: it has no entry.", WHOLE_FILE);
            }
            return feed;
        } catch (XMLStreamException broken) {
            int line = broken.getLocation() == null ? 0 : broken.getLocation().getLineNumber();
            throw new UseRefused("Line %,d: the XML is broken there.".formatted(line), WHOLE_FILE);
        }
    }

    private static XMLInputFactory factory() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
        factory.setXMLResolver((publicId, systemId, base, namespace) -> {
            throw new XMLStreamException("nothing outside the file is read");
        });
        return factory;
    }

    private EspiFeed read() throws XMLStreamException {
        while (xml.hasNext()) {
            switch (xml.next()) {
                case XMLStreamConstants.DTD, XMLStreamConstants.ENTITY_REFERENCE ->
                    throw new UseRefused(
                            "The file carries a document type or an entity; such files are not read.",
                            "Ask the utility for a plain Green Button file.");
                case XMLStreamConstants.START_ELEMENT -> begin();
                case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> text.append(xml.getText());
                case XMLStreamConstants.END_ELEMENT -> end();
                default -> {
                    // comments, blanks and stylesheets say nothing
                }
            }
        }
        return feed;
    }

    private void begin() {
        text.setLength(0);
        if (++depth > MOST_DEPTH) {
            throw new UseRefused("The XML is nested too deep.", WHOLE_FILE);
        }
        if (isAtom("entry")) {
            draft = new EspiDraft();
            if (++entries > MOST_ENTRIES) {
                throw new UseRefused("The file has more than 100,000 entries.", "Ask for one or two years.");
            }
        } else if (isAtom("link")) {
            draft.link(attribute("rel"), attribute("href"));
        } else if (ESPI.equals(xml.getNamespaceURI())) {
            draft.begin(xml.getLocalName());
        }
    }

    private void end() {
        boolean espi = ESPI.equals(xml.getNamespaceURI());
        if (espi) {
            readings += draft.end(xml.getLocalName(), text.toString().trim()) ? 1 : 0;
            if (readings > MOST_READINGS) {
                throw new UseRefused("The file has more than a million readings.", "Ask for one or two years.");
            }
        } else if (isAtom("entry")) {
            draft.entry().ifPresent(feed::add);
        }
        text.setLength(0);
        depth--;
    }

    private boolean isAtom(String name) {
        return ATOM.equals(xml.getNamespaceURI()) && name.equals(xml.getLocalName());
    }

    private String attribute(String name) {
        String value = xml.getAttributeValue(null, name);
        return value == null ? "" : value;
    }
}
