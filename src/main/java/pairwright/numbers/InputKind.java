package pairwright.numbers;

import pairwright.model.Word;

/** What may be given for an input. */
public enum InputKind implements Word {
    NUMBER("number"),
    WHOLE_NUMBER("whole-number"),
    /** Several numbers; one may stand without the list. */
    NUMBERS("numbers"),
    WORD("word"),
    /** A pickup pattern by its word, or the omni part of one from 0 to 1. */
    PATTERN("pattern");

    private final String id;

    InputKind(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
