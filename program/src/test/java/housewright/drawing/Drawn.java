package housewright.drawing;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** A sheet read back with an XML parser that is not ours. */
final class Drawn {
    record Point(double x, double y) {}

    record Rect(double x, double y, double width, double height) {}

    private final Document document;

    Drawn(String svg) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            document = factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
        } catch (ParserConfigurationException | SAXException | IOException e) {
            throw new AssertionError("not well-formed: " + svg, e);
        }
    }

    List<Element> all() {
        return elements(document.getElementsByTagName("*"));
    }

    List<Element> tagged(String tag) {
        return elements(document.getElementsByTagName(tag));
    }

    List<Element> about(String subject) {
        return all().stream()
                .filter(each -> each.getAttribute("data-subject").equals(subject))
                .toList();
    }

    List<Element> ofClass(String name) {
        return all().stream()
                .filter(each -> List.of(each.getAttribute("class").split(" ")).contains(name))
                .toList();
    }

    static List<Element> within(Element element, String tag) {
        return elements(element.getElementsByTagName(tag));
    }

    /** The first rectangle of a group. */
    static Rect rect(Element group) {
        Element rect = within(group, "rect").getFirst();
        return new Rect(number(rect, "x"), number(rect, "y"), number(rect, "width"), number(rect, "height"));
    }

    static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    /** The corners of a path of straight lines. */
    static List<Point> corners(Element path) {
        List<Point> points = new ArrayList<>();
        for (String each : path.getAttribute("d").replace("Z", "").substring(1).split("L")) {
            String[] both = each.split(" ");
            points.add(new Point(Double.parseDouble(both[0]), Double.parseDouble(both[1])));
        }
        return points;
    }

    private static List<Element> elements(NodeList list) {
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < list.getLength(); i++) {
            elements.add((Element) list.item(i));
        }
        return elements;
    }
}
