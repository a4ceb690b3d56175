package portwright.file;

/**
 * One error of a design file.
 *
 * @param line from 1; 0 when the whole file is meant
 * @param column from 1; 0 when the whole file is meant
 * @param path field path like {@code ports[1].diameter}; empty for the file itself
 * @param message what is wrong and what to write
 */
public record Problem(int line, int column, String path, String message) {}
