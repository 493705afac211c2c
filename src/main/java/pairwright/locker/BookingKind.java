package pairwright.locker;

import pairwright.model.Word;

/** What a unit is booked for. */
public enum BookingKind implements Word {
    SESSION("session"),
    LAB("lab"),
    LOAN("loan"),
    REPAIR("repair");

    private final String id;

    BookingKind(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
