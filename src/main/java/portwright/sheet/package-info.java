/**
 * Full-size paper: sizes, tiles, template pages, first and last page, firing card, and the same faces as SVG. The only
 * package that sees the PDF library. Vector only; millimetres become points once, in double; nothing is ever scaled to fit.
 */
package portwright.sheet;
