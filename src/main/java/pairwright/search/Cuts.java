package pairwright.search;

import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Phrases as they were cut when the program was built: to cut all of a catalogue again would take a good part of every start. */
final class Cuts {
    private static final String FILE = "/" + SentenceReader.CUTS;

    private Cuts() {
    }

    /** Those that ship with the program; a new map of them. Empty where it was built without. */
    static Map<String, List<Token>> shipped() {
        try (InputStream in = Cuts.class.getResourceAsStream(FILE)) {
            return in == null ? new HashMap<>() : read(in.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + FILE + ", which belongs to this program", e);
        }
    }

    static void write(Map<String, List<Token>> cuts, OutputStream to) throws IOException {
        Map<String, Integer> words = new LinkedHashMap<>();
        cuts.forEach((phrase, tokens) -> {
            words.putIfAbsent(phrase, words.size());
            for (Token token : tokens) {
                words.putIfAbsent(token.spelling(), words.size());
                words.putIfAbsent(token.stem(), words.size());
            }
        });
        DataOutputStream out = new DataOutputStream(to);
        out.writeInt(words.size());
        for (String word : words.keySet()) {
            out.writeUTF(word);
        }
        out.writeInt(cuts.size());
        for (Map.Entry<String, List<Token>> cut : cuts.entrySet()) {
            out.writeInt(words.get(cut.getKey()));
            out.writeInt(cut.getValue().size());
            for (Token token : cut.getValue()) {
                out.writeInt(token.start());
                out.writeInt(token.end());
                out.writeInt(words.get(token.spelling()));
                out.writeInt(words.get(token.stem()));
                out.writeBoolean(token.opens());
            }
        }
        out.flush();
    }

    static Map<String, List<Token>> read(byte[] written) throws IOException {
        DataInputStream in = new DataInputStream(new ByteArrayInputStream(written));
        String[] words = new String[in.readInt()];
        for (int i = 0; i < words.length; i++) {
            words[i] = in.readUTF();
        }
        int phrases = in.readInt();
        Map<String, List<Token>> cuts = new HashMap<>(2 * phrases);
        for (int i = 0; i < phrases; i++) {
            String phrase = words[in.readInt()];
            int count = in.readInt();
            List<Token> tokens = new ArrayList<>(count);
            for (int j = 0; j < count; j++) {
                tokens.add(new Token(in.readInt(), in.readInt(), words[in.readInt()], words[in.readInt()], in.readBoolean()));
            }
            cuts.put(phrase, tokens);
        }
        return cuts;
    }
}
