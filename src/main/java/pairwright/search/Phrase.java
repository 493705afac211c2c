package pairwright.search;

/**
 * A phrase of the catalogue that may complete a sentence.
 *
 * @param id what it names
 * @param text as it is written into a sentence
 * @param isName whether it is the name of the entry, rather than another word for it
 * @param order its place in the catalogue
 */
record Phrase(Kind kind, String id, String text, boolean isName, int order) {
}
