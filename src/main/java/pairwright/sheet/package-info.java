/**
 * Documents: the pages of the service and the sheets that are printed, made of answers, entries and drawings. What a document says is
 * gathered in records here; how it looks is in {@code src/main/jte} and the style sheet.
 */
package pairwright.sheet;
