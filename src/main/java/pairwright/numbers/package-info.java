/**
 * Worked numbers: the calculations people ask for, each with its inputs, result, formula, steps to follow by hand, validity and
 * cautions. Every number comes from {@code acoustics}, the code the advice uses; here it is only asked and explained.
 */
package pairwright.numbers;
