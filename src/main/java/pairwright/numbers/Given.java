package pairwright.numbers;

import java.util.List;

/** What somebody gave for an input, as it came in; {@code shown} is how it is said back and so kept short by whoever reads it. */
public sealed interface Given {
    /** How it is said back. */
    String shown();

    /** A number. */
    record Number(double value) implements Given {
        @Override
        public String shown() {
            return Figures.of(value);
        }
    }

    /** Some text. */
    record Text(String text) implements Given {
        @Override
        public String shown() {
            return "the text \"" + text + "\"";
        }
    }

    /** A list. */
    record Many(List<Given> entries) implements Given {
        public Many {
            entries = List.copyOf(entries);
        }

        @Override
        public String shown() {
            return "a list";
        }
    }

    /** Anything else, of no use to any input. */
    record Other(String shown) implements Given {
    }
}
