/**
 * Listening to what was recorded: {@link pairwright.listen.SourceMeter} measures what one source sounds like, {@link pairwright.listen.PairMeter} how two tracks of
 * it fit together. Recordings are read from one end to the other, a block at a time, so that hours take no more memory than minutes; nothing of them is kept.
 * What a measurement means for the choice of a microphone is not decided here.
 */
package pairwright.listen;
