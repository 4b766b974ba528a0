package org.plumbrow.design.drawing;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** A sheet read back from its SVG: what stands on it and where. */
record ReadBack(Document document, List<Words> words) {

    /** A text and the box it fills: from its x, its size, its anchor. */
    record Words(String text, double size, double left, double top, double right, double bottom) {
        boolean touches(Words other) {
            double hair = 0.05;
            return left < other.right - hair
                    && other.left < right - hair
                    && top < other.bottom - hair
                    && other.top < bottom - hair;
        }
    }

    static ReadBack of(Sheet sheet) {
        try {
            var factory = DocumentBuilderFactory.newInstance();
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            Document document = factory.newDocumentBuilder().parse(new InputSource(new StringReader(sheet.svg())));
            List<Words> words = new ArrayList<>();
            NodeList texts = document.getElementsByTagName("text");
            for (int i = 0; i < texts.getLength(); i++) {
                Element text = (Element) texts.item(i);
                if (!text.getAttribute("class").equals("watermark")) {
                    words.add(words(text));
                }
            }
            return new ReadBack(document, words);
        } catch (Exception broken) {
            throw new AssertionError(sheet.slug() + " is no XML", broken);
        }
    }

    private static Words words(Element text) {
        double size = Double.parseDouble(text.getAttribute("font-size"));
        double x = Double.parseDouble(text.getAttribute("x"));
        double y = Double.parseDouble(text.getAttribute("y"));
        String said = text.getTextContent();
        double width =
                Letters.width(said, size, text.getAttribute("font-weight").equals("bold"));
        double share = Anchor.valueOf(text.getAttribute("text-anchor").toUpperCase(java.util.Locale.ROOT))
                .share();
        double left = x - share * width;
        return new Words(said, size, left, y - 0.76 * size, left + width, y + 0.24 * size);
    }

    String all() {
        return String.join(" ", words.stream().map(Words::text).toList());
    }

    List<Element> elements(String name) {
        List<Element> found = new ArrayList<>();
        NodeList nodes = document.getElementsByTagName(name);
        for (int i = 0; i < nodes.getLength(); i++) {
            found.add((Element) nodes.item(i));
        }
        return found;
    }
}
