package pairwright.sheet;

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

    /** One list after the other. */
    static List<Param> joined(List<Param> first, List<Param> then) {
        List<Param> all = new ArrayList<>(first);
        all.addAll(then);
        return all;
    }
}
