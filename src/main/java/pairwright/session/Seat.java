package pairwright.session;

import java.util.List;
import pairwright.model.HeardBefore;
import pairwright.model.Limits;

/**
 * A source of a line-up and where its player is.
 *
 * @param id unique in the line-up, kebab case
 * @param player what people call it: a name, or a part; null for as the source
 * @param source id of the catalogue
 * @param xM where the player is, from the left wall
 * @param yM from the lower wall of the plan
 * @param facingDegrees where the player looks: 0 up the plan, 90 to the right, clockwise
 * @param ways of playing, ids of the source
 * @param dynamics ids of catalogue/words/dynamics.yaml
 * @param character that is wanted, ids
 * @param circumstances ids of catalogue/words/circumstances.yaml
 * @param limits its own: how many channels at most, families, types
 * @param must whether there is no session without it
 * @param heard what was noted of this player before; null for nothing
 * @param fixed whether the player stays where they are, so that no move is suggested
 */
public record Seat(String id, String player, String source, double xM, double yM, double facingDegrees, List<String> ways, List<String> dynamics,
        List<String> character, List<String> circumstances, Limits limits, boolean must, HeardBefore heard, boolean fixed) {
    public Seat {
        ways = ways == null ? List.of() : List.copyOf(ways);
        dynamics = dynamics == null ? List.of() : List.copyOf(dynamics);
        character = character == null ? List.of() : List.copyOf(character);
        circumstances = circumstances == null ? List.of() : List.copyOf(circumstances);
        limits = limits == null ? Limits.NONE : limits;
    }

    /** Whether one player is named at both. */
    public boolean samePlayer(Seat other) {
        return player != null && other.player != null && player.strip().equalsIgnoreCase(other.player.strip());
    }

    /** The same under another id. */
    public Seat called(String other) {
        return new Seat(other, player, source, xM, yM, facingDegrees, ways, dynamics, character, circumstances, limits, must, heard, fixed);
    }

    /** The same player elsewhere. */
    public Seat at(double otherXM, double otherYM, double otherFacingDegrees) {
        return new Seat(id, player, source, otherXM, otherYM, otherFacingDegrees, ways, dynamics, character, circumstances, limits, must, heard, fixed);
    }
}
