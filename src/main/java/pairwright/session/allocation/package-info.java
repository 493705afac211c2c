/**
 * The allocation of a whole session: which choice every seat gets, so that the sum of points is the highest there is, and the proof that it is. It knows choices, what
 * there is a limited number of, channels and what phantom power does to them, and nothing else of microphones: what a choice is worth was computed before, what a plan means
 * is said afterwards. The one package that sees the solver, whose library is loaded when the first plan is asked for and not before. No plan leaves
 * the package unchecked: {@link pairwright.session.allocation.PlanCheck} counts it through again and knows nothing of how it was found.
 */
package pairwright.session.allocation;
