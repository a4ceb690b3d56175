/** The design as records: what the potter typed, nothing computed. {@code null} is unknown, an empty list is none. */
package portwright.model;
