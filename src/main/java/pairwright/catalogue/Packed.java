package pairwright.catalogue;

import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pairwright.acoustics.OctaveCurve;

/**
 * Records as bytes, in the order of their components, texts told once. It is written and read by one build of the program, so it needs no
 * names and no versions; reading it takes a small part of what reading JSON into records takes in a program that has just started, and
 * that is when the built-in catalogue is read.
 */
final class Packed {
    private static final int NULL = 0;
    private static final int VALUE = 1;

    private Packed() {
    }

    /** Writes a record made of numbers, texts, enums, curves, lists, maps by text, and such records. */
    static void write(Record record, OutputStream to) throws IOException {
        Writer writer = new Writer();
        writer.value(record, record.getClass());
        DataOutputStream out = new DataOutputStream(to);
        out.writeInt(writer.texts.size());
        for (String text : writer.texts.keySet()) {
            out.writeUTF(text);
        }
        writer.bytes.writeTo(out);
        out.flush();
    }

    /** Reads what {@link #write} wrote. */
    static <T extends Record> T read(InputStream from, Class<T> type) throws IOException {
        DataInputStream in = new DataInputStream(from);
        String[] texts = new String[in.readInt()];
        for (int i = 0; i < texts.length; i++) {
            texts[i] = in.readUTF();
        }
        return type.cast(new Reader(in, texts).value(type));
    }

    private static final class Writer {
        private final Map<String, Integer> texts = new LinkedHashMap<>();
        private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        private final DataOutputStream out = new DataOutputStream(bytes);

        private void value(Object value, Type type) throws IOException {
            out.writeByte(value == null ? NULL : VALUE);
            if (value == null) {
                return;
            }
            if (value instanceof String text) {
                out.writeInt(texts.computeIfAbsent(text, any -> texts.size()));
            } else if (value instanceof Double number) {
                out.writeDouble(number);
            } else if (value instanceof Integer number) {
                out.writeInt(number);
            } else if (value instanceof Boolean yes) {
                out.writeBoolean(yes);
            } else if (value instanceof Enum<?> word) {
                out.writeByte(word.ordinal());
            } else if (value instanceof OctaveCurve curve) {
                for (double one : curve.toArray()) {
                    out.writeDouble(one);
                }
            } else if (value instanceof List<?> list) {
                out.writeInt(list.size());
                for (Object one : list) {
                    value(one, argument(type, 0));
                }
            } else if (value instanceof Map<?, ?> map) {
                out.writeInt(map.size());
                for (Map.Entry<?, ?> one : map.entrySet()) {
                    value(one.getKey(), String.class);
                    value(one.getValue(), argument(type, 1));
                }
            } else if (value instanceof Record record) {
                record(record);
            } else {
                throw new IllegalArgumentException(value.getClass().getName() + " cannot be packed. Add it to Packed");
            }
        }

        private void record(Record record) throws IOException {
            for (RecordComponent component : record.getClass().getRecordComponents()) {
                try {
                    component.getAccessor().setAccessible(true);
                    value(component.getAccessor().invoke(record), component.getGenericType());
                } catch (ReflectiveOperationException impossible) {
                    throw new IllegalStateException(impossible);
                }
            }
        }
    }

    private static final class Reader {
        private final DataInputStream in;
        private final String[] texts;
        private final Map<Class<?>, Plan> plans = new HashMap<>();

        private Reader(DataInputStream in, String[] texts) {
            this.in = in;
            this.texts = texts;
        }

        /** How to make one kind of record. */
        private record Plan(Constructor<?> constructor, Type[] types) {
        }

        private Object value(Type type) throws IOException {
            if (in.readByte() == NULL) {
                return null;
            }
            Class<?> raw = raw(type);
            if (raw == String.class) {
                return texts[in.readInt()];
            }
            if (raw == double.class || raw == Double.class) {
                return in.readDouble();
            }
            if (raw == int.class || raw == Integer.class) {
                return in.readInt();
            }
            if (raw == boolean.class || raw == Boolean.class) {
                return in.readBoolean();
            }
            if (raw.isEnum()) {
                return raw.getEnumConstants()[in.readByte()];
            }
            if (raw == OctaveCurve.class) {
                double[] curve = new double[9];
                for (int i = 0; i < curve.length; i++) {
                    curve[i] = in.readDouble();
                }
                return OctaveCurve.of(curve);
            }
            if (raw == List.class) {
                return list(argument(type, 0));
            }
            return raw == Map.class ? map(argument(type, 1)) : record(raw);
        }

        private List<Object> list(Type of) throws IOException {
            int size = in.readInt();
            List<Object> list = new ArrayList<>(size);
            for (int i = 0; i < size; i++) {
                list.add(value(of));
            }
            return Collections.unmodifiableList(list);
        }

        private Map<Object, Object> map(Type of) throws IOException {
            int size = in.readInt();
            Map<Object, Object> map = new LinkedHashMap<>();
            for (int i = 0; i < size; i++) {
                map.put(value(String.class), value(of));
            }
            return Collections.unmodifiableMap(map);
        }

        private Object record(Class<?> type) throws IOException {
            Plan plan = plans.get(type);
            if (plan == null) {
                plan = plan(type);
                plans.put(type, plan);
            }
            Object[] values = new Object[plan.types.length];
            for (int i = 0; i < values.length; i++) {
                values[i] = value(plan.types[i]);
            }
            try {
                return plan.constructor.newInstance(values);
            } catch (ReflectiveOperationException impossible) {
                throw new IllegalStateException(impossible);
            }
        }

        private static Plan plan(Class<?> type) {
            RecordComponent[] components = type.getRecordComponents();
            Type[] types = new Type[components.length];
            Class<?>[] classes = new Class<?>[components.length];
            for (int i = 0; i < components.length; i++) {
                types[i] = components[i].getGenericType();
                classes[i] = components[i].getType();
            }
            try {
                Constructor<?> constructor = type.getDeclaredConstructor(classes);
                constructor.setAccessible(true);
                return new Plan(constructor, types);
            } catch (NoSuchMethodException impossible) {
                throw new IllegalStateException(impossible);
            }
        }
    }

    private static Type argument(Type type, int place) {
        return ((ParameterizedType) type).getActualTypeArguments()[place];
    }

    private static Class<?> raw(Type type) {
        return type instanceof Class<?> raw ? raw : (Class<?>) ((ParameterizedType) type).getRawType();
    }
}
