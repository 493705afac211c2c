/** The way in from a terminal: serve, ask, check. */
package pairwright.cli;
