/** From lines to strokes in their order. */
package org.frisket.toolpath.internal.plan;
