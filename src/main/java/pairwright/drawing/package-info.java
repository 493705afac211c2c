/**
 * Pictures, drawn as SVG on the server so that a page, a print and a sheet show the same: where microphones stand, what they hear from
 * where, what a sound looks like octave by octave. Each comes with words that say the same.
 */
package pairwright.drawing;
