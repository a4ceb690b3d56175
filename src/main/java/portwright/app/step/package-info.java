/** The six steps of the job, one board each. */
package portwright.app.step;
