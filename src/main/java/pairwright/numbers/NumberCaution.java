package pairwright.numbers;

import pairwright.model.Severity;

/** What must not be missed when a number is put to use. */
public record NumberCaution(Severity severity, String says) {
}
