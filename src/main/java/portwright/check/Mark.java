package portwright.check;

import portwright.geometry.Face;
import portwright.geometry.Pt;

/** Where a finding lies on a drawing: the shortest distance from a to b (part frame, unmirrored, mm). a equals b for a single place. */
public record Mark(Face face, Pt a, Pt b) {}
