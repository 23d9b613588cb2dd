/** All steps of a job by name, and the way to any of them. */
package org.frisket.ui.bench.internal.history;
