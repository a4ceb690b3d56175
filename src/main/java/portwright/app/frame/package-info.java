/** The frame round the steps: rail, views, side, foot, files and dialogs. */
package portwright.app.frame;
