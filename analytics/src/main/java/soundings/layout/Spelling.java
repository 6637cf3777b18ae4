package soundings.layout;

/** How far two spellings lie apart. */
final class Spelling {
    private Spelling() {}

    /** Whether one letter changed, added, left out, or two neighbours exchanged makes one text the other; spaces do not count. */
    static boolean differByOne(String first, String second) {
        String a = first.replace(" ", "");
        String b = second.replace(" ", "");
        if (Math.abs(a.length() - b.length()) > 1) {
            return false;
        }
        int start = 0;
        int shorter = Math.min(a.length(), b.length());
        while (start < shorter && a.charAt(start) == b.charAt(start)) {
            start++;
        }
        int end = 0;
        while (end < shorter - start && a.charAt(a.length() - 1 - end) == b.charAt(b.length() - 1 - end)) {
            end++;
        }
        int restA = a.length() - start - end;
        int restB = b.length() - start - end;
        return (restA <= 1 && restB <= 1) || (restA == 2 && restB == 2 && exchanged(a, b, start));
    }

    private static boolean exchanged(String a, String b, int at) {
        return a.charAt(at) == b.charAt(at + 1) && a.charAt(at + 1) == b.charAt(at);
    }
}
