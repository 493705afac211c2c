package pairwright.sheet;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The units one kind of quantity may be typed in. */
enum Units {
    LENGTH("m", "a length such as 0.8 m, 80 cm or 2 ft 6 in", "m=1 metre=1 metres=1 meter=1 meters=1 cm=0.01 centimetre=0.01 centimetres=0.01 centimeters=0.01 mm=0.001 "
            + "millimetres=0.001 millimeters=0.001 km=1000 in=0.0254 inch=0.0254 inches=0.0254 \"=0.0254 ft=0.3048 foot=0.3048 feet=0.3048 '=0.3048"),
    AREA("m2", "an area such as 12 m2 or 130 sq ft", "m2=1 m\u00b2=1 sq_ft=0.09290304 ft2=0.09290304 ft\u00b2=0.09290304"),
    VOLUME("m3", "a volume such as 80 m3 or 2800 cu ft", "m3=1 m\u00b3=1 cu_m=1 l=0.001 litre=0.001 litres=0.001 liters=0.001 cu_ft=0.028316846592 ft3=0.028316846592 "
            + "ft\u00b3=0.028316846592"),
    MASS("kg", "a mass such as 2.5 kg, 800 g or 5 lb", "kg=1 kilo=1 kilos=1 g=0.001 gram=0.001 grams=0.001 lb=0.45359237 lbs=0.45359237 pound=0.45359237 "
            + "pounds=0.45359237 oz=0.028349523125"),
    FREQUENCY("Hz", "a frequency such as 250 Hz or 2.5 kHz", "hz=1 khz=1000 k=1000 mhz=1000000"),
    SECONDS("s", "a time such as 0.4 s or 400 ms", "s=1 sec=1 second=1 seconds=1 ms=0.001"),
    MILLISECONDS("ms", "a time such as 5 ms", "ms=1 s=1000 sec=1000"),
    HOURS("h", "a time such as 1.5 h or 90 min", "h=1 hour=1 hours=1 hrs=1 min=0.016666666666666666 mins=0.016666666666666666 minute=0.016666666666666666 "
            + "minutes=0.016666666666666666"),
    ANGLE("degrees", "an angle such as 30 degrees", "degrees=1 degree=1 deg=1 \u00b0=1"),
    RESISTANCE("ohm", "a resistance such as 300 ohm or 1.5 kohm", "ohm=1 ohms=1 \u03c9=1 \u2126=1 kohm=1000 k\u03c9=1000 k\u2126=1000 k=1000 mohm=1000000 m\u03c9=1000000 m\u2126=1000000"),
    CURRENT("mA", "a current such as 4.5 mA", "ma=1 a=1000"),
    SENSITIVITY("mV/Pa", "a sensitivity such as 15 mV/Pa", "mv/pa=1 mv=1 v/pa=1000"),
    DIFFERENCE("dB", "a number of decibels such as 6", "db=1"),
    SOUND_LEVEL("dB SPL", "a level such as 94 dB SPL", "db_spl=1 dbspl=1 db=1"),
    WEIGHTED_LEVEL("dB(A)", "a level such as 74 dB(A)", "db(a)=1 dba=1 db_a=1 db=1"),
    VOLTAGE_LEVEL("dBu", "a level such as 22 dBu", "dbu=1 db=1"),
    FULL_SCALE_LEVEL("dBFS", "a level such as -18 dBFS", "dbfs=1 db=1"),
    NONE("1", "a number such as 0.5", "%=0.01");

    private static final Map<String, Units> BY_UNIT = Stream.of(values()).collect(Collectors.toMap(one -> one.unit, one -> one));
    private static final Map<String, Units> SHOWN = Map.of("ft", LENGTH, "in", LENGTH, "cm", LENGTH, "lb", MASS, "sq ft", AREA, "cu ft", VOLUME);

    private final String unit;
    private final String wanted;
    private final Map<String, Double> factors;

    Units(String unit, String wanted, String factors) {
        this.unit = unit;
        this.wanted = wanted;
        this.factors = List.of(factors.split(" ")).stream().map(one -> one.split("="))
                .collect(Collectors.toUnmodifiableMap(one -> one[0].replace('_', ' '), one -> Double.parseDouble(one[1])));
    }

    /** Those of a unit, which is one of docs/units.md or one of ft, in, cm, lb, sq ft, cu ft. */
    static Units of(String unit) {
        Units units = BY_UNIT.getOrDefault(unit, SHOWN.get(unit));
        if (units == null) {
            throw new IllegalArgumentException("nobody types numbers in " + unit);
        }
        return units;
    }

    /** What a number in a unit is multiplied by; NaN for a unit that is none of these. Capitals do not matter. */
    double factor(String written) {
        return written.equals(unit) ? 1 : factors.getOrDefault(written.strip().toLowerCase(Locale.ROOT), Double.NaN);
    }

    /** What to give instead, in words. */
    String wanted() {
        return wanted;
    }
}
