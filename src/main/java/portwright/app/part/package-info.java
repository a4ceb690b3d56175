/** The window's own controls: test tile, sign, gauge, boxwood rule, slip, field. */
package portwright.app.part;
