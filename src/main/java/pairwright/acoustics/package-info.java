/**
 * Physics and nothing else: pure functions on plain doubles in SI units, with the unit in every name. Each function says its
 * formula, where it holds and what it rests on, and refuses a number that cannot be, with that number in the message.
 */
package pairwright.acoustics;
