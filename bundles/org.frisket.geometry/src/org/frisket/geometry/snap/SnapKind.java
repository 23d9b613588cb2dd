package org.frisket.geometry.snap;

/** What can hold a moved thing; of several that are equally near, the first in this order does. */
public enum SnapKind {

	GUIDE, NODE, EDGE, CENTRE, GRID
}
