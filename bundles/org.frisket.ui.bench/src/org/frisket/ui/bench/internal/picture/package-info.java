/**
 * What the bench shows of a job, made off the UI thread from a copy of it: clean curves, flattened ones for finding
 * what lies under the pointer, hatching, counts. Immutable; in mm, y down.
 */
package org.frisket.ui.bench.internal.picture;
