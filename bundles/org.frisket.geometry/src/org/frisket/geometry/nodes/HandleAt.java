package org.frisket.geometry.nodes;

/** Which handle of a path. */
public record HandleAt(NodeAt node, Side side) {
}
