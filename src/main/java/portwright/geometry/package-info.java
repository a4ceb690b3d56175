/** Shapes of the kiln and exact distances, in mm. The only package that sees JTS; hands out plain points, circles and segments. */
package portwright.geometry;
