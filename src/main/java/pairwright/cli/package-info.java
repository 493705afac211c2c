/** The way in from a terminal: ask, number, serve, check. */
package pairwright.cli;
