/** The drawing board: canvas, rules, and what the hand does on it. */
package portwright.app.board;
