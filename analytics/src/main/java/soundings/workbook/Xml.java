package soundings.workbook;

import com.fasterxml.aalto.stax.InputFactoryImpl;
import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** A part read as XML, element by element: no document types, no entities, bounded depth. Names are local names, whatever the namespace. */
final class Xml implements AutoCloseable {
    private final InputStream source;
    private final XMLStreamReader reader;
    private int depth;

    private Xml(InputStream source) throws XMLStreamException {
        this.source = source;
        this.reader = factory().createXMLStreamReader(source);
    }

    static Xml of(InputStream source) {
        try {
            return new Xml(source);
        } catch (XMLStreamException broken) {
            throw broken(broken);
        }
    }

    private static XMLInputFactory factory() {
        XMLInputFactory factory = new InputFactoryImpl();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_COALESCING, false);
        return factory;
    }

    /** Goes on to the next start tag, anywhere. False at the end. */
    boolean nextStart() {
        int event = next();
        while (event != XMLStreamConstants.START_ELEMENT && event != XMLStreamConstants.END_DOCUMENT) {
            event = next();
        }
        return event == XMLStreamConstants.START_ELEMENT;
    }

    /** Goes on to the next start tag inside the element whose start tag was met at {@code outer}. False behind its end tag. */
    boolean nextStartWithin(int outer) {
        while (depth >= outer) {
            int event = next();
            if (event == XMLStreamConstants.START_ELEMENT) {
                return true;
            }
            if (event == XMLStreamConstants.END_DOCUMENT) {
                return false;
            }
        }
        return false;
    }

    /** The next event, as {@link XMLStreamConstants} numbers them. */
    int next() {
        try {
            int event = reader.next();
            switch (event) {
                case XMLStreamConstants.START_ELEMENT -> deeper();
                case XMLStreamConstants.END_ELEMENT -> depth--;
                case XMLStreamConstants.DTD, XMLStreamConstants.ENTITY_REFERENCE ->
                    throw Refusal.because(
                            "declares its own document type or entities, which no spreadsheet program does. It is not read.");
                default -> {}
            }
            return event;
        } catch (XMLStreamException broken) {
            throw broken(broken);
        }
    }

    private void deeper() {
        if (++depth > Limits.XML_DEPTH) {
            throw Refusal.tooLarge("its XML is nested " + depth + " deep");
        }
    }

    /** Start tags open at this point, the last one met included. */
    int depth() {
        return depth;
    }

    String name() {
        return reader.getLocalName();
    }

    boolean is(String name) {
        return reader.getLocalName().equals(name);
    }

    int attributes() {
        return reader.getAttributeCount();
    }

    String attributeName(int index) {
        return reader.getAttributeLocalName(index);
    }

    String attributeValue(int index) {
        return reader.getAttributeValue(index);
    }

    /** The namespace of an attribute, where two of one local name must be told apart. */
    String attributeSpace(int index) {
        return reader.getAttributeNamespace(index) == null ? "" : reader.getAttributeNamespace(index);
    }

    Optional<String> attribute(String name) {
        for (int i = 0; i < reader.getAttributeCount(); i++) {
            if (reader.getAttributeLocalName(i).equals(name)) {
                return Optional.of(reader.getAttributeValue(i));
            }
        }
        return Optional.empty();
    }

    String attribute(String name, String otherwise) {
        return attribute(name).orElse(otherwise);
    }

    boolean flag(String name) {
        return truth(attribute(name, "0"));
    }

    static boolean truth(String written) {
        return written.equals("1") || written.equals("true") || written.equals("on");
    }

    /** The attribute as a whole number; {@code otherwise} where it is absent or no number. */
    int number(String name, int otherwise) {
        try {
            return attribute(name).map(String::trim).map(Integer::parseInt).orElse(otherwise);
        } catch (NumberFormatException odd) {
            return otherwise;
        }
    }

    /** Characters of the present text event. */
    String characters() {
        return reader.getText();
    }

    /** All text inside the element just started, its end tag included; text of child elements too. */
    String text() {
        int outer = depth;
        String first = "";
        @org.jspecify.annotations.Nullable StringBuilder more = null;
        while (depth >= outer) {
            int event = next();
            if (event == XMLStreamConstants.CHARACTERS
                    || event == XMLStreamConstants.CDATA
                    || event == XMLStreamConstants.SPACE) {
                if (more == null && first.isEmpty()) {
                    first = reader.getText();
                } else {
                    more = more == null ? new StringBuilder(first) : more;
                    more.append(reader.getText());
                }
            }
        }
        return more == null ? first : more.toString();
    }

    /** Leaves the element just started. */
    void skip() {
        int outer = depth;
        while (depth >= outer) {
            next();
        }
    }

    private static Refusal broken(XMLStreamException broken) {
        if (broken.getCause() instanceof Refusal refusal) {
            return refusal;
        }
        int line = broken.getLocation() == null ? 0 : broken.getLocation().getLineNumber();
        return Refusal.damaged("XML that does not read on at line " + line);
    }

    @Override
    public void close() {
        try {
            reader.close();
            source.close();
        } catch (XMLStreamException | IOException ignored) {
            throw Refusal.damaged("a part that does not close");
        }
    }
}
