/** The Repairs view: steps of repair, every place that they would put right, and the job as it would be. */
package org.frisket.ui.views.internal.repairs;
