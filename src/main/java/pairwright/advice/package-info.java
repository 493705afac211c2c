/**
 * A question in, ranked options out: lists the placements that are possible, predicts each with acoustics, has the rules judge them,
 * combines the best by technique, has the rules judge the pairs, ranks, makes the options differ in idea, and explains them.
 * Nothing here has an opinion: opinions are points of rules and figures of the catalogue.
 */
package pairwright.advice;
