/** Edges that neighbours share are worked once. */
package org.frisket.toolpath.internal.share;
