package pairwright.lab;

import java.util.Optional;

/**
 * A kind of exercise. Stateless and safe to share; a new one is added to the list in {@link Kinds}, and its handout to the templates.
 */
public interface Kind {
    /** What it says of itself. */
    KindInfo info();

    /**
     * Draws a case; the same draws in the same lab give the same.
     *
     * @param level 1 to 5
     * @return empty where what was drawn makes no exercise with one clear answer; then the next row is tried
     */
    Optional<Case> draw(Draw draw, int level, Lab lab);

    /**
     * The exercise of a case.
     *
     * @throws IllegalArgumentException where it names what the catalogue does not have any more
     */
    Exercise of(Case drawn, int level, Lab lab);
}
