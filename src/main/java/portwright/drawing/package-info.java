/**
 * What a part of the kiln looks like, drawn through one small {@link portwright.drawing.Pen} in millimetres, so that
 * paper and screen cannot differ. Painters and line styles may enter; no toolkit and no PDF library.
 */
package portwright.drawing;
