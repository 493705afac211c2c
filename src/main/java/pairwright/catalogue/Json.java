package pairwright.catalogue;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonSetter;
import com.fasterxml.jackson.annotation.Nulls;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.BeanDescription;
import com.fasterxml.jackson.databind.DeserializationConfig;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.deser.BeanDeserializerModifier;
import com.fasterxml.jackson.databind.deser.std.DelegatingDeserializer;
import com.fasterxml.jackson.databind.deser.std.StdScalarDeserializer;
import com.fasterxml.jackson.databind.introspect.Annotated;
import com.fasterxml.jackson.databind.introspect.AnnotatedMember;
import com.fasterxml.jackson.databind.introspect.JacksonAnnotationIntrospector;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.StdScalarSerializer;
import com.fasterxml.jackson.databind.ser.std.StdSerializer;
import com.fasterxml.jackson.databind.type.CollectionType;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pairwright.acoustics.OctaveCurve;
import pairwright.model.Request;
import pairwright.model.Word;

/** The one way this program reads and writes JSON. */
public final class Json {
    private static final int DECIMALS = 4;
    private static final int OCTAVES = 9;

    private Json() {
    }

    /**
     * A fresh mapper: constants go by their words, an octave curve is nine numbers, numbers have at most four decimals, nulls are
     * left out, and unknown or repeated fields, trailing text and numbers without end are refused. A list missing from a record of the
     * model is an empty list, except in a {@link Request}, where a missing list says nothing.
     */
    public static JsonMapper mapper() {
        return JsonMapper.builder()
                .addModule(module())
                .annotationIntrospector(new MissingLists())
                .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
                .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                .disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT)
                .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
                .serializationInclusion(JsonInclude.Include.NON_NULL)
                .build();
    }

    private static SimpleModule module() {
        SimpleModule module = new SimpleModule("pairwright");
        module.addSerializer(Word.class, new WordWriter());
        module.addSerializer(OctaveCurve.class, new CurveWriter());
        module.addSerializer(OffsetDateTime.class, new TimeWriter());
        module.addSerializer(Double.class, new NumberWriter());
        module.addSerializer(Double.TYPE, new NumberWriter());
        module.addDeserializer(OctaveCurve.class, new CurveReader());
        module.addDeserializer(OffsetDateTime.class, new TimeReader());
        module.addDeserializer(Double.class, new NumberReader(null));
        module.addDeserializer(Double.TYPE, new NumberReader(0.0));
        module.setDeserializerModifier(new WordsAndLists());
        return module;
    }

    private static void write(JsonGenerator out, double value) throws IOException {
        if (!Double.isFinite(value)) {
            throw new IOException("cannot write " + value
                    + ", which is no number. Leave the field null where a number does not apply");
        }
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP).stripTrailingZeros();
        out.writeNumber(rounded.signum() == 0 ? "0" : rounded.toPlainString());
    }

    private static final class NumberWriter extends StdScalarSerializer<Double> {
        NumberWriter() {
            super(Double.class);
        }

        @Override
        public void serialize(Double value, JsonGenerator out, SerializerProvider provider) throws IOException {
            write(out, value);
        }
    }

    private static final class NumberReader extends StdScalarDeserializer<Double> {
        private final Double absent;

        NumberReader(Double absent) {
            super(Double.class);
            this.absent = absent;
        }

        @Override
        public Double deserialize(JsonParser in, DeserializationContext context) throws IOException {
            return in.currentToken().isNumeric() ? finite(in, context) : (Double) context.handleUnexpectedToken(Double.class, in);
        }

        @Override
        public Double getNullValue(DeserializationContext context) {
            return absent;
        }

        static double finite(JsonParser in, DeserializationContext context) throws IOException {
            double value = in.getDoubleValue();
            if (!Double.isFinite(value)) {
                context.reportInputMismatch(Double.class, "%s is too large for a number", in.getText());
            }
            return value;
        }
    }

    private static final class WordWriter extends StdSerializer<Word> {
        WordWriter() {
            super(Word.class);
        }

        @Override
        public void serialize(Word value, JsonGenerator out, SerializerProvider provider) throws IOException {
            out.writeString(value.id());
        }
    }

    private static final class WordReader extends StdScalarDeserializer<Object> {
        private final Map<String, Object> constants = new LinkedHashMap<>();

        WordReader(Class<?> type) {
            super(type);
            for (Object constant : type.getEnumConstants()) {
                constants.put(((Word) constant).id(), constant);
            }
        }

        @Override
        public Object deserialize(JsonParser in, DeserializationContext context) throws IOException {
            if (!in.hasToken(JsonToken.VALUE_STRING)) {
                return context.handleUnexpectedToken(_valueClass, in);
            }
            Object constant = constants.get(in.getText());
            return constant != null ? constant : context.handleWeirdStringValue(_valueClass, in.getText(),
                    "not one of %s", String.join(", ", constants.keySet()));
        }
    }

    private static final class CurveWriter extends StdSerializer<OctaveCurve> {
        CurveWriter() {
            super(OctaveCurve.class);
        }

        @Override
        public void serialize(OctaveCurve value, JsonGenerator out, SerializerProvider provider) throws IOException {
            out.writeStartArray();
            for (double band : value.toArray()) {
                write(out, band);
            }
            out.writeEndArray();
        }
    }

    private static final class CurveReader extends StdScalarDeserializer<OctaveCurve> {
        CurveReader() {
            super(OctaveCurve.class);
        }

        @Override
        public OctaveCurve deserialize(JsonParser in, DeserializationContext context) throws IOException {
            if (!in.isExpectedStartArrayToken()) {
                return (OctaveCurve) context.handleUnexpectedToken(OctaveCurve.class, in);
            }
            List<Double> values = new ArrayList<>(OCTAVES);
            while (in.nextToken() != JsonToken.END_ARRAY) {
                if (in.currentToken() == null || !in.currentToken().isNumeric()) {
                    return (OctaveCurve) context.handleUnexpectedToken(OctaveCurve.class, in);
                }
                values.add(NumberReader.finite(in, context));
            }
            if (values.size() != OCTAVES) {
                return context.reportInputMismatch(OctaveCurve.class,
                        "%d values, but it needs nine: one an octave from 63 Hz to 16 kHz", values.size());
            }
            return OctaveCurve.of(values.stream().mapToDouble(Double::doubleValue).toArray());
        }
    }

    private static final class TimeWriter extends StdSerializer<OffsetDateTime> {
        TimeWriter() {
            super(OffsetDateTime.class);
        }

        @Override
        public void serialize(OffsetDateTime value, JsonGenerator out, SerializerProvider provider) throws IOException {
            out.writeString(DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(value)); // RFC 3339 wants the seconds, toString leaves zeros out
        }
    }

    private static final class TimeReader extends StdScalarDeserializer<OffsetDateTime> {
        TimeReader() {
            super(OffsetDateTime.class);
        }

        @Override
        public OffsetDateTime deserialize(JsonParser in, DeserializationContext context) throws IOException {
            if (!in.hasToken(JsonToken.VALUE_STRING)) {
                return (OffsetDateTime) context.handleUnexpectedToken(OffsetDateTime.class, in);
            }
            try {
                return OffsetDateTime.parse(in.getText());
            } catch (DateTimeException notATime) {
                return (OffsetDateTime) context.handleWeirdStringValue(OffsetDateTime.class, in.getText(),
                        "not a time with an offset, such as 2027-03-01T10:00:00+01:00");
            }
        }
    }

    /** Constants by their words, and lists that cannot be changed. */
    private static final class WordsAndLists extends BeanDeserializerModifier {
        @Override
        public JsonDeserializer<?> modifyEnumDeserializer(DeserializationConfig config, JavaType type,
                BeanDescription description, JsonDeserializer<?> deserializer) {
            return Word.class.isAssignableFrom(type.getRawClass()) ? new WordReader(type.getRawClass()) : deserializer;
        }

        @Override
        public JsonDeserializer<?> modifyCollectionDeserializer(DeserializationConfig config, CollectionType type,
                BeanDescription description, JsonDeserializer<?> deserializer) {
            return List.class.isAssignableFrom(type.getRawClass()) ? new FixedList(deserializer) : deserializer;
        }
    }

    private static final class FixedList extends DelegatingDeserializer {
        FixedList(JsonDeserializer<?> filling) {
            super(filling);
        }

        @Override
        protected JsonDeserializer<?> newDelegatingInstance(JsonDeserializer<?> filling) {
            return new FixedList(filling);
        }

        @Override
        public Object deserialize(JsonParser in, DeserializationContext context) throws IOException {
            Object filled = super.deserialize(in, context);
            return filled instanceof Collection<?> values ? Collections.unmodifiableList(new ArrayList<>(values)) : filled;
        }

        @Override
        public Object getEmptyValue(DeserializationContext context) {
            return List.of();
        }
    }

    /** Fills lists a record of the model was not given. */
    private static final class MissingLists extends JacksonAnnotationIntrospector {
        @Override
        public JsonSetter.Value findSetterInfo(Annotated annotated) {
            Class<?> owner = annotated instanceof AnnotatedMember member ? member.getDeclaringClass() : Object.class;
            boolean list = annotated.getRawType() == List.class && owner.isRecord() && owner != Request.class
                    && owner.getPackageName().equals(Word.class.getPackageName());
            return list ? JsonSetter.Value.forValueNulls(Nulls.AS_EMPTY) : super.findSetterInfo(annotated);
        }
    }
}
