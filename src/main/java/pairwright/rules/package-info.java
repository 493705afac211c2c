/**
 * The rule base: what an engineer might argue about. Rules live in rules/, are compiled when the program is built, read numbers that
 * were computed before, and turn them into findings. Only this package sees the rule engine.
 */
package pairwright.rules;
