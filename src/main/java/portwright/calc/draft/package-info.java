/**
 * The pressure balance of the kiln: what air the holes draw, what lambda comes of it, where the pressure turns, with
 * what uncertainty. Only SI numbers enter; nothing here knows the design file.
 */
package portwright.calc.draft;
