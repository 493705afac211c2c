/**
 * The records everyone shares: catalogue entries, the question, the answer. Immutable, compared by value, and with the unit of
 * every number in its name (see docs/units.md). No library shows here.
 */
package pairwright.model;
