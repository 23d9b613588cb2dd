/** What the user chooses to see and to be held by while laying out; kept in the preferences, never in a job. */
package org.frisket.ui.bench.internal.surface;
