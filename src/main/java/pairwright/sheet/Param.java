package pairwright.sheet;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** A name and a value of a query. */
public record Param(String name, String value) {
    /** An address with these parameters. */
    static String address(String path, List<Param> params) {
        StringBuilder address = new StringBuilder(path);
        char before = '?';
        for (Param param : params) {
            address.append(before).append(param.name()).append('=').append(Visit.escaped(param.value()));
            before = '&';
        }
        return address.toString();
    }

    /** A number as short as it can be written and read again exactly, with a point. */
    static String number(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e9 ? Long.toString((long) value) : new BigDecimal(Double.toString(value)).toPlainString();
    }

    /** A length in metres and with the unit, so that it means the same to every reader. */
    static String metres(double metres) {
        return number(metres) + "m";
    }

    /** One list after the other. */
    static List<Param> joined(List<Param> first, List<Param> then) {
        List<Param> all = new ArrayList<>(first);
        all.addAll(then);
        return all;
    }
}
