/** The fields of the design file and the rules by the names that people read: in the window's forms and on paper. */
package portwright.form;
