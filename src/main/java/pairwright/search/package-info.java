/**
 * A sentence, and what it means. The words of the catalogue are found in it by the longest phrase, one kind at a time, since the
 * same words may say two things ("slap bass" is a way and a source); words left over are tried again as misspellings; then the
 * phrases are weighed against each other. What stays unclear is said, never guessed in silence. Only this package sees Lucene.
 */
package pairwright.search;
