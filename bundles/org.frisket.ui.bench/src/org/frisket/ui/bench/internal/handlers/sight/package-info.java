/** Commands that change what is seen of the bench, and how large. */
package org.frisket.ui.bench.internal.handlers.sight;
