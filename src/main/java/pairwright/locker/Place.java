package pairwright.locker;

import java.nio.file.Path;

/**
 * Where a locker is kept.
 *
 * @param file of an embedded database; null for a server
 * @param address of a server, {@code jdbc:postgresql://host/name?user=...&password=...}; null for a file. It may hold a secret and is never shown
 */
public record Place(Path file, String address) {
    /** The name of the file within a data folder. */
    public static final String FILE = "locker.db";

    /** The locker of a data folder. */
    public static Place in(Path data) {
        return new Place(data.resolve(FILE), null);
    }

    /** A locker that several programs share. */
    public static Place at(String address) {
        return new Place(null, address);
    }

    /** Where it is, without any secret. */
    @Override
    public String toString() {
        return file != null ? file.toString() : "PostgreSQL at " + address.replaceFirst("^jdbc:postgresql://", "").replaceFirst("\\?.*", "").replaceFirst("^[^/@]*@", "");
    }
}
