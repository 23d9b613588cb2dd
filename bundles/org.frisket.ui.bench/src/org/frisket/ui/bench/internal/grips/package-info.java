/** The grips of the selection: by them it is scaled, turned, its mat's distance or what its lines run along changed. */
package org.frisket.ui.bench.internal.grips;
