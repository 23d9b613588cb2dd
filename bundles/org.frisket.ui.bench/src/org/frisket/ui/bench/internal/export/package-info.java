/** Exporting the job in front: a form made from what the exporters say of themselves, and the work behind it. */
package org.frisket.ui.bench.internal.export;
