/** The command line: one class a command. The only room that writes to the standard streams. */
package portwright.cli;
