/** The pages on which the user sets what there is to choose. */
package org.frisket.ui.bench.internal.preferences;
