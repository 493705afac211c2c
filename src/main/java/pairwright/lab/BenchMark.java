package pairwright.lab;

import pairwright.locker.HandedIn;

/**
 * What a bench earned.
 *
 * @param bench number
 * @param handedIn what counts: the last that was handed in before everybody could see the key, or by somebody who always could; else the last at all. Null for nothing
 * @param answer what it says; null for nothing
 * @param mark by the rules of today; null for nothing
 * @param otherPoints what it earned when it was marked first, where rules that changed since make it another; else null
 */
public record BenchMark(int bench, HandedIn handedIn, Answer answer, Mark mark, Double otherPoints) {
}
