/**
 * The design file: read with every error at its line and column, edited without touching what nobody edited, saved whole or not at all. The
 * only room that knows JSON is the file's form; it hands out records of the model.
 */
package portwright.file;
