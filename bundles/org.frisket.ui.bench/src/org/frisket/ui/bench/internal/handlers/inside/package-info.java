/** Commands inside of an element: its text, its letters and bridges, its nodes; and the tools that write and draw. */
package org.frisket.ui.bench.internal.handlers.inside;
