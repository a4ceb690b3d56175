/** The window, and the only package that sees JavaFX. View models (doc) know no control; views only bind. */
package portwright.app;
