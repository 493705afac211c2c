package pairwright.rules;

import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Set;
import java.util.TreeSet;

/** What a class file mentions, from its constant pool alone: "java.lang.Math" for classes, "java.lang.Math#abs" for members. */
final class ClassUse {
    private final String[] texts;
    private final int[] classes;
    private final int[] types;
    private final int[] names;
    private final int[] owners;
    private final int[] members;

    private ClassUse(DataInputStream in) throws IOException {
        in.readInt();
        in.readUnsignedShort();
        in.readUnsignedShort();
        int size = in.readUnsignedShort();
        texts = new String[size];
        classes = new int[size];
        types = new int[size];
        names = new int[size];
        owners = new int[size];
        members = new int[size];
        for (int i = 1; i < size; i++) {
            i += constant(in, i);
        }
    }

    static Set<String> of(byte[] classFile) {
        try (var in = new DataInputStream(new ByteArrayInputStream(classFile))) {
            return new ClassUse(in).used();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** Reads one constant; the numbers are the tags of the class file format. Says how many places more than one it takes. */
    private int constant(DataInputStream in, int i) throws IOException {
        int tag = in.readUnsignedByte();
        switch (tag) {
            case 1 -> texts[i] = in.readUTF();
            case 3, 4, 17, 18 -> in.readInt();
            case 5, 6 -> in.readLong();
            case 7 -> classes[i] = in.readUnsignedShort();
            case 8, 19, 20 -> in.readUnsignedShort();
            case 9, 10, 11 -> {
                owners[i] = in.readUnsignedShort();
                members[i] = in.readUnsignedShort();
            }
            case 12 -> {
                names[i] = in.readUnsignedShort();
                types[i] = in.readUnsignedShort();
            }
            case 15 -> {
                in.readUnsignedByte();
                in.readUnsignedShort();
            }
            case 16 -> types[i] = in.readUnsignedShort();
            default -> throw new IOException("constant tag " + tag);
        }
        return tag == 5 || tag == 6 ? 1 : 0;
    }

    private Set<String> used() {
        Set<String> used = new TreeSet<>();
        for (int i = 1; i < texts.length; i++) {
            if (classes[i] != 0) {
                String name = texts[classes[i]];
                addTypes(used, name.startsWith("[") ? name : "L" + name + ";");
            }
            if (types[i] != 0) {
                addTypes(used, texts[types[i]]);
            }
            if (owners[i] != 0) {
                used.add(texts[classes[owners[i]]].replace('/', '.') + "#" + texts[names[members[i]]]);
            }
        }
        return used;
    }

    private static void addTypes(Set<String> used, String descriptor) {
        int start = descriptor.indexOf('L');
        while (start >= 0) {
            int end = descriptor.indexOf(';', start);
            if (end < 0) {
                return;
            }
            used.add(descriptor.substring(start + 1, end).replace('/', '.'));
            start = descriptor.indexOf('L', end);
        }
    }
}
