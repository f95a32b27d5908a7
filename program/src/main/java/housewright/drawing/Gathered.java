package housewright.drawing;

import java.util.ArrayList;
import java.util.List;

/** Names on a panel, said together: {@code in-1…16}. */
final class Gathered {
    private Gathered() {}

    static String names(List<String> names) {
        if (names.size() == 1) {
            return names.getFirst();
        }
        List<String> said = new ArrayList<>();
        for (int at = 0; at < names.size(); ) {
            int end = at + 1;
            while (end < names.size() && follows(names.get(end - 1), names.get(end))) {
                end++;
            }
            String first = names.get(at);
            if (end - at == 1) {
                said.add(first);
            } else {
                String last = names.get(end - 1);
                said.add(first
                        + (end - at == 2 ? ", " : "…")
                        + last.substring(stem(last).length()));
            }
            at = end;
        }
        return String.join(", ", said);
    }

    private static boolean follows(String one, String next) {
        String stem = stem(one);
        return stem.equals(stem(next)) && number(one, stem) >= 0 && number(next, stem) == number(one, stem) + 1;
    }

    private static String stem(String name) {
        int end = name.length();
        while (end > 0 && name.charAt(end - 1) >= '0' && name.charAt(end - 1) <= '9') {
            end--;
        }
        return name.substring(0, end);
    }

    private static long number(String name, String stem) {
        String digits = name.substring(stem.length());
        return digits.isEmpty() || digits.length() > 9 ? -1 : Long.parseLong(digits);
    }
}
