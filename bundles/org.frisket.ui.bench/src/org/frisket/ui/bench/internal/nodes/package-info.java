/** Paths by hand: the nodes of an outline are edited in a mode of their own, and new paths are drawn with the pen. */
package org.frisket.ui.bench.internal.nodes;
