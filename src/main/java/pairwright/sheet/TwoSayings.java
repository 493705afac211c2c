package pairwright.sheet;

/** What one rule says of each of two microphones, said once. */
final class TwoSayings {
    private TwoSayings() {
    }

    /**
     * Both as one text in which no word of either is missing: where only numbers differ they stand side by side, "145 and 142 dB SPL"; a
     * sentence that is the same is said once, and any other is said for each.
     */
    static String joined(String first, String second) {
        String[] ones = first.split("(?<=[.?!]) (?=\\p{Lu})");
        String[] others = second.split("(?<=[.?!]) (?=\\p{Lu})");
        if (ones.length != others.length) {
            return each(first, second);
        }
        StringBuilder all = new StringBuilder();
        for (int i = 0; i < ones.length; i++) {
            String both = sentence(ones[i], others[i]);
            all.append(i == 0 ? "" : " ").append(both == null ? each(ones[i], others[i]) : both);
        }
        return all.toString();
    }

    private static String each(String first, String second) {
        return "Mic 1: " + first + " Mic 2: " + second;
    }

    /** Null where more differs than numbers and their units. */
    private static String sentence(String first, String second) {
        if (first.equals(second)) {
            return first;
        }
        String[] ones = first.split(" ");
        String[] others = second.split(" ");
        if (ones.length != others.length) {
            return null;
        }
        StringBuilder all = new StringBuilder();
        int at = 0;
        while (at < ones.length) {
            int end = at;
            while (end < ones.length && !ones[end].equals(others[end])) {
                end++;
            }
            if (end > at) {
                if (!isNumber(ones[at]) || !isNumber(others[at]) || end > at + 2) {
                    return null;
                }
                String one = run(ones, at, end);
                all.append(" ").append(withoutMark(one)).append(" and ").append(run(others, at, end));
                at = end;
            } else {
                all.append(" ").append(ones[at++]);
            }
        }
        return all.substring(1);
    }

    private static boolean isNumber(String word) {
        return !word.isEmpty() && (Character.isDigit(word.charAt(0)) || word.length() > 1 && "-\u2212".indexOf(word.charAt(0)) >= 0 && Character.isDigit(word.charAt(1)));
    }

    private static String run(String[] words, int from, int to) {
        return String.join(" ", java.util.Arrays.copyOfRange(words, from, to));
    }

    private static String withoutMark(String words) {
        int end = words.length();
        while (end > 0 && ",.;:)".indexOf(words.charAt(end - 1)) >= 0) {
            end--;
        }
        return words.substring(0, end);
    }
}
