/** The grips around the selection, by which it is scaled, turned, or its mat's distance changed. */
package org.frisket.ui.bench.internal.grips;
