/**
 * The locker: the units there are, who has them and when, and what is free. The one package that sees SQL. Two units of time never
 * share a unit, which the database itself guards; everything that belongs together is written in one transaction or not at all.
 */
package pairwright.locker;
