package pairwright.cli;

import java.util.Arrays;
import java.util.stream.Collectors;
import pairwright.model.Word;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * Reads one of a few words as they are written everywhere else.
 *
 * @param words all of them
 */
record WordOf<T extends Enum<T> & Word>(T[] words) implements ITypeConverter<T> {
    @Override
    public T convert(String typed) {
        return Arrays.stream(words).filter(word -> word.id().equalsIgnoreCase(typed.strip())).findFirst().orElseThrow(() -> new TypeConversionException("\"" + typed
                + "\" is none of " + Arrays.stream(words).map(Word::id).collect(Collectors.joining(", "))));
    }
}
