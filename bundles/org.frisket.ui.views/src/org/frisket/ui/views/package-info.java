/**
 * The views around the bench: the stack, the properties of the selection, makeready, and the strip that shows the way of
 * the job. They follow the bench in front and reach its job through {@link org.frisket.ui.bench.JobOnBench} alone.
 */
package org.frisket.ui.views;
