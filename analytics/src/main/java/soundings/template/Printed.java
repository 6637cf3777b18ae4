package soundings.template;

import java.util.List;
import java.util.Map;

/** What a template printed: Markdown, in which {@link #place} of n stands for the n-th item asked for. */
public record Printed(String markdown, List<Call> calls) {
    /** Start of text: a control character, which the escaping of values takes out, so that no cell can forge a place. */
    private static final char MARK = '\u0002';

    public Printed {
        calls = List.copyOf(calls);
    }

    /** The text that stands where an item goes, alone in its paragraph. */
    public static String place(int index) {
        return MARK + "item " + index + MARK;
    }

    /** The index of the call a paragraph stands for, or -1. */
    public static int findCall(String paragraph) {
        String inside = paragraph.strip();
        boolean place = inside.length() > 7
                && inside.charAt(0) == MARK
                && inside.indexOf(MARK, 1) == inside.length() - 1
                && inside.startsWith("item ", 1);
        String digits = place ? inside.substring(6, inside.length() - 1) : "";
        return digits.matches("[0-9]{1,6}") ? Integer.parseInt(digits) : -1;
    }

    /** An item asked for, with its arguments, and the template's line it was asked for in. */
    public record Call(String name, Map<String, String> arguments, int line) {
        public Call {
            arguments = Map.copyOf(arguments);
        }
    }
}
