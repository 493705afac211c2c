/**
 * Exercises: drawn from a seed, computed by the same code and rules as real advice, marked with reasons. A {@link pairwright.lab.Kind} draws a
 * {@link pairwright.lab.Case}, which is all that has to be kept, and makes the {@link pairwright.lab.Exercise} of it: what is handed out, what is right, and
 * what an answer earns. Nothing here knows of pages, of files or of who may see what.
 */
package pairwright.lab;
