/** Bridges that keep the inner parts of openings in the sheet. */
package org.frisket.geometry.stencil;
