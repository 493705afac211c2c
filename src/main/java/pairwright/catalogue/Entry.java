package pairwright.catalogue;

import pairwright.model.Source;

/**
 * One file of the catalogue.
 *
 * @param kind what it is
 * @param id as the name of the file says
 * @param yaml the file; null if it could not be read
 * @param value the record; null if the file has faults
 */
record Entry<T>(Kind.Entries<T> kind, String id, YamlFile yaml, T value) {
    boolean is(Kind.Entries<?> other) {
        return kind == other;
    }

    Source source() {
        return (Source) value;
    }
}
