/** The entry point: a word on the command line runs a command, none opens the window. Nothing is computed here. */
package portwright;
