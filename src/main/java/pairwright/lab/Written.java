package pairwright.lab;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Cases and answers as they are kept: a line for each name, with its values behind it, tabs between. A case begins with the number of its format. */
final class Written {
    private static final String FORMAT = "format ";

    private Written() {
    }

    static String of(Case drawn) {
        return FORMAT + Case.FORMAT + "\n" + of(drawn.said());
    }

    static String of(Answer answer) {
        return of(answer.given());
    }

    /** @throws IllegalArgumentException where it is of another format */
    static Case drawn(String text) {
        String[] parts = text.split("\n", 2);
        if (!parts[0].equals(FORMAT + Case.FORMAT)) {
            throw new IllegalArgumentException("It is kept as \"" + pairwright.catalogue.Shown.of(parts[0]) + "\", and this program reads \"" + FORMAT + Case.FORMAT + "\"");
        }
        return new Case(read(parts.length < 2 ? "" : parts[1]));
    }

    static Answer answer(String text) {
        return new Answer(read(text));
    }

    private static String of(Map<String, List<String>> said) {
        return said.entrySet().stream().map(line -> escaped(line.getKey()) + line.getValue().stream().map(value -> "\t" + escaped(value)).collect(Collectors.joining()))
                .collect(Collectors.joining("\n"));
    }

    private static Map<String, List<String>> read(String text) {
        Map<String, List<String>> said = new LinkedHashMap<>();
        for (String line : text.split("\n")) {
            if (!line.isEmpty()) {
                List<String> cells = new ArrayList<>();
                for (String cell : line.split("\t", -1)) {
                    cells.add(plain(cell));
                }
                said.put(cells.get(0), cells.subList(1, cells.size()));
            }
        }
        return said;
    }

    private static String escaped(String value) {
        return value.replace("\\", "\\\\").replace("\t", "\\t").replace("\n", "\\n");
    }

    private static String plain(String cell) {
        StringBuilder plain = new StringBuilder();
        for (int i = 0; i < cell.length(); i++) {
            char c = cell.charAt(i);
            if (c == '\\' && i + 1 < cell.length()) {
                char next = cell.charAt(++i);
                plain.append(next == 't' ? '\t' : next == 'n' ? '\n' : next);
            } else {
                plain.append(c);
            }
        }
        return plain.toString();
    }
}
