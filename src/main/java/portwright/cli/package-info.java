/** The command line: one class a command. But for the entry point the only room that writes to the standard streams. */
package portwright.cli;
