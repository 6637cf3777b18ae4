package soundings.template;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Requests and answers as bytes between two processes: tagged values, lengths first. No Java serialisation. */
final class Wire {
    private static final int LONGEST_TEXT = 64_000_000;

    private Wire() {}

    record Request(Source source, Map<String, ?> model, List<Signature> items) {}

    static void writeRequest(DataOutputStream to, Request request) throws IOException {
        text(to, request.source().name());
        text(to, request.source().text());
        to.writeInt(request.items().size());
        for (Signature item : request.items()) {
            text(to, item.name());
            value(to, item.arguments());
        }
        value(to, request.model());
    }

    static Request readRequest(DataInputStream from) throws IOException {
        Source source = new Source(text(from), text(from), false);
        List<Signature> items = new ArrayList<>();
        for (int left = from.readInt(); left > 0; left--) {
            items.add(new Signature(text(from), texts(value(from))));
        }
        return new Request(source, named(value(from)), items);
    }

    static void writeAnswer(DataOutputStream to, Printed printed) throws IOException {
        to.writeBoolean(true);
        text(to, printed.markdown());
        to.writeInt(printed.calls().size());
        for (Printed.Call call : printed.calls()) {
            text(to, call.name());
            value(to, call.arguments());
            to.writeInt(call.line());
        }
    }

    static void writeProblem(DataOutputStream to, TemplateProblem problem) throws IOException {
        to.writeBoolean(false);
        text(to, String.valueOf(problem.getMessage()));
    }

    static Printed readAnswer(DataInputStream from) throws IOException {
        if (!from.readBoolean()) {
            throw new TemplateProblem(text(from));
        }
        String markdown = text(from);
        List<Printed.Call> calls = new ArrayList<>();
        for (int left = from.readInt(); left > 0; left--) {
            String name = text(from);
            Map<String, String> arguments = new LinkedHashMap<>();
            named(value(from)).forEach((key, value) -> arguments.put(key, String.valueOf(value)));
            calls.add(new Printed.Call(name, arguments, from.readInt()));
        }
        return new Printed(markdown, calls);
    }

    private static void value(DataOutputStream to, Object value) throws IOException {
        if (value instanceof Map<?, ?> map) {
            to.writeByte('m');
            to.writeInt(map.size());
            for (Map.Entry<?, ?> entry : map.entrySet()) {
                text(to, String.valueOf(entry.getKey()));
                value(to, entry.getValue());
            }
        } else if (value instanceof List<?> list) {
            to.writeByte('l');
            to.writeInt(list.size());
            for (Object element : list) {
                value(to, element);
            }
        } else {
            scalar(to, value);
        }
    }

    private static void scalar(DataOutputStream to, Object value) throws IOException {
        if (value instanceof Boolean flag) {
            to.writeByte(flag ? 'y' : 'n');
        } else if (value instanceof Number number) {
            to.writeByte('d');
            text(to, number.toString());
        } else if (value instanceof String words) {
            to.writeByte('t');
            text(to, words);
        } else {
            throw new IllegalArgumentException(
                    "a template's model holds maps, lists, texts, numbers and truth values, not " + value.getClass());
        }
    }

    private static Object value(DataInputStream from) throws IOException {
        byte tag = from.readByte();
        return switch (tag) {
            case 'm' -> map(from);
            case 'l' -> list(from);
            case 'y' -> true;
            case 'n' -> false;
            case 'd' -> new BigDecimal(text(from));
            case 't' -> text(from);
            default -> throw new IOException("no value begins with " + tag);
        };
    }

    private static Map<String, Object> map(DataInputStream from) throws IOException {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int left = from.readInt(); left > 0; left--) {
            map.put(text(from), value(from));
        }
        return map;
    }

    private static List<Object> list(DataInputStream from) throws IOException {
        List<Object> list = new ArrayList<>();
        for (int left = from.readInt(); left > 0; left--) {
            list.add(value(from));
        }
        return list;
    }

    private static Map<String, Object> named(Object value) {
        Map<String, Object> map = new LinkedHashMap<>();
        ((Map<?, ?>) value).forEach((key, inner) -> map.put(String.valueOf(key), inner));
        return map;
    }

    private static List<String> texts(Object value) {
        return ((List<?>) value).stream().map(String::valueOf).toList();
    }

    private static void text(DataOutputStream to, String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        to.writeInt(bytes.length);
        to.write(bytes);
    }

    private static String text(DataInputStream from) throws IOException {
        int length = from.readInt();
        if (length < 0 || length > LONGEST_TEXT) {
            throw new IOException("a text of " + length + " bytes");
        }
        return new String(from.readNBytes(length), StandardCharsets.UTF_8);
    }
}
