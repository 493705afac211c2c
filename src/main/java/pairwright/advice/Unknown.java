package pairwright.advice;

import pairwright.model.Confidence;

/**
 * Something a question leaves open within a range: -1 is the low end, 0 what is reckoned with, 1 the high end.
 *
 * @param kind what
 * @param of the neighbour, type or position it belongs to; null for the source and the room
 * @param place its place among the neighbours; else 0
 */
record Unknown(Kind kind, String of, int place) {
    /** How far a reverberation time may be off, as a share, where an entry is sure of itself. */
    private static final double RINGING_SHARE = 0.2;

    /** What can be unknown. */
    enum Kind {
        LEVEL("level", "dB SPL"),
        SOURCE_TONE("source-tone", "dB"),
        REVERBERATION("reverberation", "s"),
        NEIGHBOUR_LEVEL("neighbour-level", "dB SPL"),
        TYPE_TONE("type-tone", "dB"),
        TYPE_LIMIT("type-limit", "dB SPL"),
        TYPE_NOISE("type-noise", "dB(A)"),
        TYPE_SENSITIVITY("type-sensitivity", "mV/Pa"),
        PLACE_TONE("place-tone", "dB");

        private final String id;
        private final String unit;

        Kind(String id, String unit) {
            this.id = id;
            this.unit = unit;
        }

        String id() {
            return id;
        }

        String unit() {
            return unit;
        }
    }

    /** How far a tone may tilt from 1 to 8 kHz either way, by how sure the entry is. */
    static double tiltDb(Confidence confidence) {
        return switch (confidence) {
            case HIGH -> 2;
            case MEDIUM -> 3;
            case LOW -> 4;
        };
    }

    /** How far a reverberation time may be off either way, as a share, by how sure the entry is. */
    static double ringingShare(Confidence confidence) {
        return switch (confidence) {
            case HIGH -> RINGING_SHARE;
            case MEDIUM -> 1.5 * RINGING_SHARE;
            case LOW -> 2 * RINGING_SHARE;
        };
    }
}
