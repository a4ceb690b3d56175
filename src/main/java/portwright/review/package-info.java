/** Runs every calculation that a design allows and keeps the figures in one immutable record, in sections. */
package portwright.review;
