/** Canvas, colours, fonts and charts of the window: everything that paints, nothing that decides. */
package portwright.app.paint;
