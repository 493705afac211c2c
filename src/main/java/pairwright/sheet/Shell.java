package pairwright.sheet;

/**
 * What every page has around its content.
 *
 * @param title of the page
 * @param section which part of the site it belongs to: ask, catalogue, rules, numbers or guide; empty for none
 * @param visit what the reader came for
 * @param style address of the style sheet
 * @param script address of the script
 */
public record Shell(String title, String section, Visit visit, String style, String script) {
}
