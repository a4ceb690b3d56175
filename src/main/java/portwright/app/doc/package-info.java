/** View models of the window: document, undo, fields, selection, drag. No control and no toolkit may enter. */
package portwright.app.doc;
