package pairwright.sheet;

/**
 * A page or a part of one, and how it went.
 *
 * @param status 200, 400 or 404
 * @param content HTML
 */
public record Page(int status, String content) {
}
