/**
 * Reads the catalogue, and a house folder laid over it, into the records of the model. Every fault is found in one go and has its
 * file, line and column. Built in, the catalogue is one packed file, written when the program is built; the YAML files are read
 * only then, by {@code check}, and for a house folder.
 */
package pairwright.catalogue;
