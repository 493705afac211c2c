package pairwright.model;

import java.util.List;

/**
 * One answer for a source.
 *
 * @param rank from 1
 * @param score the sum of the points of its reasons, exactly
 * @param technique single, or the id of a technique
 * @param techniqueName its name
 * @param mics one placement, or two
 * @param together what the two do together; null for one
 * @param reasons strongest first
 * @param cautions gravest first
 * @param sure how often it holds its place when what is uncertain is drawn anew; null when nothing was drawn
 */
public record Option(
        int rank,
        double score,
        String technique,
        String techniqueName,
        List<Placement> mics,
        Together together,
        List<Reason> reasons,
        List<Caution> cautions,
        Sure sure) {
}
